package trammel.physics;

/** Overall gearing and what a change of tires does to it. Rolling diameters in mm. */
public final class Gearing {
  private static final double MILLIMETERS_PER_KILOMETER = 1e6;
  private static final double MINUTES_PER_HOUR = 60;

  private Gearing() {}

  /** The final drive ratio that the old tires would need to act as the new ones do. */
  public static double effectiveFinalDrive(double ratio, double oldDiameter, double newDiameter) {
    require(ratio, oldDiameter, newDiameter);
    return ratio * oldDiameter / newDiameter;
  }

  /** The final drive ratio that gives the new tires the gearing of the old ones. */
  public static double restoringFinalDrive(double ratio, double oldDiameter, double newDiameter) {
    require(ratio, oldDiameter, newDiameter);
    return ratio * newDiameter / oldDiameter;
  }

  /**
   * Engine speed (turns per minute) at a road speed, without slip: v · ratio / (π · diameter).
   *
   * @param speed (km/h)
   * @param overallRatio final drive × gear × transfer case
   * @param rollingDiameter rolling circumference / π (mm)
   */
  public static double engineSpeed(double speed, double overallRatio, double rollingDiameter) {
    Require.notNegative("speed", speed);
    return speed / speedPerEngineTurn(overallRatio, rollingDiameter);
  }

  /** Road speed (km/h) at an engine speed (turns per minute). */
  public static double roadSpeed(double engineSpeed, double overallRatio, double rollingDiameter) {
    Require.notNegative("engine speed", engineSpeed);
    return engineSpeed * speedPerEngineTurn(overallRatio, rollingDiameter);
  }

  private static double speedPerEngineTurn(double overallRatio, double rollingDiameter) {
    Require.positive("overall ratio", overallRatio);
    Require.positive("rolling diameter", rollingDiameter);
    return Math.PI * rollingDiameter * MINUTES_PER_HOUR / MILLIMETERS_PER_KILOMETER / overallRatio;
  }

  private static void require(double ratio, double oldDiameter, double newDiameter) {
    Require.positive("final drive ratio", ratio);
    Require.positive("old diameter", oldDiameter);
    Require.positive("new diameter", newDiameter);
  }
}
