package trammel.physics;

/**
 * A coil spring between its seats, with what is packed onto one of them. Lengths in mm.
 *
 * @param curve force over deflection
 * @param freeLength with no load
 * @param solidLength with all coils touching
 * @param spacer thickness on the seat that takes room from the spring; below 0 for a lowered seat
 */
public record FittedSpring(
    SpringCurve curve, double freeLength, double solidLength, double spacer) {

  /** How a coil stands between its seats. */
  public enum Coil {
    /** Shorter than its free length and not solid. */
    WORKING,
    /** Loose: the seats are as far apart as the free spring, or farther. */
    SLACK,
    /** All coils touch: it takes any force without giving way. */
    BOUND
  }

  /**
   * @throws IllegalArgumentException unless 0 &lt; solid length &lt; free length
   */
  public FittedSpring {
    Require.positive("solid length of a spring", solidLength);
    if (!(freeLength > solidLength && freeLength < Double.POSITIVE_INFINITY)) {
      throw Require.refused("free length of a spring", freeLength, "more than its solid length");
    }
    if (!Double.isFinite(spacer)) {
      throw Require.refused("spacer thickness", spacer, "a length");
    }
  }

  /** The same spring on a spacer of another thickness (mm). */
  public FittedSpring withSpacer(double thickness) {
    return new FittedSpring(curve, freeLength, solidLength, thickness);
  }

  /** Deflection from the free length (mm); below 0 where loose. */
  public double deflection(double seatDistance) {
    return freeLength + spacer - seatDistance;
  }

  /** Distance of the seats at a deflection (mm). */
  public double seatDistance(double deflection) {
    return freeLength + spacer - deflection;
  }

  /** Deflection at which the coil is solid (mm). */
  public double solidDeflection() {
    return freeLength - solidLength;
  }

  /** Distance of the seats at which the coil is solid (mm). */
  public double solidSeatDistance() {
    return solidLength + spacer;
  }

  /** Force (N); for a coil that is bound the least it gives, that of its last free deflection. */
  public double force(double seatDistance) {
    return curve.force(Math.min(deflection(seatDistance), solidDeflection()));
  }

  /** How the coil stands between seats so far apart. */
  public Coil coil(double seatDistance) {
    if (seatDistance <= solidSeatDistance()) {
      return Coil.BOUND;
    }
    return deflection(seatDistance) <= 0 ? Coil.SLACK : Coil.WORKING;
  }
}
