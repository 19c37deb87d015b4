package trammel.physics;

import java.util.Optional;

/**
 * Approach, departure and breakover angle that one point of the underside allows; the least over
 * all points is the vehicle's. Points in mm: fore of the front axle, up above level ground. Radii
 * are static loaded radii, the tire being the circle of that radius about the wheel center.
 *
 * <p>Approach and departure: between the ground and the plane that touches tire and vehicle, 49 CFR
 * 523.2; ISO 612 says the same of the greatest angle with nothing below the plane. Breakover: the
 * supplement of the angle between the tangents to both tires that meet at the point, 49 CFR 523.2
 * and SAE J1100 (from memory); ISO 612 (from memory) calls it ramp angle.
 *
 * <p>The tangent has tan(θ/2) = u / (d + √(d² − u (2R − u))), d being the distance from the axle
 * and u the height; own derivation. A result is empty for a point within the tire's circle, or that
 * is not on the side of the axle that the angle is about: it does not limit it.
 */
public final class Underbody {
  private Underbody() {}

  /**
   * An approach or departure angle, with its change by each input.
   *
   * @param degrees the angle (degrees)
   * @param perDistance by the distance of the point beyond the axle (degrees/mm); below 0
   * @param perUp by its height (degrees/mm)
   * @param perRadius by the loaded radius, the height held (degrees/mm)
   */
  public record Overhang(double degrees, double perDistance, double perUp, double perRadius) {}

  /**
   * A breakover angle, with its change by each input.
   *
   * @param degrees the angle (degrees)
   * @param perFore by the point's place, moved forward (degrees/mm)
   * @param perUp by its height (degrees/mm)
   * @param perWheelbase (degrees/mm); below 0
   * @param perFrontRadius (degrees/mm)
   * @param perRearRadius (degrees/mm)
   */
  public record Breakover(
      double degrees,
      double perFore,
      double perUp,
      double perWheelbase,
      double perFrontRadius,
      double perRearRadius) {}

  /**
   * Approach angle.
   *
   * @param fore of the front axle (mm)
   * @param up above ground (mm), 0 or more
   * @param frontRadius loaded (mm)
   */
  public static Optional<Overhang> approach(double fore, double up, double frontRadius) {
    return tangent(fore, up, frontRadius);
  }

  /**
   * Departure angle.
   *
   * @param fore of the front axle (mm); a point behind the rear axle lies below −wheelbase
   */
  public static Optional<Overhang> departure(
      double fore, double up, double wheelbase, double rearRadius) {
    Require.positive("wheelbase", wheelbase);
    return tangent(-fore - wheelbase, up, rearRadius);
  }

  /**
   * Breakover angle: the sum of the slopes of both tangents.
   *
   * @param fore of the front axle (mm); a point between the axles lies between −wheelbase and 0
   */
  public static Optional<Breakover> breakover(
      double fore, double up, double wheelbase, double frontRadius, double rearRadius) {
    Require.positive("wheelbase", wheelbase);
    Optional<Overhang> front = tangent(-fore, up, frontRadius);
    Optional<Overhang> rear = tangent(fore + wheelbase, up, rearRadius);
    return front.flatMap(
        f ->
            rear.map(
                r ->
                    new Breakover(
                        f.degrees() + r.degrees(),
                        r.perDistance() - f.perDistance(),
                        f.perUp() + r.perUp(),
                        r.perDistance(),
                        f.perRadius(),
                        r.perRadius())));
  }

  private static Optional<Overhang> tangent(double distance, double up, double radius) {
    Require.positive("loaded radius", radius);
    Require.notNegative("height above ground", up);
    double square = distance * distance - up * (2 * radius - up);
    if (!(distance > 0 && square > 0)) {
      return Optional.empty();
    }
    double length = Math.sqrt(square);
    double angle = 2 * Math.atan(up / (distance + length));
    double perLength = Math.toDegrees(1) / length;
    return Optional.of(
        new Overhang(
            Math.toDegrees(angle),
            -Math.sin(angle) * perLength,
            Math.cos(angle) * perLength,
            (1 - Math.cos(angle)) * perLength));
  }
}
