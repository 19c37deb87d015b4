/** The names that rules use. */
@org.jspecify.annotations.NullMarked
package trammel.vocabulary;
