/** Build sheets and orders. */
@org.jspecify.annotations.NullMarked
package trammel.build;
