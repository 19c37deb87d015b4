package trammel.quantity;

/**
 * The outcome of holding a quantity against a limit (ISO 14253-1: conformity, non-conformity, or
 * neither proven).
 */
public enum Decision {
  MET,
  NOT_MET,
  /** The margin is smaller than what is known about it. */
  UNDECIDED,
  /** A value is missing. */
  ABSENT;

  /** Whether the limit may be broken: anything but {@link #MET}. */
  public boolean isPossiblyViolated() {
    return this != MET;
  }

  /** Whether neither pass nor fail is proven. */
  public boolean isOpen() {
    return this == UNDECIDED || this == ABSENT;
  }

  /**
   * Kleene's conjunction; of two open outcomes an absent value weighs more, because it can be
   * measured.
   */
  public Decision and(Decision other) {
    if (this == NOT_MET || other == NOT_MET) {
      return NOT_MET;
    }
    return this == MET ? other : other == MET ? this : worseOpen(other);
  }

  /** Kleene's disjunction. */
  public Decision or(Decision other) {
    if (this == MET || other == MET) {
      return MET;
    }
    return this == NOT_MET ? other : other == NOT_MET ? this : worseOpen(other);
  }

  /** Kleene's negation. */
  public Decision not() {
    return switch (this) {
      case MET -> NOT_MET;
      case NOT_MET -> MET;
      default -> this;
    };
  }

  private Decision worseOpen(Decision other) {
    return this == ABSENT || other == ABSENT ? ABSENT : UNDECIDED;
  }

  /** The decision on a plain yes or no. */
  public static Decision of(boolean met) {
    return met ? MET : NOT_MET;
  }
}
