/** Tests of {@link trammel.quantity}. */
@org.jspecify.annotations.NullMarked
package trammel.quantity;
