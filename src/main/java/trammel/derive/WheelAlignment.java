package trammel.derive;

import trammel.catalog.AlignmentSpec;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/**
 * What one wheel's alignment comes to at the proposed height, at the best setting.
 *
 * @param depth how well the geometry is known
 * @param camberReserve how far what can be reached goes into the camber window
 * @param camberLow whether the window's lower edge decides that
 * @param casterReserve the same for caster
 * @param setting the best setting in words
 * @param turned whether anything must be turned to come into the windows
 * @param tieRod how much longer the tie rod becomes
 */
record WheelAlignment(
    Depth depth,
    Quantity camber,
    Quantity caster,
    Quantity camberReserve,
    boolean camberLow,
    Quantity casterReserve,
    boolean casterLow,
    String setting,
    boolean turned,
    Quantity tieRod) {

  /** How well the geometry of an axle is known, by what is there. */
  enum Depth {
    TAPE,
    RACK,
    SURVEYED;

    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  private static final Formula OVER_LOW =
      new Formula("reach into the window", "greatest within reach − lower edge", "definition");
  private static final Formula UNDER_HIGH =
      new Formula("reach into the window", "upper edge − least within reach", "definition");

  /** How far an angle lies inside one edge of a window. */
  static Quantity reserve(Quantity angle, AlignmentSpec.Window window, boolean low) {
    return low
        ? OVER_LOW.linear(1, angle, -1, window.from())
        : UNDER_HIGH.linear(1, window.to(), -1, angle);
  }

  /** What camber beyond the deciding edge does to the tire, as a driver knows it. */
  String camberMeans() {
    return camberLow
        ? "with its top leaning in, the tire wears its inner edge"
        : "with its top leaning out, the tire wears its outer edge";
  }

  /** What caster beyond the deciding edge does to the steering, as a driver knows it. */
  String casterMeans() {
    return casterLow
        ? "the steering is light about center, wanders and returns poorly"
        : "the steering is heavy and kicks back";
  }
}
