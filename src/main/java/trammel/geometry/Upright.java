package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.FieldSinCos;

/**
 * What an upright carries, measured from its steering axis: along the axis from the lower ball
 * joint, across it along the steering arm, and square to both.
 *
 * @param armFoot foot of the tie rod's outer end on the axis, from the lower ball joint (mm)
 * @param armLength distance of the tie rod's outer end from the axis (mm)
 * @param wheel the wheel's center (mm)
 * @param spindle unit vector along the wheel's axis, outboard
 */
record Upright<T extends CalculusFieldElement<T>>(
    T armFoot, T armLength, FieldVector3D<T> wheel, FieldVector3D<T> spindle) {

  /** A steering arm shorter than this steers nothing (mm). */
  private static final double LEAST_STEERING_ARM = 5;

  /** An upright as it stands, with the way its steering arm points. */
  record Standing<T extends CalculusFieldElement<T>>(
      Upright<T> upright, FieldVector3D<T> steeringArm) {}

  /**
   * An upright as it stands.
   *
   * @param kingpin unit vector up the steering axis
   * @param outer the tie rod's outer end (mm)
   * @throws OutOfReachException if the tie rod cannot steer it
   */
  static <T extends CalculusFieldElement<T>> Standing<T> standing(
      FieldVector3D<T> lowerBall,
      FieldVector3D<T> kingpin,
      FieldVector3D<T> outer,
      FieldVector3D<T> wheel,
      FieldVector3D<T> spindle) {
    FieldVector3D<T> toOuter = outer.subtract(lowerBall);
    T foot = Products.dot(toOuter, kingpin);
    FieldVector3D<T> across = toOuter.subtract(Products.times(foot, kingpin));
    T length = Products.length(across);
    if (!(length.getReal() > LEAST_STEERING_ARM)) {
      throw new OutOfReachException("the tie rod's outer end lies on the steering axis");
    }
    FieldVector3D<T> arm = Products.times(length.reciprocal(), across);
    FieldVector3D<T> third = Products.cross(kingpin, arm);
    return new Standing<>(
        new Upright<>(
            foot,
            length,
            Products.components(wheel.subtract(lowerBall), kingpin, arm, third),
            Products.components(spindle, kingpin, arm, third)),
        arm);
  }

  /**
   * The unit vector up a steering axis.
   *
   * @param axis from the lower ball joint to the upper point (mm)
   * @param upperPoint what the upper point is called
   * @throws OutOfReachException if it leans by 60° or more
   */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> kingpin(
      FieldVector3D<T> axis, String upperPoint) {
    T length = Products.length(axis);
    if (!(axis.getZ().getReal() > length.getReal() / 2)) {
      throw new OutOfReachException(
          "the steering axis lies down: the "
              + upperPoint
              + " must stand above the lower ball joint");
    }
    return Products.times(length.reciprocal(), axis);
  }

  /** The spindle of a wheel with this camber and toe (degrees). */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> spindle(T camber, T toe) {
    FieldSinCos<T> lean = camber.toRadians().sinCos();
    FieldSinCos<T> turn = toe.toRadians().sinCos();
    return new FieldVector3D<>(
        turn.sin().multiply(lean.cos()), turn.cos().multiply(lean.cos()), lean.sin().negate());
  }
}
