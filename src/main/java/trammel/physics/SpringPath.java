package trammel.physics;

/**
 * How the seats of a spring close as the wheel rises. Travel is the rise of the wheel center
 * relative to the body, a lift of d being a travel of −d (mm).
 */
public interface SpringPath {
  /** Half of the span over which the change of the ratio is taken (mm). */
  double RATIO_STEP = 0.5;

  /** Distance of the seats at a travel, spacers not counted (mm). */
  double seatDistance(double travel);

  /**
   * Motion ratio: closing of the seats per mm of travel, above 0; less the slope of the distance.
   */
  double ratio(double travel);

  /** Change of the ratio with the travel (1/mm); unless stated, taken over 1 mm about it. */
  default double ratioPerTravel(double travel) {
    return (ratio(travel + RATIO_STEP) - ratio(travel - RATIO_STEP)) / (2 * RATIO_STEP);
  }

  /**
   * One ratio throughout: a spring whose lever does not change.
   *
   * @param seatDistanceAtRest at travel 0 (mm)
   * @param ratio spring travel over wheel travel
   */
  record Constant(double seatDistanceAtRest, double ratio) implements SpringPath {
    /**
     * @throws IllegalArgumentException if either is not above 0
     */
    public Constant {
      Require.positive("distance of the spring seats", seatDistanceAtRest);
      Require.positive("motion ratio of the spring", ratio);
    }

    @Override
    public double seatDistance(double travel) {
      return seatDistanceAtRest - ratio * travel;
    }

    @Override
    public double ratio(double travel) {
      return ratio;
    }

    @Override
    public double ratioPerTravel(double travel) {
      return 0;
    }

    /** Travel at which the seats are so far apart (mm). */
    public double travelAt(double seatDistance) {
      return (seatDistanceAtRest - seatDistance) / ratio;
    }
  }
}
