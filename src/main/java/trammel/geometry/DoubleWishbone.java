package trammel.geometry;

import java.util.Map;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.Field;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.FieldSinCos;
import org.jspecify.annotations.Nullable;

/**
 * A double-wishbone corner: both ball joints on circles about their arms' pivots, the upright's
 * length fixed between them, the wheel's heading held by the tie rod. Closed form in the lower
 * arm's angle.
 *
 * <p>Pivots that adjusters move, and arms of another shape, come as shifts of hard points from
 * where they were surveyed: a shift of a pivot moves it alone and both legs of the arm keep their
 * length; a shift of a ball joint is an arm of another shape on the same pivots; the upright keeps
 * its own measures always.
 */
public final class DoubleWishbone<T extends CalculusFieldElement<T>> {
  private final ArmCircle<T> upper;
  private final ArmCircle<T> lower;
  private final int upperBranch;
  private final T uprightLength;
  private final T surveyedAngle;
  private final FieldVector3D<T> surveyedWheel;

  /** Foot of the tie rod's outer end on the kingpin, from the lower ball joint (mm). */
  private final T armFoot;

  /** Distance of the tie rod's outer end from the kingpin (mm). */
  private final T armLength;

  private final FieldVector3D<T> tieRodInner;
  private final T tieRodLength;
  private final int tieRodBranch;
  private final int headingBranch;

  /** Wheel center and spindle in the upright: along the kingpin, along the steering arm, across. */
  private final FieldVector3D<T> wheelInUpright;

  private final FieldVector3D<T> spindleInUpright;

  private DoubleWishbone(HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts) {
    FieldVector3D<T> lowerBall = points.at(HardPoint.LOWER_BALL_JOINT);
    FieldVector3D<T> upperBall = points.at(HardPoint.UPPER_BALL_JOINT);
    FieldVector3D<T> outer = points.at(HardPoint.TIE_ROD_OUTER);
    ArmCircle<T> surveyedUpper =
        arm(
            "upper arm",
            points,
            Map.of(),
            HardPoint.UPPER_FRONT_PIVOT,
            HardPoint.UPPER_REAR_PIVOT,
            HardPoint.UPPER_BALL_JOINT);
    upper =
        arm(
            "upper arm",
            points,
            shifts,
            HardPoint.UPPER_FRONT_PIVOT,
            HardPoint.UPPER_REAR_PIVOT,
            HardPoint.UPPER_BALL_JOINT);
    lower =
        arm(
            "lower arm",
            points,
            shifts,
            HardPoint.LOWER_FRONT_PIVOT,
            HardPoint.LOWER_REAR_PIVOT,
            HardPoint.LOWER_BALL_JOINT);
    FieldVector3D<T> upright = upperBall.subtract(lowerBall);
    uprightLength = upright.getNorm();
    if (!(upright.getZ().getReal() > uprightLength.getReal() / 2)) {
      throw new OutOfReachException(
          "the steering axis lies down: the upper ball joint must stand above the lower one");
    }
    upperBranch = surveyedUpper.branch(upperBall, lowerBall);
    surveyedAngle = lower.angle(lowerBall);
    FieldVector3D<T> kingpin = upright.scalarMultiply(uprightLength.reciprocal());
    FieldVector3D<T> toOuter = outer.subtract(lowerBall);
    armFoot = toOuter.dotProduct(kingpin);
    FieldVector3D<T> across = toOuter.subtract(armFoot, kingpin);
    armLength = across.getNorm();
    if (!(armLength.getReal() > LEAST_STEERING_ARM)) {
      throw new OutOfReachException("the tie rod's outer end lies on the steering axis");
    }
    FieldVector3D<T> steeringArm = across.scalarMultiply(armLength.reciprocal());
    FieldVector3D<T> third = kingpin.crossProduct(steeringArm);
    FieldVector3D<T> wheel = points.at(HardPoint.WHEEL_CENTER);
    surveyedWheel = wheel;
    wheelInUpright = in(kingpin, steeringArm, third, wheel.subtract(lowerBall));
    spindleInUpright = in(kingpin, steeringArm, third, spindle(points.camber(), points.toe()));
    FieldVector3D<T> inner = points.at(HardPoint.TIE_ROD_INNER);
    FieldVector3D<T> shift = shifts.get(HardPoint.TIE_ROD_INNER);
    tieRodInner = shift == null ? inner : inner.add(shift);
    tieRodLength = outer.subtract(inner).getNorm();
    FieldVector3D<T> fromFoot = inner.subtract(lowerBall.add(armFoot, kingpin));
    tieRodBranch = fromFoot.dotProduct(third).getReal() >= 0 ? -1 : 1;
    headingBranch = headingBranch(kingpin, steeringArm, points.toe());
  }

