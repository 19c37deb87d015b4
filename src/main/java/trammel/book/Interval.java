package trammel.book;

import trammel.quantity.Comparison.Sense;

/**
 * Values that limits leave.
 *
 * @param from the least
 * @param fromIn whether the least belongs to it
 * @param to the greatest
 * @param toIn whether the greatest belongs to it
 */
record Interval(double from, boolean fromIn, double to, boolean toIn) {
  /** Every value. */
  static final Interval ALL =
      new Interval(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false);

  /** The values on the good side of a limit. */
  static Interval of(Sense sense, double limit) {
    return switch (sense) {
      case AT_LEAST -> new Interval(limit, true, ALL.to, false);
      case ABOVE -> new Interval(limit, false, ALL.to, false);
      case AT_MOST -> new Interval(ALL.from, false, limit, true);
      case BELOW -> new Interval(ALL.from, false, limit, false);
    };
  }

  /** The values that both leave. */
  Interval and(Interval other) {
    boolean otherFrom = other.from > from || (other.from == from && !other.fromIn);
    boolean otherTo = other.to < to || (other.to == to && !other.toIn);
    return new Interval(
        otherFrom ? other.from : from,
        otherFrom ? other.fromIn : fromIn,
        otherTo ? other.to : to,
        otherTo ? other.toIn : toIn);
  }

  /** Whether no value is left. */
  boolean isEmpty() {
    return from > to || (from == to && !(fromIn && toIn));
  }

  /** Whether values lie between the end of this one and the beginning of the next. */
  boolean leavesGapBefore(Interval next) {
    return to < next.from || (to == next.from && !toIn && !next.fromIn);
  }
}
