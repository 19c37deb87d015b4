package trammel.quantity;

/**
 * A quantity held against a limit, decided as ISO 14253-1 has it: met if the margin is at least its
 * expanded uncertainty; otherwise not met if it is at most the negative of it; otherwise undecided.
 *
 * @param quantity what is judged
 * @param limit what it is judged against
 * @param sense which side of the limit is good
 * @param margin how far inside the limit it lies (negative: outside), with the uncertainty of both
 * @param decision the outcome
 */
public record Comparison(
    Quantity quantity, Quantity limit, Sense sense, Quantity margin, Decision decision) {

  /** Which side of a limit is good. */
  public enum Sense {
    AT_LEAST("at least", 1, false),
    AT_MOST("at most", -1, false),
    ABOVE("above", 1, true),
    BELOW("below", -1, true);

    private final String words;
    private final int sign;
    private final boolean strict;

    Sense(String words, int sign, boolean strict) {
      this.words = words;
      this.sign = sign;
      this.strict = strict;
    }

    public String words() {
      return words;
    }
  }

  private static final Formula OVER = new Formula("margin", "value − limit", "definition");
  private static final Formula UNDER = new Formula("margin", "limit − value", "definition");

  static Comparison of(Quantity quantity, Quantity limit, Sense sense) {
    if (quantity.dimension() != limit.dimension()) {
      throw new IllegalArgumentException(
          "a "
              + quantity.dimension().words()
              + " ("
              + quantity.name()
              + ") cannot be held against a "
              + limit.dimension().words());
    }
    Quantity margin =
        (sense.sign > 0 ? OVER : UNDER).linear(sense.sign, quantity, -sense.sign, limit);
    return new Comparison(quantity, limit, sense, margin, decide(margin, sense.strict));
  }

  private static Decision decide(Quantity margin, boolean strict) {
    if (!margin.isKnown()) {
      return Decision.ABSENT;
    }
    double m = margin.value();
    double u = margin.expanded();
    if (m >= u && !(strict && m == 0)) {
      return Decision.MET;
    }
    return m <= -u ? Decision.NOT_MET : Decision.UNDECIDED;
  }

  /** Not certainly met: broken, undecided or absent. */
  public boolean isPossiblyViolated() {
    return decision.isPossiblyViolated();
  }

  /** Certainly met. */
  public boolean isMet() {
    return decision == Decision.MET;
  }

  /** Certainly broken. */
  public boolean isBroken() {
    return decision == Decision.NOT_MET;
  }
}