  /** A steering arm shorter than this steers nothing (mm). */
  private static final double LEAST_STEERING_ARM = 5;

  /**
   * A corner as surveyed.
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> DoubleWishbone<T> of(HardPoints<T> points) {
    return of(points, Map.of());
  }

  /**
   * A corner with hard points shifted from where they were surveyed (mm).
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> DoubleWishbone<T> of(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts) {
    return new DoubleWishbone<>(points, shifts);
  }

  private static <T extends CalculusFieldElement<T>> ArmCircle<T> arm(
      String name,
      HardPoints<T> points,
      Map<HardPoint, FieldVector3D<T>> shifts,
      HardPoint frontPivot,
      HardPoint rearPivot,
      HardPoint ballJoint) {
    FieldVector3D<T> front = points.at(frontPivot);
    FieldVector3D<T> rear = points.at(rearPivot);
    FieldVector3D<T> ball = shifted(points, shifts, ballJoint);
    return ArmCircle.of(
        name,
        shifted(points, shifts, frontPivot),
        shifted(points, shifts, rearPivot),
        ball.subtract(front).getNorm(),
        ball.subtract(rear).getNorm());
  }

  private static <T extends CalculusFieldElement<T>> FieldVector3D<T> shifted(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts, HardPoint point) {
    FieldVector3D<T> shift = shifts.get(point);
    return shift == null ? points.at(point) : points.at(point).add(shift);
  }

  /** The spindle of a wheel with this camber and toe (degrees). */
  private static <T extends CalculusFieldElement<T>> FieldVector3D<T> spindle(T camber, T toe) {
    FieldSinCos<T> lean = camber.toRadians().sinCos();
    FieldSinCos<T> turn = toe.toRadians().sinCos();
    return new FieldVector3D<>(
        turn.sin().multiply(lean.cos()), turn.cos().multiply(lean.cos()), lean.sin().negate());
  }

  private static <T extends CalculusFieldElement<T>> FieldVector3D<T> in(
      FieldVector3D<T> first,
      FieldVector3D<T> second,
      FieldVector3D<T> third,
      FieldVector3D<T> vector) {
    return new FieldVector3D<>(
        vector.dotProduct(first), vector.dotProduct(second), vector.dotProduct(third));
  }

  /** The numbers this linkage is computed in. */
  public Field<T> field() {
    return uprightLength.getField();
  }

  /** The lower arm's angle above level as surveyed (radians). */
  public T surveyedAngle() {
    return surveyedAngle;
  }

  /** The wheel's center as surveyed (mm). */
  public FieldVector3D<T> surveyedWheel() {
    return surveyedWheel;
  }

  /** The tie rod's inner end with the steering straight ahead (mm). */
  public FieldVector3D<T> tieRodInner() {
    return tieRodInner;
  }

  /** Length of the tie rod as surveyed (mm). */
  public T tieRodLength() {
    return tieRodLength;
  }

  ArmCircle<T> upper() {
    return upper;
  }

  ArmCircle<T> lower() {
    return lower;
  }

  /** Unit vector from the upper arm's axis to its ball joint in a pose. */
  public FieldVector3D<T> upperReach(Pose<T> pose) {
    return pose.upperBall().subtract(upper.center()).scalarMultiply(upper.radius().reciprocal());
  }

  /** How the lower arm has moved once it is turned about its axis by an angle (radians). */
  public Motion lowerArmTurned(double angle) {
    Rotation rotation =
        new Rotation(lower.axis().toVector3D(), angle, RotationConvention.VECTOR_OPERATOR);
    Vector3D center = lower.center().toVector3D();
    return new Motion(rotation, center.subtract(rotation.applyTo(center)));
  }

  /**
   * The pose with the lower arm at an angle.
   *
   * @param lowerAngle above level (radians)
   */
  public Posed<T> pose(T lowerAngle, Heading<T> heading) {
    FieldVector3D<T> lowerBall = lower.at(lowerAngle);
    FieldVector3D<T> upperBall = upper.meeting(lowerBall, uprightLength, upperBranch);
    if (upperBall == null) {
      return new OutOfReach<>("the upper arm cannot follow the upright");
    }
    FieldVector3D<T> kingpin =
        upperBall.subtract(lowerBall).scalarMultiply(uprightLength.reciprocal());
    FieldVector3D<T> inner;
    FieldVector3D<T> steeringArm;
    if (heading instanceof Heading.ByTieRod<T> rod) {
      inner = rod.inner();
      T length = rod.length() == null ? tieRodLength : rod.length();
      steeringArm = heldByTieRod(lowerBall, kingpin, inner, length);
      if (steeringArm == null) {
        return new OutOfReach<>("the tie rod cannot follow the steering arm");
      }
    } else {
      inner = tieRodInner;
      steeringArm = turnedTo(kingpin, ((Heading.Reset<T>) heading).toe());
      if (steeringArm == null) {
        return new OutOfReach<>("no steering gives the wheel this toe");
      }
    }
    FieldVector3D<T> third = kingpin.crossProduct(steeringArm);
    T one = field().getOne();
    return new Pose<>(
        lowerAngle,
        lowerBall,
        upperBall,
        inner,
        new FieldVector3D<>(one, lowerBall, armFoot, kingpin, armLength, steeringArm),
        new FieldVector3D<>(
            one,
            lowerBall,
            wheelInUpright.getX(),
            kingpin,
            wheelInUpright.getY(),
            steeringArm,
            wheelInUpright.getZ(),
            third),
        kingpin,
        steeringArm,
        new FieldVector3D<>(
            spindleInUpright.getX(),
            kingpin,
            spindleInUpright.getY(),
            steeringArm,
            spindleInUpright.getZ(),
            third));
  }

