package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/** An origin and three unit vectors square to each other, which move with a part. */
record Frame<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> origin,
    FieldVector3D<T> first,
    FieldVector3D<T> second,
    FieldVector3D<T> third) {

  /** The frame of an arm or the upright in a pose. */
  static <T extends CalculusFieldElement<T>> Frame<T> of(
      Corner<T> corner, Pose<T> pose, Mount.Carrier carrier) {
    return switch (carrier) {
      case LOWER_ARM -> arm(corner.lower(), pose.lowerBall());
      case UPPER_ARM -> corner.upperArm(pose);
      case UPRIGHT -> corner.upright(pose);
    };
  }

  /**
   * The frame of an arm or the upright as it was surveyed.
   *
   * @throws IllegalArgumentException if the corner has anything shifted
   */
  static <T extends CalculusFieldElement<T>> Frame<T> surveyed(
      Corner<T> corner, Mount.Carrier carrier) {
    corner.mustBeAsSurveyed();
    return carrier == Mount.Carrier.LOWER_ARM
        ? arm(corner.lower(), corner.points().at(HardPoint.LOWER_BALL_JOINT))
        : of(corner, corner.asSurveyed(), carrier);
  }

  /** The frame of an arm: from its axis, along it, toward the ball joint. */
  static <T extends CalculusFieldElement<T>> Frame<T> arm(ArmCircle<T> arm, FieldVector3D<T> ball) {
    FieldVector3D<T> reach = Products.times(arm.radius().reciprocal(), ball.subtract(arm.center()));
    return new Frame<>(arm.center(), arm.axis(), reach, Products.cross(arm.axis(), reach));
  }

  /** The frame at an origin, along a unit vector, with another point in its second plane. */
  static <T extends CalculusFieldElement<T>> Frame<T> of(
      FieldVector3D<T> origin, FieldVector3D<T> first, FieldVector3D<T> point) {
    FieldVector3D<T> to = point.subtract(origin);
    FieldVector3D<T> across = to.subtract(Products.times(Products.dot(to, first), first));
    FieldVector3D<T> second = Products.times(Products.length(across).reciprocal(), across);
    return new Frame<>(origin, first, second, Products.cross(first, second));
  }

  /** A point in this frame's own directions (mm). */
  FieldVector3D<T> in(FieldVector3D<T> point) {
    return Products.components(point.subtract(origin), first, second, third);
  }

  /** The point that has these coordinates in this frame (mm). */
  FieldVector3D<T> out(FieldVector3D<T> own) {
    return Products.composedFrom(origin, own, first, second, third);
  }
}
