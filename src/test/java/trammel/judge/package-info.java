/** Tests of {@link trammel.judge} and of the rule books it holds. */
@org.jspecify.annotations.NullMarked
package trammel.judge;
