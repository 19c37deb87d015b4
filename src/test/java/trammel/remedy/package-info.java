/** Remedies against the whole demo world. */
@org.jspecify.annotations.NullMarked
package trammel.remedy;
