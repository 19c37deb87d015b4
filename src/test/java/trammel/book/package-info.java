/** Rule books of sheets. */
@org.jspecify.annotations.NullMarked
package trammel.book;
