/** Tests of {@link trammel.report}. */
@org.jspecify.annotations.NullMarked
package trammel.report;
