/**
 * The arithmetic of tires, wheels, hubs and gearing, in plain numbers.
 *
 * <p>Lengths in mm, masses and loads in kg, pressures in kPa (gauge), speeds in km/h, angles in
 * degrees, aspect ratios in percent. Offset is positive with the mounting face outboard of the
 * rim's center plane. A method named {@code ...Per...} is the partial derivative of the one before
 * it. A number that cannot be (a negative radius, not a number) is refused with an {@link
 * java.lang.IllegalArgumentException}.
 */
@org.jspecify.annotations.NullMarked
package trammel.physics;
