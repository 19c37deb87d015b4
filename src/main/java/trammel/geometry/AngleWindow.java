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

  /** The same as a share of the way from edge to preferred value: 1 there, 0 on an edge. */
  double share(double angle) {
    double below = preferred > from ? (angle - from) / (preferred - from) : edge(angle - from);
    double above = to > preferred ? (to - angle) / (to - preferred) : edge(to - angle);
    return Math.min(below, above);
  }

  private static double edge(double inside) {
    return inside >= 0 ? 1 : inside;
  }
}
