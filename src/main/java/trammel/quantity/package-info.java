/**
 * Numbers that know their dimension, how sure they are and where they came from.
 *
 * <p>Inside the program every value is a plain double in one system of units: mm, degrees, kg, N,
 * kPa (gauge), N/mm, km/h, N m, litres, days. Other units exist only where text is read or shown.
 * Every ± is an expanded uncertainty with coverage factor k = 2 (JCGM 100:2008, 6.2.1).
 */
@org.jspecify.annotations.NullMarked
package trammel.quantity;
