/** Tests of {@link trammel.read}. */
@org.jspecify.annotations.NullMarked
package trammel.read;
