package trammel.geometry;

import java.util.Map;
import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.Field;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.jspecify.annotations.Nullable;

/**
 * A wheel's linkage whose lower arm swings its ball joint on a circle: every pose follows in closed
 * form from the lower arm's angle and from what holds the heading.
 */
public abstract sealed class Corner<T extends CalculusFieldElement<T>>
    permits DoubleWishbone, Strut {
  private final HardPoints<T> points;
  private final Map<HardPoint, FieldVector3D<T>> shifts;
  private final ArmCircle<T> lower;
  private final Steering<T> steering;
  private @Nullable T surveyedAngle;

  Corner(HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts, Steering<T> steering) {
    this.points = points;
    this.shifts = shifts;
    this.lower = points.lowerArm(shifts);
    this.steering = steering;
  }

  /**
   * The linkage that hard points make: a strut where there is a strut's top, else a double
   * wishbone.
   *
   * @param shifts of hard points from where they were surveyed (mm); see {@link DoubleWishbone} and
   *     {@link Strut} for what each means
   * @throws OutOfReachException if the points make no linkage
   */
  public static <T extends CalculusFieldElement<T>> Corner<T> of(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts) {
    return points.strut() ? Strut.of(points, shifts) : DoubleWishbone.of(points, shifts);
  }

  /**
   * The same linkage with hard points shifted from where they were surveyed, in place of what is
   * shifted now (mm).
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public abstract Corner<T> shifted(Map<HardPoint, FieldVector3D<T>> shifts);

  /** The numbers this linkage is computed in. */
  public Field<T> field() {
    return points.field();
  }

  /** The lower arm's angle above level as surveyed (radians). */
  public T surveyedAngle() {
    T known = surveyedAngle;
    if (known == null) {
      known = lower.angle(points.at(HardPoint.LOWER_BALL_JOINT));
      surveyedAngle = known;
    }
    return known;
  }

  /** The wheel's center as surveyed (mm). */
  public FieldVector3D<T> surveyedWheel() {
    return points.at(HardPoint.WHEEL_CENTER);
  }

  /**
   * The pose that the hard points were surveyed in, straight from them, with nothing shifted.
   *
   * @throws OutOfReachException if the points make no linkage
   */
  public Pose<T> asSurveyed() {
    FieldVector3D<T> ball = points.at(HardPoint.LOWER_BALL_JOINT);
    FieldVector3D<T> spindle = Upright.spindle(points.camber(), points.toe());
    FieldVector3D<T> kingpin = points.kingpin();
    Upright.Standing<T> standing = points.standing(kingpin, spindle);
    return new Pose<>(
        shifts.isEmpty() ? surveyedAngle() : points.lowerArm(Map.of()).angle(ball),
        ball,
        points.at(points.upperEnd()),
        points.at(HardPoint.TIE_ROD_INNER),
        points.at(HardPoint.WHEEL_CENTER),
        kingpin,
        standing.steeringArm(),
        spindle,
        standing.upright());
  }

  /** The tie rod's inner end with the steering straight ahead (mm). */
  public FieldVector3D<T> tieRodInner() {
    return steering.inner();
  }

  /** Length of the tie rod as surveyed (mm). */
  public T tieRodLength() {
    return steering.rodLength();
  }

  /**
   * The pose with the lower arm at an angle.
   *
   * @param lowerAngle above level (radians)
   */
  public final Posed<T> pose(T lowerAngle, Heading<T> heading) {
    return poses(lowerAngle).apply(heading);
  }

  /**
   * The poses with the lower arm at an angle, by what holds the heading: the arms stand alike in
   * all of them.
   *
   * @param lowerAngle above level (radians)
   */
  public abstract Function<Heading<T>, Posed<T>> poses(T lowerAngle);

  HardPoints<T> points() {
    return points;
  }

  /**
   * Refuses a linkage with anything shifted.
   *
   * @throws IllegalArgumentException if anything is
   */
  void mustBeAsSurveyed() {
    if (!shifts.isEmpty()) {
      throw new IllegalArgumentException("this corner is not as it was surveyed");
    }
  }

  /** Of hard points, from where they were surveyed (mm). */
  Map<HardPoint, FieldVector3D<T>> shifts() {
    return shifts;
  }

  /** The same linkage in other numbers. */
  public abstract <S extends CalculusFieldElement<S>> Corner<S> in(Function<T, S> number);

  /** How the lower arm has moved once it is turned about its axis by an angle (radians). */
  public Motion lowerArmTurned(double angle) {
    Rotation rotation =
        new Rotation(lower.axis().toVector3D(), angle, RotationConvention.VECTOR_OPERATOR);
    Vector3D center = lower.center().toVector3D();
    return new Motion(rotation, center.subtract(rotation.applyTo(center)));
  }

  ArmCircle<T> lower() {
    return lower;
  }

  Steering<T> steering() {
    return steering;
  }

  /**
   * Across the plane in which the upper ball joint's path lets the upright move freely: that of the
   * upper arm, or through the strut's top square to the strut.
   */
  abstract FieldVector3D<T> upperNormal(Pose<T> pose);

  /** The frame of the upper arm in a pose. */
  abstract Frame<T> upperArm(Pose<T> pose);

  /** The upright's frame in a pose: the same in the upright whatever the pose. */
  abstract Frame<T> upright(Pose<T> pose);

  /** A point in plain numbers. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<Binary64> plain(FieldVector3D<T> point) {
    return new FieldVector3D<>(Binary64Field.getInstance(), point.toVector3D());
  }

  /** A point in other numbers. */
  static <T extends CalculusFieldElement<T>, S extends CalculusFieldElement<S>>
      FieldVector3D<S> point(FieldVector3D<T> point, Function<T, S> number) {
    return new FieldVector3D<>(
        number.apply(point.getX()), number.apply(point.getY()), number.apply(point.getZ()));
  }
}
