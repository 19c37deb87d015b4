package trammel.quantity;

/**
 * A quantity held against a limit, decided as ISO 14253-1 has it: met if the margin is at least its
 * expanded uncertainty; otherwise not met if it is at most the negative of it; otherwise undecided.
 *
 * <p>Rules compare far more than they report, so the margin with its working is made when it is
 * asked for.
 */
public final class Comparison {
  private final Quantity quantity;
  private final Quantity limit;
  private final Sense sense;
  private final Decision decision;

  private Comparison(Quantity quantity, Quantity limit, Sense sense, Decision decision) {
    this.quantity = quantity;
    this.limit = limit;
    this.sense = sense;
    this.decision = decision;
  }

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
    return new Comparison(quantity, limit, sense, decide(quantity, limit, sense));
  }

  /** Margins beyond what uncertainty can be at most, and this share more, need not know it. */
  private static final double BEYOND = 1 + 1e-9;

  private static Decision decide(Quantity quantity, Quantity limit, Sense sense) {
    if (!quantity.isKnown() || !limit.isKnown()) {
      return Decision.ABSENT;
    }
    double margin = sense.sign * (quantity.value() - limit.value());
    double ofLimit = limit.uncertainty().most();
    double most = quantity.uncertainty().most() + ofLimit;
    if (Math.abs(margin) > most * BEYOND) {
      return margin > 0 ? Decision.MET : Decision.NOT_MET;
    }
    double expanded =
        ofLimit == 0 ? quantity.expanded() : margin(quantity, limit, sense).expanded();
    if (margin >= expanded && !(sense.strict && margin == 0)) {
      return Decision.MET;
    }
    return margin <= -expanded ? Decision.NOT_MET : Decision.UNDECIDED;
  }

  private static Quantity margin(Quantity quantity, Quantity limit, Sense sense) {
    return (sense.sign > 0 ? OVER : UNDER).linear(sense.sign, quantity, -sense.sign, limit);
  }

  /** What is judged. */
  public Quantity quantity() {
    return quantity;
  }

  /** What it is judged against. */
  public Quantity limit() {
    return limit;
  }

  /** Which side of the limit is good. */
  public Sense sense() {
    return sense;
  }

  /** How far inside the limit it lies (negative: outside), with the uncertainty of both. */
  public Quantity margin() {
    return margin(quantity, limit, sense);
  }

  /** The outcome. */
  public Decision decision() {
    return decision;
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
