package trammel.physics;

import java.util.List;

/**
 * What the wheels carry, from the masses of a vehicle standing level. Positions in mm behind the
 * front axle (below 0 ahead of it) and to the left of the center plane. Loads in N, at standard
 * gravity. Equilibrium of forces and moments; own derivation.
 *
 * <p>A body on four wheels is one load short of being determined: how front and rear share a moment
 * about the fore-and-aft axis depends on their roll rates, so that share is asked for. Where it is
 * not known, the front's share of the weight is the usual assumption.
 */
public final class AxleStatics {
  /** Standard acceleration of free fall (m/s²), by definition. */
  public static final double GRAVITY = 9.80665;

  private AxleStatics() {}

  /**
   * One mass of the vehicle: the body, an axle, a winch, a passenger.
   *
   * @param mass (kg), 0 or more
   * @param behind of the front axle (mm)
   * @param left of the center plane (mm)
   */
  public record PointMass(double mass, double behind, double left) {
    /**
     * @throws IllegalArgumentException for a mass below 0 or a position that is no number
     */
    public PointMass {
      Require.notNegative("mass", mass);
      if (!Double.isFinite(behind) || !Double.isFinite(left)) {
        throw Require.refused("position of a mass", behind + left, "a length");
      }
    }
  }

  /**
   * Loads of the two axles (N).
   *
   * @param front below 0 where the vehicle would tip onto its tail
   * @param rear below 0 where it would tip onto its nose
   */
  public record AxleLoads(double front, double rear) {}

  /** Loads of the four wheels (N), below 0 where a wheel would lift. */
  public record WheelLoads(
      double frontLeft, double frontRight, double rearLeft, double rearRight) {}

  /** Loads of the axles: each mass by the lever about the other axle. */
  public static AxleLoads axles(List<PointMass> masses, double wheelbase) {
    double front = 0;
    double rear = 0;
    for (PointMass at : masses) {
      front += at.mass() * frontPerMass(at.behind(), wheelbase);
      rear += at.mass() * rearPerMass(at.behind(), wheelbase);
    }
    return new AxleLoads(front, rear);
  }

  /** Change of the front load per mass at a place (N/kg): g (1 − x / L). */
  public static double frontPerMass(double behind, double wheelbase) {
    Require.positive("wheelbase", wheelbase);
    return GRAVITY * (1 - behind / wheelbase);
  }

  /** Change of the rear load per mass at a place (N/kg): g x / L. */
  public static double rearPerMass(double behind, double wheelbase) {
    Require.positive("wheelbase", wheelbase);
    return GRAVITY * behind / wheelbase;
  }

  /**
   * Change of the rear load as a mass moves back (N/mm): g m / L; that of the front is opposite.
   */
  public static double rearPerBehind(double mass, double wheelbase) {
    Require.positive("wheelbase", wheelbase);
    return GRAVITY * mass / wheelbase;
  }

  /**
   * Change of the rear load with the wheelbase, the masses where they are (N/mm): −rear load / L;
   * that of the front is opposite.
   */
  public static double rearPerWheelbase(List<PointMass> masses, double wheelbase) {
    return -axles(masses, wheelbase).rear() / wheelbase;
  }

  /** Moment of the weights about the fore-and-aft axis (N·mm), positive onto the left wheels. */
  public static double sideMoment(List<PointMass> masses) {
    double moment = 0;
    for (PointMass at : masses) {
      moment += GRAVITY * at.mass() * at.left();
    }
    return moment;
  }

  /**
   * Load of the left wheel of an axle (N): half of the axle's, and its moment over the track. The
   * right wheel's has the moment's sign reversed. Partials: 1/2 by the axle load, 1/track by the
   * moment.
   *
   * @param sideMoment this axle's part of it (N·mm)
   * @param track (mm)
   */
  public static double leftWheel(double axleLoad, double sideMoment, double track) {
    Require.positive("track", track);
    return axleLoad / 2 + sideMoment / track;
  }

  /**
   * Loads of the four wheels.
   *
   * @param frontRollShare part of the moment about the fore-and-aft axis that the front axle takes,
   *     0 to 1: its roll rate over that of both
   */
  public static WheelLoads wheels(
      List<PointMass> masses,
      double wheelbase,
      double frontTrack,
      double rearTrack,
      double frontRollShare) {
    if (!(frontRollShare >= 0 && frontRollShare <= 1)) {
      throw Require.refused("front share of the roll moment", frontRollShare, "0 to 1");
    }
    AxleLoads axles = axles(masses, wheelbase);
    double front = frontRollShare * sideMoment(masses);
    double rear = (1 - frontRollShare) * sideMoment(masses);
    return new WheelLoads(
        leftWheel(axles.front(), front, frontTrack),
        leftWheel(axles.front(), -front, frontTrack),
        leftWheel(axles.rear(), rear, rearTrack),
        leftWheel(axles.rear(), -rear, rearTrack));
  }
}
