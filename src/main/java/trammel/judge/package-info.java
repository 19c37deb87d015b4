/**
 * Facts in, findings out: the rule books in the rules engine. Knows no files and does no arithmetic
 * of its own.
 */
@org.jspecify.annotations.NullMarked
package trammel.judge;
