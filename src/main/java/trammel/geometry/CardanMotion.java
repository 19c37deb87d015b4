package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/**
 * How a Cardan joint turns its output, from tan(out) = tan(in) / cos b: textbook form. Angles in
 * degrees; the input angle is 0 with the driving fork in the plane of the joint angle b.
 */
public final class CardanMotion {
  private CardanMotion() {}

  /** Output speed over input speed: cos b / (1 − sin² b · cos² in). */
  public static <T extends CalculusFieldElement<T>> T ratio(T jointAngle, T input) {
    T bend = acute(jointAngle).toRadians();
    T share = bend.sin().multiply(input.toRadians().cos()).square();
    return bend.cos().divide(share.negate().add(1));
  }

  /** Highest ratio, fork in the plane: 1 / cos b. */
  public static <T extends CalculusFieldElement<T>> T highestRatio(T jointAngle) {
    return acute(jointAngle).toRadians().cos().reciprocal();
  }

  /** Lowest ratio, fork across the plane: cos b. */
  public static <T extends CalculusFieldElement<T>> T lowestRatio(T jointAngle) {
    return acute(jointAngle).toRadians().cos();
  }

  /** Non-uniformity: highest less lowest ratio. */
  public static <T extends CalculusFieldElement<T>> T nonUniformity(T jointAngle) {
    return highestRatio(jointAngle).subtract(lowestRatio(jointAngle));
  }

  /**
   * Largest lead of the output over the input (degrees): tan e = (1 − cos b) / (2 √cos b). From
   * memory; it follows from the derivative of the textbook form.
   */
  public static <T extends CalculusFieldElement<T>> T largestLead(T jointAngle) {
    T cosine = acute(jointAngle).toRadians().cos();
    return cosine.negate().add(1).divide(cosine.sqrt().multiply(2)).atan().toDegrees();
  }

  /**
   * Highest speed of the second joint's output over the first joint's input, two joints in one
   * plane with the forks on the shaft in line: the cosine of the smaller angle over that of the
   * larger.
   */
  public static <T extends CalculusFieldElement<T>> T highestRatio(T firstAngle, T secondAngle) {
    T first = acute(firstAngle).toRadians().cos();
    T second = acute(secondAngle).toRadians().cos();
    return first.getReal() < second.getReal() ? second.divide(first) : first.divide(second);
  }

  /**
   * Angle of the single joint that would run as unevenly as two in one plane with the forks on the
   * shaft in line (degrees): √|b₁² − b₂²|. Common practice. Equal angles give 0, with 0 for the
   * derivative that the root does not have there.
   */
  public static <T extends CalculusFieldElement<T>> T residualAngle(T firstAngle, T secondAngle) {
    T square = acute(firstAngle).square().subtract(acute(secondAngle).square()).abs();
    return square.getReal() > 0 ? square.sqrt() : square.getField().getZero();
  }

  /**
   * Joint angle from its parts in side view and in plan (degrees): tan² b = tan² side + tan² plan,
   * from the directions; the trade's √(side² + plan²) is that for small angles.
   */
  public static <T extends CalculusFieldElement<T>> T compoundAngle(T side, T plan) {
    T square = acute(side).toRadians().tan().square().add(acute(plan).toRadians().tan().square());
    return square.getReal() > 0 ? square.sqrt().atan().toDegrees() : square.getField().getZero();
  }

  private static <T extends CalculusFieldElement<T>> T acute(T angle) {
    if (!(Math.abs(angle.getReal()) < 90)) {
      throw new IllegalArgumentException(
          "found a joint angle of " + angle.getReal() + "; expected degrees between -90 and 90");
    }
    return angle;
  }
}
