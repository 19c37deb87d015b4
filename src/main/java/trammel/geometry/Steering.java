package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.FieldSinCos;
import org.jspecify.annotations.Nullable;

/**
 * What turns an upright about its steering axis: a tie rod, or the toe that it is adjusted to.
 *
 * @param inner the tie rod's inner end, straight ahead (mm)
 * @param rodLength length of the tie rod (mm)
 * @param rodBranch which of the two places at the tie rod's length the steering arm points to
 * @param headingBranch which of the two turns that give one toe the upright stands at
 */
record Steering<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> inner, T rodLength, int rodBranch, int headingBranch) {

  /**
   * The steering of an upright as it stands.
   *
   * @param kingpin unit vector up the steering axis
   * @param outer the tie rod's outer end (mm)
   * @param inner its inner end (mm)
   * @param toe of the wheel (degrees)
   */
  static <T extends CalculusFieldElement<T>> Steering<T> of(
      Upright.Standing<T> standing,
      FieldVector3D<T> lowerBall,
      FieldVector3D<T> kingpin,
      FieldVector3D<T> outer,
      FieldVector3D<T> inner,
      T toe) {
    // Which of two places it is takes no derivatives.
    FieldVector3D<Binary64> arm = Corner.plain(standing.steeringArm());
    FieldVector3D<Binary64> up = Corner.plain(kingpin);
    FieldVector3D<Binary64> toInner = Corner.plain(inner).subtract(Corner.plain(lowerBall));
    boolean ahead = Products.dot(toInner, Products.cross(up, arm)).getReal() >= 0;
    Turn<Binary64> turn =
        Turn.of(
            Corner.plain(standing.upright().spindle()),
            up,
            new Binary64(toe.getReal()).toRadians().sinCos());
    double cosine = Products.dot(arm, turn.fore).getReal();
    double sine = Products.dot(arm, turn.side).getReal();
    boolean left = turn.first.getReal() * sine - turn.second.getReal() * cosine >= 0;
    return new Steering<>(
        inner, Products.length(outer.subtract(inner)), ahead ? -1 : 1, left ? 1 : -1);
  }

  /** The same tie rod from an inner end elsewhere (mm). */
  Steering<T> from(FieldVector3D<T> elsewhere) {
    return new Steering<>(elsewhere, rodLength, rodBranch, headingBranch);
  }

  /**
   * The pose of an upright on its steering axis.
   *
   * @param lowerAngle the lower arm above level (radians)
   * @param kingpin unit vector up the steering axis
   */
  Posed<T> pose(
      Upright<T> upright,
      T lowerAngle,
      FieldVector3D<T> lowerBall,
      FieldVector3D<T> upperBall,
      FieldVector3D<T> kingpin,
      Heading<T> heading) {
    FieldVector3D<T> end = inner;
    FieldVector3D<T> arm;
    if (heading instanceof Heading.ByTieRod<T> rod) {
      end = rod.inner();
      T length = rod.length();
      arm = heldByTieRod(upright, lowerBall, kingpin, end, length == null ? rodLength : length);
      if (arm == null) {
        return new OutOfReach<>("the tie rod cannot follow the steering arm");
      }
    } else {
      arm = turnedTo(upright, kingpin, ((Heading.Reset<T>) heading).turn());
      if (arm == null) {
        return new OutOfReach<>("no steering gives the wheel this toe");
      }
    }
    FieldVector3D<T> third = Products.cross(kingpin, arm);
    return new Pose<>(
        lowerAngle,
        lowerBall,
        upperBall,
        end,
        Products.composedFrom(lowerBall, upright.wheel(), kingpin, arm, third),
        kingpin,
        arm,
        Products.composed(upright.spindle(), kingpin, arm, third),
        upright);
  }

  /**
   * The steering arm where its circle about the kingpin is a tie rod's length from the inner end.
   */
  private @Nullable FieldVector3D<T> heldByTieRod(
      Upright<T> upright,
      FieldVector3D<T> lowerBall,
      FieldVector3D<T> kingpin,
      FieldVector3D<T> end,
      T length) {
    FieldVector3D<T> to = end.subtract(lowerBall);
    T along = Products.dot(to, kingpin);
    FieldVector3D<T> across = to.subtract(Products.times(along, kingpin));
    T reach = Products.dot(across, across);
    T chord =
        Squares.less(reach.add(along.subtract(upright.armFoot()).square()), length)
            .divide(upright.armLength())
            .add(upright.armLength())
            .multiply(0.5);
    T square = Squares.less(reach, chord);
    if (!(square.getReal() > 0)) {
      return null;
    }
    T inverse = reach.reciprocal();
    return Products.sum(
        chord.multiply(inverse),
        across,
        signed(square.sqrt(), rodBranch).multiply(inverse),
        Products.cross(kingpin, across));
  }

  private static <T extends CalculusFieldElement<T>> T signed(T root, int branch) {
    return branch > 0 ? root : root.negate();
  }

  /** The steering arm where the spindle heads square to a toe. */
  private @Nullable FieldVector3D<T> turnedTo(
      Upright<T> upright, FieldVector3D<T> kingpin, FieldSinCos<T> toe) {
    Turn<T> turn = Turn.of(upright.spindle(), kingpin, toe);
    T reach = SumOfProducts.of(turn.first, turn.first, turn.second, turn.second);
    T square = Squares.less(reach, turn.wanted);
    if (!(square.getReal() > 0)) {
      return null;
    }
    T half = signed(square.sqrt(), headingBranch);
    T cosine = SumOfProducts.difference(turn.first, turn.wanted, turn.second, half).divide(reach);
    T sine = SumOfProducts.of(turn.second, turn.wanted, turn.first, half).divide(reach);
    return Products.sum(cosine, turn.fore, sine, turn.side);
  }

  /**
   * The upright turned by ψ about the kingpin from a steering arm that points fore has a spindle
   * square to the heading where first·cos ψ + second·sin ψ = wanted.
   */
  private record Turn<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> fore, FieldVector3D<T> side, T first, T second, T wanted) {

    static <T extends CalculusFieldElement<T>> Turn<T> of(
        FieldVector3D<T> spindle, FieldVector3D<T> kingpin, FieldSinCos<T> heading) {
      // Fore is x less its part along the kingpin, side the kingpin times that: worked out, few
      // products are left.
      T across = Squares.cosine(kingpin.getX());
      T inverse = across.reciprocal();
      T along = kingpin.getX().multiply(inverse).negate();
      FieldVector3D<T> fore =
          new FieldVector3D<>(
              across, kingpin.getY().multiply(along), kingpin.getZ().multiply(along));
      FieldVector3D<T> side =
          new FieldVector3D<>(
              inverse.getField().getZero(),
              kingpin.getZ().multiply(inverse),
              kingpin.getY().multiply(inverse).negate());
      T onFore = along(fore, heading);
      T onSide = side.getY().multiply(heading.sin()).negate();
      return new Turn<>(
          fore,
          side,
          SumOfProducts.of(spindle.getY(), onFore, spindle.getZ(), onSide),
          SumOfProducts.difference(spindle.getY(), onSide, spindle.getZ(), onFore),
          spindle.getX().multiply(along(kingpin, heading)).negate());
    }

    /** Component along a heading in plan: toe 0 is straight fore. */
    private static <T extends CalculusFieldElement<T>> T along(
        FieldVector3D<T> vector, FieldSinCos<T> heading) {
      return SumOfProducts.difference(vector.getX(), heading.cos(), vector.getY(), heading.sin());
    }
  }
}
