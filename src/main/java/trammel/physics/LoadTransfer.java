package trammel.physics;

/**
 * Load that moves between wheels under acceleration, and the height of the center of gravity that
 * it depends on. Pages of the trade; common practice.
 */
public final class LoadTransfer {
  private LoadTransfer() {}

  /**
   * Load that leaves one side for the other, or one axle for the other.
   *
   * @param value in the unit of the weight
   * @param perWeight its change by the weight
   * @param perAcceleration by the acceleration in g
   * @param perHeight by the height of the center of gravity (per mm)
   * @param perBase by the track or the wheelbase (per mm)
   */
  public record Transfer(
      double value, double perWeight, double perAcceleration, double perHeight, double perBase) {}

  /**
   * Height of the center of gravity (mm), with its change by each input.
   *
   * @param value above the line through the wheel centers (mm)
   * @param perLevelLoad (mm/kg)
   * @param perTiltedLoad (mm/kg)
   * @param perTotal (mm/kg)
   * @param perWheelbase (mm/mm)
   * @param perTilt (mm/degree)
   */
  public record Height(
      double value,
      double perLevelLoad,
      double perTiltedLoad,
      double perTotal,
      double perWheelbase,
      double perTilt) {}

  /**
   * From the inner to the outer wheels: W a h / T, of both axles together and with the body held
   * upright.
   *
   * @param weight W, of the vehicle, or of what an axle carries (N or kg)
   * @param acceleration a, lateral (g)
   * @param height h, of the center of gravity above ground (mm)
   * @param track T (mm)
   */
  public static Transfer lateral(double weight, double acceleration, double height, double track) {
    Require.positive("track", track);
    return transfer(weight, acceleration, height, track);
  }

  /**
   * From the front to the rear axle: W a h / L.
   *
   * @param acceleration a, forward; below 0 when braking, which loads the front (g)
   * @param wheelbase L (mm)
   */
  public static Transfer longitudinal(
      double weight, double acceleration, double height, double wheelbase) {
    Require.positive("wheelbase", wheelbase);
    return transfer(weight, acceleration, height, wheelbase);
  }

  /**
   * Height of the center of gravity from a tilt weighing: (W′ − W) · L · cot θ / M. The suspension
   * is blocked, brakes are off, all tires have the same loaded radius; that radius added gives the
   * height above ground.
   *
   * @param level W, what the axle left on the ground weighs with the vehicle level (kg)
   * @param tilted W′, what it weighs with the other axle raised (kg)
   * @param total M, of the vehicle (kg)
   * @param wheelbase L (mm)
   * @param tilt θ, of the line through the wheel centers (degrees), above 0 and below 90
   */
  public static Height byTilting(
      double level, double tilted, double total, double wheelbase, double tilt) {
    Require.positive("mass", total);
    Require.positive("wheelbase", wheelbase);
    if (!(tilt > 0 && tilt < 90)) {
      throw Require.refused("tilt", tilt, "more than 0 and less than 90 degrees");
    }
    double radians = Math.toRadians(tilt);
    double perLoad = wheelbase / (total * Math.tan(radians));
    double gained = tilted - level;
    double value = gained * perLoad;
    double sine = Math.sin(radians);
    return new Height(
        value,
        -perLoad,
        perLoad,
        -value / total,
        value / wheelbase,
        -gained * wheelbase / (total * sine * sine) * Math.toRadians(1));
  }

  private static Transfer transfer(double weight, double acceleration, double height, double base) {
    Require.notNegative("weight", weight);
    Require.positive("height of the center of gravity", height);
    double value = weight * acceleration * height / base;
    return new Transfer(
        value,
        acceleration * height / base,
        weight * height / base,
        weight * acceleration / base,
        -value / base);
  }
}
