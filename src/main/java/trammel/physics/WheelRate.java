package trammel.physics;

/**
 * A spring as the wheel feels it. Motion ratio: spring travel over wheel travel. Rates in N/mm.
 * <em>Automotive Chassis Engineering</em> (Barton and Fieldhouse), p. 179, for the square of the
 * ratio; series, parallel and frequency are textbook mechanics.
 */
public final class WheelRate {
  private WheelRate() {}

  /**
   * A result of two inputs with its change by each, in the order of the arguments.
   *
   * @param value the result
   * @param perFirst its partial derivative by the first argument
   * @param perSecond its partial derivative by the second argument
   */
  public record OfTwo(double value, double perFirst, double perSecond) {}

  /** Rate at the wheel (N/mm): k · MR². */
  public static OfTwo of(double rate, double ratio) {
    Require.notNegative("spring rate", rate);
    Require.positive("motion ratio", ratio);
    return new OfTwo(rate * ratio * ratio, ratio * ratio, 2 * rate * ratio);
  }

  /**
   * Motion ratio of a spring that leans from the direction in which its mount moves: MR · cos φ. As
   * it enters the wheel rate squared, so does the cosine.
   *
   * @param ratio travel of the mount over wheel travel
   * @param lean φ (degrees), below 90 either way
   */
  public static OfTwo leaningRatio(double ratio, double lean) {
    Require.positive("motion ratio", ratio);
    if (!(Math.abs(lean) < 90)) {
      throw Require.refused("lean of the spring", lean, "less than 90 degrees");
    }
    double radians = Math.toRadians(lean);
    return new OfTwo(
        ratio * Math.cos(radians),
        Math.cos(radians),
        -ratio * Math.sin(radians) * Math.toRadians(1));
  }

  /** Rate of two springs side by side (N/mm): their sum. */
  public static OfTwo parallel(double first, double second) {
    Require.notNegative("spring rate", first);
    Require.notNegative("spring rate", second);
    return new OfTwo(first + second, 1, 1);
  }

  /** Rate of two springs one on the other (N/mm): k₁ k₂ / (k₁ + k₂). */
  public static OfTwo series(double first, double second) {
    Require.positive("spring rate", first);
    Require.positive("spring rate", second);
    double sum = first + second;
    double firstShare = first / sum;
    double secondShare = second / sum;
    return new OfTwo(first * secondShare, secondShare * secondShare, firstShare * firstShare);
  }

  /** Ride rate (N/mm): the wheel rate in series with that of the tire. */
  public static OfTwo rideRate(double wheelRate, double tireRate) {
    return series(wheelRate, tireRate);
  }

  /**
   * Undamped natural frequency (Hz): √(k / m) / 2π.
   *
   * @param rate at the wheel, or the ride rate (N/mm)
   * @param mass that the corner carries on its spring (kg)
   */
  public static OfTwo frequency(double rate, double mass) {
    Require.positive("rate", rate);
    Require.positive("sprung mass", mass);
    double frequency = Math.sqrt(1000 * rate / mass) / (2 * Math.PI);
    return new OfTwo(frequency, frequency / (2 * rate), -frequency / (2 * mass));
  }
}
