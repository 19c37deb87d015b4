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
      DoubleWishbone<T> linkage, Pose<T> pose, Mount.Carrier carrier) {
    return switch (carrier) {
      case LOWER_ARM -> arm(linkage.lower(), pose.lowerBall());
      case UPPER_ARM -> arm(linkage.upper(), pose.upperBall());
      case UPRIGHT ->
          new Frame<>(
              pose.lowerBall(),
              pose.kingpin(),
              pose.steeringArm(),
              pose.kingpin().crossProduct(pose.steeringArm()));
    };
  }

  private static <T extends CalculusFieldElement<T>> Frame<T> arm(
      ArmCircle<T> arm, FieldVector3D<T> ball) {
    FieldVector3D<T> reach = ball.subtract(arm.center()).scalarMultiply(arm.radius().reciprocal());
    return new Frame<>(arm.center(), arm.axis(), reach, arm.axis().crossProduct(reach));
  }

  /** A point in this frame's own directions (mm). */
  FieldVector3D<T> in(FieldVector3D<T> point) {
    FieldVector3D<T> from = point.subtract(origin);
    return new FieldVector3D<>(
        from.dotProduct(first), from.dotProduct(second), from.dotProduct(third));
  }

  /** The point that has these coordinates in this frame (mm). */
  FieldVector3D<T> out(FieldVector3D<T> own) {
    return new FieldVector3D<>(
        origin.getX().getField().getOne(),
        origin,
        own.getX(),
        first,
        own.getY(),
        second,
        own.getZ(),
        third);
  }
}
