package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;

/**
 * Where a corner's upright and wheel stand. Coordinates as in {@link HardPoints}: fore, out, up
 * (mm); angles in degrees, with the signs of SAE J670 and ISO 8855 as stated at each.
 *
 * @param lowerAngle the lower arm above level (radians)
 * @param kingpin unit vector from the lower to the upper ball joint
 * @param steeringArm unit vector across the kingpin toward the tie rod's outer end
 * @param spindle unit vector along the wheel's axis, pointing outboard
 * @param upright what stands on the steering axis
 */
public record Pose<T extends CalculusFieldElement<T>>(
    T lowerAngle,
    FieldVector3D<T> lowerBall,
    FieldVector3D<T> upperBall,
    FieldVector3D<T> tieRodInner,
    FieldVector3D<T> wheelCenter,
    FieldVector3D<T> kingpin,
    FieldVector3D<T> steeringArm,
    FieldVector3D<T> spindle,
    Upright<T> upright)
    implements Posed<T> {

  /** The tie rod's outer end (mm). */
  public FieldVector3D<T> tieRodOuter() {
    return Products.from(lowerBall, upright.armFoot(), kingpin, upright.armLength(), steeringArm);
  }

  /** Camber (degrees), positive with the top outward: arcsine of the spindle's downward part. */
  public T camber() {
    return spindle.getZ().negate().asin().toDegrees();
  }

  /** Toe of this wheel (degrees), positive toward the inside: its heading in plan. */
  public T toe() {
    return spindle.getX().atan2(spindle.getY()).toDegrees();
  }

  /** Caster (degrees), positive with the top rearward: side view of the steering axis. */
  public T caster() {
    return kingpin.getX().negate().atan2(kingpin.getZ()).toDegrees();
  }

  /** Kingpin inclination (degrees), positive with the top inward: front view of the axis. */
  public T kingpinInclination() {
    return kingpin.getY().negate().atan2(kingpin.getZ()).toDegrees();
  }

  /** Length that the tie rod has in this pose (mm). */
  public T tieRodLength() {
    return Products.length(tieRodOuter().subtract(tieRodInner));
  }

  /**
   * Center of contact (mm): wheel center less the loaded radius along the upward direction in the
   * wheel's plane.
   *
   * @param loadedRadius of the tire (mm)
   */
  public FieldVector3D<T> contact(T loadedRadius) {
    T level = Squares.cosine(spindle.getZ());
    T along = loadedRadius.multiply(spindle.getZ()).divide(level);
    // upward = (z − (s·z) s) / |…|
    return new FieldVector3D<>(
        wheelCenter.getX().add(along.multiply(spindle.getX())),
        wheelCenter.getY().add(along.multiply(spindle.getY())),
        wheelCenter.getZ().subtract(loadedRadius.multiply(level)));
  }

  /** Where the steering axis meets the level plane through the center of contact (mm). */
  private FieldVector3D<T> axisAtGround(FieldVector3D<T> contact) {
    T down = contact.getZ().subtract(lowerBall.getZ()).divide(kingpin.getZ());
    return lowerBall.add(Products.times(down, kingpin));
  }

  /**
   * Scrub radius (mm): how far the center of contact lies outboard of the steering axis at the
   * ground, along the wheel's lateral direction.
   */
  public T scrubRadius(T loadedRadius) {
    FieldVector3D<T> contact = contact(loadedRadius);
    FieldVector3D<T> from = contact.subtract(axisAtGround(contact));
    return from.getX()
        .multiply(spindle.getX())
        .add(from.getY().multiply(spindle.getY()))
        .divide(level());
  }

  /**
   * Mechanical trail (mm): how far the steering axis meets the ground ahead of the center of
   * contact, along the wheel's heading.
   */
  public T mechanicalTrail(T loadedRadius) {
    FieldVector3D<T> contact = contact(loadedRadius);
    FieldVector3D<T> from = contact.subtract(axisAtGround(contact));
    return from.getY()
        .multiply(spindle.getX())
        .subtract(from.getX().multiply(spindle.getY()))
        .divide(level());
  }

  /** Length of the spindle in plan. */
  private T level() {
    return spindle.getX().square().add(spindle.getY().square()).sqrt();
  }

  /**
   * The pose once the lower arm has turned on by next to nothing, to first order.
   *
   * @param turn of the lower arm (radians)
   * @param below a pose of the same linkage beside this one, with the same heading
   * @param above another, on the other side of it or this one itself
   */
  Pose<T> turned(T turn, Pose<Binary64> below, Pose<Binary64> above) {
    T share = turn.divide(above.lowerAngle.getReal() - below.lowerAngle.getReal());
    return new Pose<>(
        lowerAngle.add(turn),
        lowerBall.add(moved(share, below.lowerBall, above.lowerBall)),
        upperBall.add(moved(share, below.upperBall, above.upperBall)),
        tieRodInner,
        wheelCenter.add(moved(share, below.wheelCenter, above.wheelCenter)),
        kingpin.add(moved(share, below.kingpin, above.kingpin)),
        steeringArm.add(moved(share, below.steeringArm, above.steeringArm)),
        spindle.add(moved(share, below.spindle, above.spindle)),
        moved(share, below.upright, above.upright));
  }

  /** A strut's axis tilts in its upright, which is then told anew; a wishbone's is always one. */
  private Upright<T> moved(T share, Upright<Binary64> below, Upright<Binary64> above) {
    return below.equals(above)
        ? upright
        : new Upright<>(
            upright.armFoot().add(share.multiply(way(below.armFoot(), above.armFoot()))),
            upright.armLength().add(share.multiply(way(below.armLength(), above.armLength()))),
            upright.wheel().add(moved(share, below.wheel(), above.wheel())),
            upright.spindle().add(moved(share, below.spindle(), above.spindle())));
  }

  private static double way(Binary64 below, Binary64 above) {
    return above.getReal() - below.getReal();
  }

  private FieldVector3D<T> moved(
      T share, FieldVector3D<Binary64> below, FieldVector3D<Binary64> above) {
    Vector3D way = above.toVector3D().subtract(below.toVector3D());
    return new FieldVector3D<>(share, way);
  }
}
