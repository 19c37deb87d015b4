package trammel.geometry;

/**
 * The range that an angle may have, and the value to aim at (degrees).
 *
 * @param preferred within the range
 */
public record AngleWindow(double from, double preferred, double to) {
  public AngleWindow {
    if (!(from <= preferred && preferred <= to && from < to)) {
      throw new IllegalArgumentException(
          "a window runs from a lesser to a greater angle with the preferred one between: "
              + from
              + ", "
              + preferred
              + ", "
              + to);
    }
  }

  /** How far inside the nearer edge an angle lies (degrees); negative outside. */
  public double reserve(double angle) {
    return Math.min(angle - from, to - angle);
  }

  /**
   * How near an angle is to the preferred one, as a share of the way from either edge: 1 there, 0
   * on an edge. A preferred value nearer to its edge than {@link #LEAST_WAY} has that much of a
   * way.
   */
  double share(double angle) {
    return Math.min(1 + (angle - preferred) / below(), 1 + (preferred - angle) / above());
  }

  /** The way from the lower edge to the preferred value (degrees). */
  double below() {
    return Math.max(preferred - from, LEAST_WAY);
  }

  /** The way from the upper edge to the preferred value (degrees). */
  double above() {
    return Math.max(to - preferred, LEAST_WAY);
  }

  /** So that no edge weighs a miss out of all proportion (degrees). */
  private static final double LEAST_WAY = 0.25;
}
