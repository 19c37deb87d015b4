/** Tests of {@link trammel.geometry}. */
@org.jspecify.annotations.NullMarked
package trammel.geometry;
