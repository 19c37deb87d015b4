/**
 * What is stamped on tires, wheels and studs, read as exact tokens.
 *
 * <p>Every token is an immutable value with a {@code parse} that reads the spellings of the trade
 * and a {@code toString} that prints one canonical spelling, which reads back as an equal value. A
 * text that cannot be read is refused with an {@link java.lang.IllegalArgumentException} that says
 * what was found, what was expected and what to do.
 */
@org.jspecify.annotations.NullMarked
package trammel.designation;
