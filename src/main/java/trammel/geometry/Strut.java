package trammel.geometry;

import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * A strut corner: the lower ball joint on its arm's circle, the strut's top fixed to the body, the
 * strut's axis fixed in the upright, so that the upright slides along it. The steering axis runs
 * from the lower ball joint to the strut's top, which is the pose's upper point. Closed form in the
 * lower arm's angle: with the lower ball joint at distance d from the strut's axis, a top that is L
 * away lies √(L² − d²) up the axis from the foot of that distance.
 */
public final class Strut<T extends CalculusFieldElement<T>> extends Corner<T> {
  private final StrutPoints<T> points;
  private final FieldVector3D<T> topShift;
  private final FieldVector3D<T> top;
  private final Line<T> line;
  private final FieldVector3D<T> spindle;
  private final FieldVector3D<T> lineInUpright;

  /**
   * The strut's axis in the upright as surveyed.
   *
   * @param foot from the lower ball joint square to the axis (mm)
   * @param up unit vector along the axis
   */
  private record Line<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> foot, FieldVector3D<T> up) {

    static <T extends CalculusFieldElement<T>> Line<T> of(StrutPoints<T> points) {
      FieldVector3D<T> along = points.strutTop().subtract(points.strutFoot());
      T length = along.getNorm();
      if (!(length.getReal() > LEAST_LENGTH)) {
        throw new OutOfReachException("the strut's foot lies at its top");
      }
      FieldVector3D<T> up = Products.times(length.reciprocal(), along);
      FieldVector3D<T> toTop = points.strutTop().subtract(points.lowerBallJoint());
      T rise = Products.dot(toTop, up);
      if (!(rise.getReal() > 0)) {
        throw new OutOfReachException("the strut's top must stand above the lower ball joint");
      }
      return new Line<>(toTop.subtract(Products.times(rise, up)), up);
    }

    /** Where a top at a distance squared lies from the lower ball joint (mm); null if too near. */
    @org.jspecify.annotations.Nullable
    FieldVector3D<T> top(T square) {
      T rise = square.subtract(foot.getNormSq());
      return rise.getReal() > 0 ? foot.add(Products.times(rise.sqrt(), up)) : null;
    }
  }

  /** A strut shorter than this has no axis (mm). */
  private static final double LEAST_LENGTH = 1;

  private Strut(
      StrutPoints<T> points,
      FieldVector3D<T> topShift,
      ArmCircle<T> lower,
      Line<T> line,
      FieldVector3D<T> kingpin,
      FieldVector3D<T> spindle) {
    super(
        lower,
        Steering.of(
            standing(points, kingpin, spindle),
            points.lowerBallJoint(),
            kingpin,
            points.tieRodOuter(),
            points.tieRodInner(),
            points.tieRodInner(),
            points.toe()),
        points.lowerBallJoint(),
        points.wheelCenter());
    this.points = points;
    this.topShift = topShift;
    this.top = points.strutTop().add(topShift);
    this.line = line;
    this.spindle = spindle;
    Frame<T> frame = Frame.of(points.lowerBallJoint(), spindle, points.tieRodOuter());
    this.lineInUpright = frame.in(points.lowerBallJoint().add(line.up));
  }

  private static <T extends CalculusFieldElement<T>> Upright.Standing<T> standing(
      StrutPoints<T> points, FieldVector3D<T> kingpin, FieldVector3D<T> spindle) {
    return Upright.standing(
        points.lowerBallJoint(), kingpin, points.tieRodOuter(), points.wheelCenter(), spindle);
  }

  /**
   * A corner as surveyed.
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> Strut<T> of(StrutPoints<T> points) {
    return of(points, FieldVector3D.getZero(points.camber().getField()));
  }

  /**
   * A corner with the strut's top moved on the body, as a camber plate or a spacer does.
   *
   * @param topShift from where it was surveyed (mm)
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> Strut<T> of(
      StrutPoints<T> points, FieldVector3D<T> topShift) {
    FieldVector3D<T> ball = points.lowerBallJoint();
    ArmCircle<T> lower =
        ArmCircle.of(
            "lower arm",
            points.lowerFrontPivot(),
            points.lowerRearPivot(),
            ball.subtract(points.lowerFrontPivot()).getNorm(),
            ball.subtract(points.lowerRearPivot()).getNorm());
    FieldVector3D<T> kingpin = Upright.kingpin(points.strutTop().subtract(ball), "strut's top");
    return new Strut<>(
        points,
        topShift,
        lower,
        Line.of(points),
        kingpin,
        Upright.spindle(points.camber(), points.toe()));
  }

  @Override
  public Posed<T> pose(T lowerAngle, Heading<T> heading) {
    FieldVector3D<T> lowerBall = lower().at(lowerAngle);
    FieldVector3D<T> axis = top.subtract(lowerBall);
    T square = axis.getNormSq();
    FieldVector3D<T> inUpright = line.top(square);
    if (inUpright == null || !(axis.getZ().getReal() > 0)) {
      return new OutOfReach<>("the upright has come up to the strut's top");
    }
    T perLength = square.sqrt().reciprocal();
    FieldVector3D<T> kingpin = Products.times(perLength, axis);
    Upright<T> upright = standing(points, Products.times(perLength, inUpright), spindle).upright();
    return steering().pose(upright, lowerAngle, lowerBall, top, kingpin, heading);
  }

  @Override
  public <S extends CalculusFieldElement<S>> Strut<S> in(Function<T, S> number) {
    return of(points.in(number), point(topShift, number));
  }

  /** Unit vector up the strut's axis in a pose. */
  public FieldVector3D<T> direction(Pose<T> pose) {
    return upright(pose).out(lineInUpright).subtract(pose.lowerBall());
  }

  @Override
  FieldVector3D<T> upperNormal(Pose<T> pose) {
    return direction(pose);
  }

  @Override
  Frame<T> upperArm(Pose<T> pose) {
    throw new IllegalArgumentException("a strut corner has no upper arm");
  }

  @Override
  Frame<T> upright(Pose<T> pose) {
    return Frame.of(pose.lowerBall(), pose.spindle(), pose.tieRodOuter());
  }
}
