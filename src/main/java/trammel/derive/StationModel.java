package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import trammel.physics.TireSweep;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Station;

/**
 * How the gap at a station changes with the tire's edge, its radius and the wheel's travel, where
 * only posed gaps are known.
 *
 * @param perEdge gap lost for each mm that the edge comes nearer
 * @param perRadius gap lost for each mm of tire radius
 * @param perBump gap lost for each mm that the wheel rises
 */
record StationModel(double perEdge, double perRadius, double perBump) {
  /** Model uncertainty (mm), k = 2: a part that is always there. Common practice. */
  private static final double ALWAYS = 2;

  /** Model uncertainty, k = 2: a share of the change that is carried over. Common practice. */
  private static final double SHARE = 0.15;

  /**
   * The tire about which the lock stations' slopes are taken (mm): free radius, shoulder radius,
   * and its outer edge from a steering axis 98 mm inboard of its center at hub height, half way
   * through a change of 25 mm. Common practice.
   */
  private static final double RADIUS = 407.5;

  private static final double SHOULDER = 40;
  private static final double OUTER_EDGE = TireSweep.outerEdge(98, 275) + 12.5;

  /** Lock at which the inner corner meets the rail (degrees). Common practice. */
  private static final double LOCK = 35;

  /** At lock the shoulder's reach about the steering axis sets what edge and radius cost. */
  private static final StationModel REACH =
      new StationModel(
          TireSweep.reachPerEdge(RADIUS, OUTER_EDGE, SHOULDER),
          TireSweep.reachPerRadius(RADIUS, OUTER_EDGE, SHOULDER),
          0.17);

  /**
   * The one table of coefficients. The others than {@link #REACH}, and what bump costs, by
   * direction and by our own sweep of that tire over 60 mm of travel: common practice.
   */
  static StationModel of(Station station) {
    return switch (station) {
      case REAR_MOUNT, BUMPER_END -> REACH;
      case ARCH -> new StationModel(0.30, 1.00, 0.67);
      case LINER -> new StationModel(0, 1.00, 0.17);
      case FRAME_RAIL -> new StationModel(1.00, TireSweep.inboardReachPerRadius(LOCK), 0);
      case INNER_SIDE, SPRING_SIDE -> new StationModel(1.00, 0, 0);
    };
  }

  /** What the model may be wrong by when it carries a gap over by a change: 0 ± U (mm), k = 2. */
  Quantity uncertainty(Station station, Quantity change) {
    double expanded = ALWAYS + (change.isKnown() ? SHARE * Math.abs(change.value()) : 0);
    Input input =
        new Input(
            "StationModel", "model of the " + station, 0, "common practice", Instrument.STATED);
    return Quantity.read("model of the " + station, LENGTH, 0, expanded, input);
  }
}
