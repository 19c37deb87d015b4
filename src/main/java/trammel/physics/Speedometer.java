package trammel.physics;

/** What a speedometer may show, and what it shows after a change of tires (km/h). */
public final class Speedometer {
  /** UN R39, 5.3: indicated less true speed is at least 0 and at most a tenth of it plus this. */
  private static final double ALLOWANCE = 4;

  private static final double PROPORTION = 0.1;

  private Speedometer() {}

  /** Highest speed that may be shown at a true speed: 1.1 × it + 4 km/h (UN R39, 5.3). */
  public static double highestIndication(double trueSpeed) {
    Require.notNegative("true speed", trueSpeed);
    return trueSpeed + PROPORTION * trueSpeed + ALLOWANCE;
  }

  /** Lowest true speed at which a speed may be shown, from the same bound; never below 0. */
  public static double lowestTrueSpeed(double indicated) {
    Require.notNegative("indicated speed", indicated);
    return Math.max(0, (indicated - ALLOWANCE) / (1 + PROPORTION));
  }

  /** Whether UN R39, 5.3 allows this indication at this true speed. */
  public static boolean isAllowed(double indicated, double trueSpeed) {
    return indicated >= trueSpeed && indicated <= highestIndication(trueSpeed);
  }

  /** New over old rolling circumference (or diameter): the k of the methods below. */
  public static double circumferenceRatio(double oldCircumference, double newCircumference) {
    Require.positive("old circumference", oldCircumference);
    Require.positive("new circumference", newCircumference);
    return newCircumference / oldCircumference;
  }

  /**
   * How much a meter has in hand against reading low: r − k. Below 0 it reads low, which UN R39,
   * 5.3 never allows.
   *
   * @param overReading r, indicated over true speed on the old tires
   * @param circumferenceRatio k, new over old circumference
   */
  public static double reserve(double overReading, double circumferenceRatio) {
    Require.positive("over-reading", overReading);
    Require.positive("circumference ratio", circumferenceRatio);
    return overReading - circumferenceRatio;
  }

  /** Whether the meter still never reads low: k ≤ r. */
  public static boolean neverReadsLow(double overReading, double circumferenceRatio) {
    return reserve(overReading, circumferenceRatio) >= 0;
  }

  /** What is shown on the new tires at the true speed at which the old ones showed this: ÷ k. */
  public static double indicatedAfter(double indicatedBefore, double circumferenceRatio) {
    Require.positive("circumference ratio", circumferenceRatio);
    return indicatedBefore / circumferenceRatio;
  }

  /** True speed on the new tires at the indication that meant this on the old ones: × k. */
  public static double trueAfter(double trueBefore, double circumferenceRatio) {
    Require.positive("circumference ratio", circumferenceRatio);
    return trueBefore * circumferenceRatio;
  }
}
