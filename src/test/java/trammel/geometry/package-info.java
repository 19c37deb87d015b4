/** Tests of {@link trammel.geometry} against published corners and independent solvers. */
@org.jspecify.annotations.NullMarked
package trammel.geometry;
