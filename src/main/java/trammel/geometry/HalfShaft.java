package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * A half-shaft between the differential and a wheel that moves on its own. Points in mm: fore,
 * left, up. Both axes point outboard, of any length.
 *
 * @param innerCenter center of the inner joint; where it plunges, the point that stays on the
 *     output's axis
 * @param outputAxis direction of the differential's output
 * @param outerCenter center of the outer joint
 * @param spindleAxis direction of the wheel's spindle
 */
public record HalfShaft<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> innerCenter,
    FieldVector3D<T> outputAxis,
    FieldVector3D<T> outerCenter,
    FieldVector3D<T> spindleAxis) {

  /**
   * @throws IllegalArgumentException if the joint centers coincide, an axis has no length, or an
   *     axis points inboard
   */
  public HalfShaft {
    FieldVector3D<T> shaft = outerCenter.subtract(innerCenter);
    AngleBetween.requireDirection("half-shaft", shaft);
    requireOutboard("output axis", outputAxis, shaft);
    requireOutboard("spindle axis", spindleAxis, shaft);
  }

  /** Angle of the inner joint in space (degrees, 0 to 90). */
  public T innerAngle() {
    return AngleBetween.directions(outputAxis, shaft());
  }

  /** Angle of the outer joint in space (degrees, 0 to 90), with the spindle where it is steered. */
  public T outerAngle() {
    return AngleBetween.directions(spindleAxis, shaft());
  }

  /**
   * Part of the inner joint's angle in front view (degrees), positive when the shaft falls outboard
   * from the output's axis, as it does after a lift.
   */
  public T innerFall() {
    return elevation(outputAxis).subtract(elevation(shaft()));
  }

  /**
   * Part of the outer joint's angle in front view (degrees), positive when the shaft falls outboard
   * from the spindle's axis, as it does after a lift.
   */
  public T outerFall() {
    return elevation(spindleAxis).subtract(elevation(shaft()));
  }

  /** Distance between the joint centers (mm). */
  public T length() {
    return innerCenter.distance(outerCenter);
  }

  /**
   * Plunge to another position (mm): positive where the shaft must draw out, negative pushes in.
   */
  public T plunge(HalfShaft<T> after) {
    return after.length().subtract(length());
  }

  private FieldVector3D<T> shaft() {
    return outerCenter.subtract(innerCenter);
  }

  private static <T extends CalculusFieldElement<T>> T elevation(FieldVector3D<T> direction) {
    return direction.getZ().atan2(direction.getY().abs()).toDegrees();
  }

  private static <T extends CalculusFieldElement<T>> void requireOutboard(
      String name, FieldVector3D<T> axis, FieldVector3D<T> shaft) {
    AngleBetween.requireDirection(name, axis);
    if (!(axis.toVector3D().dotProduct(shaft.toVector3D()) > 0)) {
      throw new IllegalArgumentException(
          "found " + name + " pointing inboard; expected it outboard, along the half-shaft");
    }
  }
}
