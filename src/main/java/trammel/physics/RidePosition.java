package trammel.physics;

/** Where a wheel on a steel spring comes to rest. Travel as in {@link SpringPath}. */
public sealed interface RidePosition {
  /** Rise of the wheel center relative to the body (mm). */
  double travel();

  /** Along the spring (N). */
  double springForce();

  /**
   * The spring carries the load.
   *
   * @param travel (mm)
   * @param springForce (N)
   * @param deflection of the spring from its free length (mm)
   * @param wheelRate of the load with the travel, the part of a changing ratio in it (N/mm)
   * @param perLoad change of the travel with the load (mm/N)
   * @param perSpacer its change with the spacer's thickness, the same as with the free length
   * @param perSeatDistance its change with a common error of the distance of the seats
   * @param perRelativeRate its change per relative error of the spring's rate (mm)
   * @param perRatio its change with the motion ratio where the wheel stands, the distance of the
   *     seats held (mm)
   */
  record Balanced(
      double travel,
      double springForce,
      double deflection,
      double wheelRate,
      double perLoad,
      double perSpacer,
      double perSeatDistance,
      double perRelativeRate,
      double perRatio)
      implements RidePosition {}

  /**
   * No travel within the stops balances the load; the wheel stands at what limits it.
   *
   * @param limit what holds it
   * @param travel there (mm)
   * @param springForce there (N)
   * @param unbalanced what the limit carries at the wheel (N): load less what the spring carries,
   *     below 0 where the spring pushes the wheel into its droop stop
   */
  record Limited(Limit limit, double travel, double springForce, double unbalanced)
      implements RidePosition {}

  /** What a wheel comes to rest on where not on its spring. */
  enum Limit {
    /** The spring, even at full droop, carries more than the load. */
    DROOP_STOP,
    /** The spring, even at full bump, carries less than the load. */
    BUMP_STOP,
    /** At full bump the coil is still loose: it carries nothing. */
    COIL_SLACK,
    /** The coil is solid before it carries the load, or already at full droop. */
    COIL_BOUND
  }
}
