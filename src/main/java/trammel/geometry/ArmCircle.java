package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.FieldSinCos;
import org.jspecify.annotations.Nullable;

/**
 * The circle on which an arm carries its ball joint about the axis through its two pivots.
 *
 * <p>An arm is two legs of fixed length from pivots to ball joint. A pivot that an eccentric moves
 * moves alone: both legs keep their length, and the ball joint goes where they meet.
 *
 * @param center foot of the ball joint on the axis (mm)
 * @param axis unit vector from the rear pivot to the front one
 * @param outward unit vector across the axis, level toward the outside
 * @param upward unit vector across both
 * @param radius of the circle (mm)
 */
record ArmCircle<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> center,
    FieldVector3D<T> axis,
    FieldVector3D<T> outward,
    FieldVector3D<T> upward,
    T radius) {

  /**
   * The circle of an arm.
   *
   * @param frontSquare front pivot to ball joint, squared (mm²)
   * @param rearSquare rear pivot to ball joint, squared (mm²)
   * @throws OutOfReachException if the legs cannot meet
   */
  static <T extends CalculusFieldElement<T>> ArmCircle<T> of(
      String arm, FieldVector3D<T> front, FieldVector3D<T> rear, T frontSquare, T rearSquare) {
    FieldVector3D<T> between = front.subtract(rear);
    T spacingSquare = Products.square(between);
    T spacing = spacingSquare.sqrt();
    if (spacing.getReal() < LEAST_SPACING) {
      throw new OutOfReachException(arm + ": its pivots coincide");
    }
    T perSpacing = spacing.reciprocal();
    FieldVector3D<T> axis = Products.times(perSpacing, between);
    T foot = rearSquare.subtract(frontSquare).add(spacingSquare).multiply(perSpacing).multiply(0.5);
    T square = Squares.less(rearSquare, foot);
    if (!(square.getReal() > 0)) {
      throw new OutOfReachException(arm + ": its legs cannot meet at a ball joint");
    }
    // Outward is y less its part along the axis, upward the axis times that: worked out, few
    // products are left.
    T lateral = axis.getY();
    T across = Squares.cosine(lateral);
    T inverse = across.reciprocal();
    T along = lateral.multiply(inverse).negate();
    FieldVector3D<T> outward =
        new FieldVector3D<>(axis.getX().multiply(along), across, axis.getZ().multiply(along));
    FieldVector3D<T> upward =
        new FieldVector3D<>(
            axis.getZ().multiply(inverse).negate(),
            inverse.getField().getZero(),
            axis.getX().multiply(inverse));
    return new ArmCircle<>(
        rear.add(Products.times(foot, axis)), axis, outward, upward, square.sqrt());
  }

  /** Pivots nearer than this carry no arm (mm). */
  private static final double LEAST_SPACING = 1;

  /** The ball joint where the arm stands at an angle above level (radians). */
  FieldVector3D<T> at(T angle) {
    FieldSinCos<T> turn = angle.sinCos();
    return Products.from(
        center, radius.multiply(turn.cos()), outward, radius.multiply(turn.sin()), upward);
  }

  /** The angle above level at which the arm points to a point (radians). */
  T angle(FieldVector3D<T> point) {
    FieldVector3D<T> from = point.subtract(center);
    return Products.dot(from, upward).atan2(Products.dot(from, outward));
  }

  /**
   * Which of the two places at one distance from a point the ball joint is at: +1 where it lies
   * above the line from center to point.
   */
  int branch(FieldVector3D<T> ball, FieldVector3D<T> point) {
    Vector3D foot = center.toVector3D();
    Vector3D to = point.toVector3D().subtract(foot);
    Vector3D from = ball.toVector3D().subtract(foot);
    Vector3D out = outward.toVector3D();
    Vector3D up = upward.toVector3D();
    double turn =
        to.dotProduct(out) * from.dotProduct(up) - to.dotProduct(up) * from.dotProduct(out);
    return turn >= 0 ? 1 : -1;
  }

  /**
   * The ball joint where it is at a distance from a point.
   *
   * @return null where it cannot be that near or that far
   */
  @Nullable FieldVector3D<T> meeting(FieldVector3D<T> point, T distance, int branch) {
    FieldVector3D<T> to = point.subtract(center);
    T out = Products.dot(to, outward);
    T up = Products.dot(to, upward);
    T chord = Squares.less(Products.square(to), distance).divide(radius).add(radius).multiply(0.5);
    T reach = SumOfProducts.of(out, out, up, up);
    T square = Squares.less(reach, chord);
    if (!(square.getReal() > 0)) {
      return null;
    }
    T root = square.sqrt();
    T half = branch > 0 ? root : root.negate();
    T scale = radius.divide(reach);
    T alongOut = SumOfProducts.difference(out, chord, up, half).multiply(scale);
    T alongUp = SumOfProducts.of(up, chord, out, half).multiply(scale);
    return Products.from(center, alongOut, outward, alongUp, upward);
  }
}
