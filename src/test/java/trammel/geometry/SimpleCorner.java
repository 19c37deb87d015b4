package trammel.geometry;

import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A front corner of the plainest kind: the knuckle turns about an inclined axis, and rises and
 * falls on a slight arc. x forward, y left, z up; origin in the wheel's center at rest; steer in
 * degrees.
 *
 * @param side 1 left, −1 right
 * @param kingpin inclination, top inward (degrees)
 * @param caster top rearward (degrees)
 * @param scrub from where the axis meets the ground outward to the center plane (mm)
 * @param loadedRadius (mm)
 * @param arm length of the arc's radius (mm)
 */
record SimpleCorner(
    int side, double kingpin, double caster, double scrub, double loadedRadius, double arm)
    implements Stances {

  /** Unit vector up the steering axis. */
  Vector3D steeringAxis() {
    return new Vector3D(
            -Math.tan(Math.toRadians(caster)), -side * Math.tan(Math.toRadians(kingpin)), 1)
        .normalize();
  }

  /** Where the steering axis passes at the height of the wheel's center. */
  Vector3D pivot() {
    return new Vector3D(0, -side * (scrub + loadedRadius * Math.tan(Math.toRadians(kingpin))), 0);
  }

  @Override
  public Optional<Stance> at(double travel, double steer) {
    Rotation turn =
        new Rotation(steeringAxis(), Math.toRadians(steer), RotationConvention.VECTOR_OPERATOR);
    Vector3D rise = new Vector3D(0, side * (Math.sqrt(arm * arm - travel * travel) - arm), travel);
    Vector3D pivot = pivot();
    Motion knuckle = new Motion(turn, pivot.add(rise).subtract(turn.applyTo(pivot)));
    Rotation swing =
        new Rotation(
            Vector3D.PLUS_I, side * Math.asin(travel / arm), RotationConvention.VECTOR_OPERATOR);
    Vector3D hinge = new Vector3D(0, pivot.getY() - side * arm, 0);
    Motion swung = new Motion(swing, hinge.subtract(swing.applyTo(hinge)));
    return Optional.of(
        new Stance(
            knuckle.apply(Vector3D.ZERO),
            turn.applyTo(new Vector3D(0, side, 0)),
            () -> knuckle,
            () -> swung));
  }
}
