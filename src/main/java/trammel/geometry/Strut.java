package trammel.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.jspecify.annotations.Nullable;

/**
 * A strut corner: the lower ball joint on its arm's circle, the strut's top fixed to the body, the
 * strut's axis fixed in the upright, so that the upright slides along it. The steering axis runs
 * from the lower ball joint to the strut's top, which is the pose's upper point. Closed form in the
 * lower arm's angle: with the lower ball joint at distance d from the strut's axis, a top that is L
 * away lies √(L² − d²) up the axis from the foot of that distance.
 *
 * <p>What adjusters move comes as shifts of hard points from where they were surveyed: of the
 * strut's top, it goes elsewhere on the body; of a bolt at the knuckle, the knuckle's hole goes
 * outward against the strut, and the knuckle turns about the other bolt; of a pivot or ball joint
 * of the lower arm as in a {@link DoubleWishbone}. The strut's foot is only told where its axis
 * runs and has no shift.
 */
public final class Strut<T extends CalculusFieldElement<T>> extends Corner<T> {
  private final FieldVector3D<T> top;
  private final Line<T> line;
  private final FieldVector3D<T> spindle;
  private final FieldVector3D<T> lineInUpright;
  private final FieldVector3D<T> footInUpright;

  /**
   * The strut's axis in the upright as surveyed.
   *
   * @param foot from the lower ball joint square to the axis (mm)
   * @param up unit vector along the axis
   */
  private record Line<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> foot, FieldVector3D<T> up) {

    /**
     * The axis through two points of the strut.
     *
     * @param top where the strut's top is in the upright (mm)
     * @param low another point on the axis (mm)
     */
    static <T extends CalculusFieldElement<T>> Line<T> of(
        FieldVector3D<T> ball, FieldVector3D<T> top, FieldVector3D<T> low) {
      FieldVector3D<T> along = top.subtract(low);
      T length = Products.length(along);
      if (!(length.getReal() > LEAST_LENGTH)) {
        throw new OutOfReachException("the strut's foot lies at its top");
      }
      FieldVector3D<T> up = Products.times(length.reciprocal(), along);
      FieldVector3D<T> toTop = top.subtract(ball);
      T rise = Products.dot(toTop, up);
      if (!(rise.getReal() > 0)) {
        throw new OutOfReachException("the strut's top must stand above the lower ball joint");
      }
      return new Line<>(toTop.subtract(Products.times(rise, up)), up);
    }

    /** Where a top at a distance squared lies from the lower ball joint (mm); null if too near. */
    @Nullable FieldVector3D<T> top(T square) {
      T rise = square.subtract(Products.square(foot));
      return rise.getReal() > 0 ? foot.add(Products.times(rise.sqrt(), up)) : null;
    }
  }

  /** A strut shorter than this has no axis (mm). */
  private static final double LEAST_LENGTH = 1;

  private Strut(
      HardPoints<T> points,
      Map<HardPoint, FieldVector3D<T>> shifts,
      FieldVector3D<T> foot,
      Line<T> line,
      FieldVector3D<T> kingpin,
      FieldVector3D<T> spindle) {
    super(
        points,
        shifts,
        Steering.of(
                points.standing(kingpin, spindle),
                points.at(HardPoint.LOWER_BALL_JOINT),
                kingpin,
                points.at(HardPoint.TIE_ROD_OUTER),
                points.at(HardPoint.TIE_ROD_INNER),
                points.toe())
            .from(points.shifted(shifts, HardPoint.TIE_ROD_INNER)));
    this.top = points.shifted(shifts, HardPoint.STRUT_TOP);
    this.line = line;
    this.spindle = spindle;
    FieldVector3D<T> ball = points.at(HardPoint.LOWER_BALL_JOINT);
    Frame<T> frame = Frame.of(ball, spindle, points.at(HardPoint.TIE_ROD_OUTER));
    this.lineInUpright = frame.in(ball.add(line.up));
    this.footInUpright = frame.in(foot);
  }

  /**
   * A corner as surveyed.
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> Strut<T> of(HardPoints<T> points) {
    return of(points, Map.of());
  }

  /**
   * A corner with hard points shifted from where they were surveyed (mm).
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> Strut<T> of(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts) {
    FieldVector3D<T> ball = points.at(HardPoint.LOWER_BALL_JOINT);
    FieldVector3D<T> top = points.at(HardPoint.STRUT_TOP);
    FieldVector3D<T> kingpin = points.kingpin();
    FieldVector3D<T> foot = KnuckleBolts.moved(points, shifts, points.at(HardPoint.STRUT_FOOT));
    return new Strut<>(
        points,
        shifts,
        foot,
        Line.of(ball, KnuckleBolts.moved(points, shifts, top), foot),
        kingpin,
        Upright.spindle(points.camber(), points.toe()));
  }

  @Override
  public Strut<T> shifted(Map<HardPoint, FieldVector3D<T>> moved) {
    return of(points(), moved);
  }

  @Override
  public Function<Heading<T>, Posed<T>> poses(T lowerAngle) {
    FieldVector3D<T> lowerBall = lower().at(lowerAngle);
    FieldVector3D<T> axis = top.subtract(lowerBall);
    T square = Products.square(axis);
    FieldVector3D<T> inUpright = line.top(square);
    if (inUpright == null || !(axis.getZ().getReal() > 0)) {
      return heading -> new OutOfReach<>("the upright has come up to the strut's top");
    }
    T perLength = square.sqrt().reciprocal();
    FieldVector3D<T> kingpin = Products.times(perLength, axis);
    Upright<T> upright = points().standing(Products.times(perLength, inUpright), spindle).upright();
    return heading -> steering().pose(upright, lowerAngle, lowerBall, top, kingpin, heading);
  }

  @Override
  public <S extends CalculusFieldElement<S>> Strut<S> in(Function<T, S> number) {
    Map<HardPoint, FieldVector3D<S>> moved = new EnumMap<>(HardPoint.class);
    shifts().forEach((name, shift) -> moved.put(name, point(shift, number)));
    return of(points().in(at -> point(at, number), number), moved);
  }

  /** Unit vector up the strut's axis in a pose. */
  public FieldVector3D<T> direction(Pose<T> pose) {
    return upright(pose).out(lineInUpright).subtract(pose.lowerBall());
  }

  /** The strut itself, from its top to its foot: its damper, and a spring around it. */
  public Mount<T> along() {
    return new Mount<>(Mount.Carrier.UPRIGHT, top, footInUpright);
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