  /**
   * The steering arm where its circle about the kingpin is a tie rod's length from the inner end.
   */
  private @Nullable FieldVector3D<T> heldByTieRod(
      FieldVector3D<T> lowerBall, FieldVector3D<T> kingpin, FieldVector3D<T> inner, T length) {
    FieldVector3D<T> to = inner.subtract(lowerBall.add(armFoot, kingpin));
    T along = to.dotProduct(kingpin);
    FieldVector3D<T> across = to.subtract(along, kingpin);
    T reach = across.getNormSq();
    T chord =
        reach
            .add(along.square())
            .add(armLength.square())
            .subtract(length.square())
            .divide(armLength.multiply(2));
    T square = reach.subtract(chord.square());
    if (!(square.getReal() > 0)) {
      return null;
    }
    T half = square.sqrt().multiply(tieRodBranch);
    return new FieldVector3D<>(
        chord.divide(reach), across, half.divide(reach), kingpin.crossProduct(across));
  }

  /** The steering arm where the spindle heads square to a toe. */
  private @Nullable FieldVector3D<T> turnedTo(FieldVector3D<T> kingpin, T toe) {
    Turn<T> turn = turn(kingpin, toe);
    T reach = turn.first.square().add(turn.second.square());
    T square = reach.subtract(turn.wanted.square());
    if (!(square.getReal() > 0)) {
      return null;
    }
    T half = square.sqrt().multiply(headingBranch);
    T cosine = turn.first.multiply(turn.wanted).subtract(turn.second.multiply(half)).divide(reach);
    T sine = turn.second.multiply(turn.wanted).add(turn.first.multiply(half)).divide(reach);
    return new FieldVector3D<>(cosine, turn.fore, sine, turn.side);
  }

  /**
   * The upright turned by ψ about the kingpin from a steering arm that points fore has a spindle
   * square to the heading where first·cos ψ + second·sin ψ = wanted.
   */
  private record Turn<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> fore, FieldVector3D<T> side, T first, T second, T wanted) {}

  private Turn<T> turn(FieldVector3D<T> kingpin, T toe) {
    FieldSinCos<T> heading = toe.toRadians().sinCos();
    FieldVector3D<T> ahead =
        new FieldVector3D<>(
            kingpin.getX().square().negate().add(1),
            kingpin.getX().multiply(kingpin.getY()).negate(),
            kingpin.getX().multiply(kingpin.getZ()).negate());
    FieldVector3D<T> fore = ahead.scalarMultiply(ahead.getNorm().reciprocal());
    FieldVector3D<T> side = kingpin.crossProduct(fore);
    T onFore = along(fore, heading);
    T onSide = along(side, heading);
    return new Turn<>(
        fore,
        side,
        spindleInUpright.getY().multiply(onFore).add(spindleInUpright.getZ().multiply(onSide)),
        spindleInUpright.getY().multiply(onSide).subtract(spindleInUpright.getZ().multiply(onFore)),
        spindleInUpright.getX().multiply(along(kingpin, heading)).negate());
  }

  /** Component along a heading in plan: toe 0 is straight fore. */
  private static <T extends CalculusFieldElement<T>> T along(
      FieldVector3D<T> vector, FieldSinCos<T> heading) {
    return vector.getX().multiply(heading.cos()).subtract(vector.getY().multiply(heading.sin()));
  }

  private int headingBranch(FieldVector3D<T> kingpin, FieldVector3D<T> steeringArm, T toe) {
    Turn<T> turn = turn(kingpin, toe);
    double cosine = steeringArm.dotProduct(turn.fore).getReal();
    double sine = steeringArm.dotProduct(turn.side).getReal();
    return turn.first.getReal() * sine - turn.second.getReal() * cosine >= 0 ? 1 : -1;
  }
}
