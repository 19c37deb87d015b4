/**
 * Pure mathematics from a build to the facts that rules judge, each with its working. Knows no
 * rules.
 */
@org.jspecify.annotations.NullMarked
package trammel.derive;
