package trammel.compare;

/**
 * How far a measured value lies from its prediction.
 *
 * @param difference measured − predicted, in the unit the quantities are kept in
 * @param expanded expanded uncertainty of that difference, k = 2
 */
public record Deviation(Pair pair, double difference, double expanded) {

  /**
   * The deviation of a pair whose prediction is known. Reading and prediction share no error.
   *
   * @throws IllegalStateException if either is absent
   */
  public static Deviation of(Pair pair) {
    return new Deviation(
        pair,
        pair.measured().value() - pair.predicted().value(),
        Math.hypot(pair.measured().expanded(), pair.predicted().expanded()));
  }

  /**
   * The difference in units of its expanded uncertainty: the E_n number, (x − X)/√(U(x)² + U(X)²),
   * of ISO 13528 (statistical methods for proficiency testing), which ISO/IEC 17043 names too; from
   * memory.
   */
  public double score() {
    return difference / expanded;
  }

  /** Whether it is no larger than what is known of both: |E_n| ≤ 1. */
  public boolean agrees() {
    return Math.abs(difference) <= expanded;
  }
}
