/** Facts from builds. */
@org.jspecify.annotations.NullMarked
package trammel.derive;
