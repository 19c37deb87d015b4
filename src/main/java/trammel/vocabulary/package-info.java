/**
 * The names that rules use for facts and their components, found on the fact records themselves, so
 * that each name exists once.
 */
@org.jspecify.annotations.NullMarked
package trammel.vocabulary;
