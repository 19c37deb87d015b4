package trammel.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

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
public final class DoubleWishbone<T extends CalculusFieldElement<T>> extends Corner<T> {
  private final ArmCircle<T> upper;
  private final int upperBranch;
  private final T uprightLength;
  private final T perLength;
  private final Upright<T> upright;

  private DoubleWishbone(
      HardPoints<T> points,
      Map<HardPoint, FieldVector3D<T>> shifts,
      ArmCircle<T> upper,
      int upperBranch,
      T uprightLength,
      Upright<T> upright,
      Steering<T> steering) {
    super(points, shifts, steering);
    this.upper = upper;
    this.upperBranch = upperBranch;
    this.uprightLength = uprightLength;
    this.upright = upright;
    perLength = uprightLength.reciprocal();
  }

  /**
   * A corner as surveyed.
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> DoubleWishbone<T> of(HardPoints<T> points) {
    FieldVector3D<T> lowerBall = points.at(HardPoint.LOWER_BALL_JOINT);
    FieldVector3D<T> upperBall = points.at(HardPoint.UPPER_BALL_JOINT);
    FieldVector3D<T> kingpin = points.kingpin();
    Upright.Standing<T> standing =
        points.standing(kingpin, Upright.spindle(points.camber(), points.toe()));
    ArmCircle<T> upper = upper(points, Map.of());
    return new DoubleWishbone<>(
        points,
        Map.of(),
        upper,
        upper.branch(upperBall, lowerBall),
        Products.length(upperBall.subtract(lowerBall)),
        standing.upright(),
        Steering.of(
            standing,
            lowerBall,
            kingpin,
            points.at(HardPoint.TIE_ROD_OUTER),
            points.at(HardPoint.TIE_ROD_INNER),
            points.toe()));
  }

  /**
   * A corner with hard points shifted from where they were surveyed (mm).
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> DoubleWishbone<T> of(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts) {
    DoubleWishbone<T> surveyed = of(points);
    return shifts.isEmpty() ? surveyed : surveyed.shifted(shifts);
  }

  @Override
  public DoubleWishbone<T> shifted(Map<HardPoint, FieldVector3D<T>> moved) {
    return new DoubleWishbone<>(
        points(),
        moved,
        upper(points(), moved),
        upperBranch,
        uprightLength,
        upright,
        steering().from(points().shifted(moved, HardPoint.TIE_ROD_INNER)));
  }

  private static <T extends CalculusFieldElement<T>> ArmCircle<T> upper(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts) {
    return points.arm(
        "upper arm",
        shifts,
        HardPoint.UPPER_FRONT_PIVOT,
        HardPoint.UPPER_REAR_PIVOT,
        HardPoint.UPPER_BALL_JOINT);
  }

  @Override
  public Function<Heading<T>, Posed<T>> poses(T lowerAngle) {
    FieldVector3D<T> lowerBall = lower().at(lowerAngle);
    FieldVector3D<T> upperBall = upper.meeting(lowerBall, uprightLength, upperBranch);
    if (upperBall == null) {
      return heading -> new OutOfReach<>("the upper arm cannot follow the upright");
    }
    FieldVector3D<T> kingpin = Products.times(perLength, upperBall.subtract(lowerBall));
    return heading -> steering().pose(upright, lowerAngle, lowerBall, upperBall, kingpin, heading);
  }

  @Override
  public <S extends CalculusFieldElement<S>> DoubleWishbone<S> in(Function<T, S> number) {
    Map<HardPoint, FieldVector3D<S>> moved = new EnumMap<>(HardPoint.class);
    shifts().forEach((name, shift) -> moved.put(name, point(shift, number)));
    return of(points().in(at -> point(at, number), number), moved);
  }

  ArmCircle<T> upper() {
    return upper;
  }

  /** Unit vector from the upper arm's axis to its ball joint in a pose. */
  private FieldVector3D<T> upperReach(Pose<T> pose) {
    return Products.times(upper.radius().reciprocal(), pose.upperBall().subtract(upper.center()));
  }

  /** Angle between the steering axis and the upper arm in a pose (degrees). */
  public T upperSwing(Pose<T> pose) {
    return AngleBetween.directions(pose.kingpin(), upperReach(pose));
  }

  @Override
  FieldVector3D<T> upperNormal(Pose<T> pose) {
    return Products.cross(upper.axis(), pose.upperBall().subtract(upper.center()));
  }

  @Override
  Frame<T> upperArm(Pose<T> pose) {
    return Frame.arm(upper, pose.upperBall());
  }

  @Override
  Frame<T> upright(Pose<T> pose) {
    return new Frame<>(
        pose.lowerBall(),
        pose.kingpin(),
        pose.steeringArm(),
        Products.cross(pose.kingpin(), pose.steeringArm()));
  }
}
