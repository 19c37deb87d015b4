package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/**
 * What speed allows of the angle at a single Cardan joint (degrees). Speeds in turns of the shaft
 * per minute.
 *
 * <p>The table for one joint: 3500 to 5000 turns from a driveshaft maker's handbook; 1500 to 3000
 * from memory, agreeing with the rule that the torsional acceleration b²ω² stay near 1000 rad/s².
 * Between the rows the root of the acceleration, angle × speed, is interpolated; beyond either end
 * the acceleration of the last row is kept.
 *
 * <p>For two joints a page that cites SAE AE-7 prints how much angle the second may have beside the
 * first, at 1500 to 1700 turns. Own finding: every entry is √(b₁² + r²) with a residual angle r of
 * r²ω² = 402 rad/s², rounded to a tenth. At other speeds that is a rule, not a printed value.
 */
public final class JointAngleLimit {
  /** Turns per minute and degrees, by speed. */
  private static final double[][] ROWS = {
    {1500, 11.5},
    {2000, 8.7},
    {2500, 7.0},
    {3000, 5.8},
    {3500, 5.0},
    {4000, 4.2},
    {4500, 3.7},
    {5000, 3.2},
  };

  /** Torsional acceleration (rad/s²) left over by two joints that the two-joint table allows. */
  private static final double RESIDUAL_ACCELERATION = 402;

  private static final double RADIANS_PER_SECOND = Math.PI / 30;

  private JointAngleLimit() {}

  /** Largest angle of one joint at a speed (degrees). */
  public static <T extends CalculusFieldElement<T>> T largestAngle(T turns) {
    double speed = positive(turns).getReal();
    int last = ROWS.length - 1;
    if (speed <= ROWS[0][0] || speed >= ROWS[last][0]) {
      return turns.reciprocal().multiply(product(speed <= ROWS[0][0] ? 0 : last));
    }
    int below = 0;
    while (ROWS[below + 1][0] <= speed) {
      below++;
    }
    double from = ROWS[below][0];
    double step = ROWS[below + 1][0] - from;
    double gain = (product(below + 1) - product(below)) / step;
    return turns.subtract(from).multiply(gain).add(product(below)).divide(turns);
  }

  /** Torsional acceleration of a joint (rad/s²): the square of angle (radians) × speed (rad/s). */
  public static <T extends CalculusFieldElement<T>> T acceleration(T jointAngle, T turns) {
    return jointAngle.toRadians().multiply(positive(turns)).multiply(RADIANS_PER_SECOND).square();
  }

  /**
   * Largest residual angle of two joints together at a speed (degrees). Compare its square with
   * {@link ShaftJoints#residualAngleSquared}.
   */
  public static <T extends CalculusFieldElement<T>> T largestResidualAngle(T turns) {
    return positive(turns)
        .multiply(RADIANS_PER_SECOND)
        .reciprocal()
        .multiply(Math.sqrt(RESIDUAL_ACCELERATION))
        .toDegrees();
  }

  /** Largest angle of the second joint beside that of the first (degrees), in one plane. */
  public static <T extends CalculusFieldElement<T>> T largestSecondAngle(T firstAngle, T turns) {
    return firstAngle.square().add(largestResidualAngle(turns).square()).sqrt();
  }

  private static double product(int row) {
    return ROWS[row][0] * ROWS[row][1];
  }

  private static <T extends CalculusFieldElement<T>> T positive(T turns) {
    if (!(turns.getReal() > 0 && turns.getReal() < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "found " + turns.getReal() + " turns of a shaft per minute; expected a number above 0");
    }
    return turns;
  }
}
