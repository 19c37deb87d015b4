package trammel.geometry;

/**
 * The rectangle a wheel is swept over. A range without extent is a single value: a wheel that does
 * not steer has equal locks.
 *
 * @param lowestTravel full droop (mm of rise of the wheel)
 * @param highestTravel bump stop fully pressed (mm)
 * @param fullRight steering input at full right lock, in the linkage's unit
 * @param fullLeft at full left lock
 */
public record SweepRange(
    double lowestTravel, double highestTravel, double fullRight, double fullLeft) {
  /** Refuses ranges that end before they begin, or are not finite. */
  public SweepRange {
    requireOrdered("travel", lowestTravel, highestTravel);
    requireOrdered("steering", fullRight, fullLeft);
  }

  private static void requireOrdered(String what, double from, double to) {
    if (!(from <= to) || Double.isInfinite(to - from)) {
      throw new IllegalArgumentException(
          what + " from " + from + " to " + to + "; expected the lower first");
    }
  }
}
