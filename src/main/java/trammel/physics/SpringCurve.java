package trammel.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * Force of a spring over its deflection from the free length, straight between the points of a
 * table, the last slope continuing beyond. A linear and a dual-rate spring are tables of two and
 * three points. A coil only pushes: below its free length it gives no force.
 *
 * <p>An error of the rate is meant as one factor on every force, (1 + ε) · F(x), as wire and coil
 * diameter make it.
 *
 * @param points from the free length (0, 0) on, deflection and force both rising
 */
public record SpringCurve(List<Point> points) {

  /**
   * One point of the curve.
   *
   * @param deflection from the free length (mm)
   * @param force (N)
   */
  public record Point(double deflection, double force) {}

  private static final Point FREE = new Point(0, 0);

  /**
   * @throws IllegalArgumentException if the points do not rise from (0, 0), or are fewer than two
   */
  public SpringCurve {
    points = List.copyOf(points);
    if (points.size() < 2 || !points.get(0).equals(FREE)) {
      throw new IllegalArgumentException(
          "found the spring points " + points + "; expected two or more, the first at 0 mm, 0 N");
    }
    for (int i = 1; i < points.size(); i++) {
      requireRise("deflection", points.get(i - 1).deflection(), points.get(i).deflection());
      requireRise("force", points.get(i - 1).force(), points.get(i).force());
    }
  }

  /**
   * One rate throughout.
   *
   * @param rate (N/mm)
   */
  public static SpringCurve linear(double rate) {
    Require.positive("spring rate", rate);
    return new SpringCurve(List.of(FREE, new Point(1, rate)));
  }

  /**
   * A first rate up to a deflection, a second one from there.
   *
   * @param first rate (N/mm)
   * @param until deflection at which the soft coils are closed (mm)
   * @param second rate (N/mm)
   */
  public static SpringCurve dualRate(double first, double until, double second) {
    Require.positive("first spring rate", first);
    Require.positive("deflection of the change of rate", until);
    Require.positive("second spring rate", second);
    Point change = new Point(until, first * until);
    return new SpringCurve(
        List.of(FREE, change, new Point(2 * until, change.force() + second * until)));
  }

  /**
   * As measured on a spring tester; the free length, where it was not written down, is added.
   *
   * @param measured in rising order
   */
  public static SpringCurve tabulated(List<Point> measured) {
    List<Point> points = new ArrayList<>(measured);
    if (points.isEmpty() || points.get(0).deflection() > 0) {
      points.add(0, FREE);
    }
    return new SpringCurve(points);
  }

  /** Force at a deflection (N); 0 where the spring is loose. */
  public double force(double deflection) {
    if (deflection <= 0) {
      return 0;
    }
    int from = segmentAt(deflection);
    return points.get(from).force() + slopeOf(from) * (deflection - points.get(from).deflection());
  }

  /** Change of the force with the deflection (N/mm), upward at a change of rate; 0 where loose. */
  public double slope(double deflection) {
    return deflection < 0 ? 0 : slopeOf(segmentAt(deflection));
  }

  /**
   * Deflection at a force (mm).
   *
   * @throws IllegalArgumentException for a force below 0, which no coil gives
   */
  public double deflection(double force) {
    int from = segmentUnder(force);
    return points.get(from).deflection() + (force - points.get(from).force()) / slopeOf(from);
  }

  /** Its change with the force (mm/N). */
  public double deflectionPerForce(double force) {
    return 1 / slopeOf(segmentUnder(force));
  }

  /** Its change per relative error of the rate (mm; a rate 1 % higher is 0.01): −F / slope. */
  public double deflectionPerRelativeRate(double force) {
    return -force / slopeOf(segmentUnder(force));
  }

  private int segmentAt(double deflection) {
    int from = points.size() - 2;
    while (from > 0 && deflection < points.get(from).deflection()) {
      from--;
    }
    return from;
  }

  private int segmentUnder(double force) {
    Require.notNegative("spring force", force);
    int from = points.size() - 2;
    while (from > 0 && force < points.get(from).force()) {
      from--;
    }
    return from;
  }

  private double slopeOf(int from) {
    Point lower = points.get(from);
    Point upper = points.get(from + 1);
    return (upper.force() - lower.force()) / (upper.deflection() - lower.deflection());
  }

  private static void requireRise(String name, double lower, double upper) {
    if (!(upper > lower && upper < Double.POSITIVE_INFINITY)) {
      throw Require.refused(name + " of a spring point", upper, "more than " + lower);
    }
  }
}
