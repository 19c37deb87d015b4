package trammel.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.Field;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;

/**
 * The joints of one corner as surveyed, with the wheel's camber and toe in that pose.
 *
 * <p>Coordinates are <em>fore</em> (x, forward), <em>out</em> (y, from the center plane toward the
 * corner's own side) and <em>up</em> (z), in mm. Every corner is worked out as a left one: a right
 * corner is its mirror image and has the same coordinates. Camber is positive with the top outward,
 * toe of the wheel positive toward the inside; both in degrees.
 *
 * @param points one for each {@link HardPoint} of a double wishbone, or of a strut
 */
public record HardPoints<T extends CalculusFieldElement<T>>(
    Map<HardPoint, FieldVector3D<T>> points, T camber, T toe) {

  public HardPoints {
    boolean strut = points.containsKey(HardPoint.STRUT_TOP);
    for (HardPoint point : strut ? HardPoint.ofStrut() : HardPoint.ofWishbones()) {
      if (!points.containsKey(point)) {
        throw new IllegalArgumentException("a corner needs its " + point.words());
      }
    }
    points = new EnumMap<>(points);
  }

  /** Plain numbers as hard points (mm, degrees). */
  public static HardPoints<Binary64> of(
      Map<HardPoint, Vector3D> points, double camber, double toe) {
    Map<HardPoint, FieldVector3D<Binary64>> plain = new EnumMap<>(HardPoint.class);
    points.forEach(
        (name, point) -> plain.put(name, new FieldVector3D<>(Binary64Field.getInstance(), point)));
    return new HardPoints<>(plain, new Binary64(camber), new Binary64(toe));
  }

  /** Whether these are a strut's joints. */
  public boolean strut() {
    return points.containsKey(HardPoint.STRUT_TOP);
  }

  /**
   * Where a joint is (mm).
   *
   * @throws IllegalArgumentException if this corner has no such joint
   */
  public FieldVector3D<T> at(HardPoint point) {
    FieldVector3D<T> at = points.get(point);
    if (at == null) {
      throw new IllegalArgumentException("no " + point.words() + " was surveyed");
    }
    return at;
  }

  /** The upper end of the steering axis: a strut's top, else the upper ball joint. */
  HardPoint upperEnd() {
    return strut() ? HardPoint.STRUT_TOP : HardPoint.UPPER_BALL_JOINT;
  }

  /**
   * The unit vector up the steering axis.
   *
   * @throws OutOfReachException if it leans by 60° or more
   */
  FieldVector3D<T> kingpin() {
    return Upright.kingpin(
        at(upperEnd()).subtract(at(HardPoint.LOWER_BALL_JOINT)),
        strut() ? "strut's top" : "upper ball joint");
  }

  /**
   * The upright as it stands.
   *
   * @param kingpin unit vector up the steering axis
   * @param spindle unit vector along the wheel's axis, outboard
   * @throws OutOfReachException if the tie rod cannot steer it
   */
  Upright.Standing<T> standing(FieldVector3D<T> kingpin, FieldVector3D<T> spindle) {
    return Upright.standing(
        at(HardPoint.LOWER_BALL_JOINT),
        kingpin,
        at(HardPoint.TIE_ROD_OUTER),
        at(HardPoint.WHEEL_CENTER),
        spindle);
  }

  /** Where a joint is once a shift, if it has one, has moved it (mm). */
  FieldVector3D<T> shifted(Map<HardPoint, FieldVector3D<T>> shifts, HardPoint point) {
    FieldVector3D<T> shift = shifts.get(point);
    return shift == null ? at(point) : at(point).add(shift);
  }

  /**
   * An arm on pivots that may have been moved, its legs as long as they were surveyed; a ball joint
   * that is shifted belongs to an arm of another shape on the same pivots.
   */
  ArmCircle<T> arm(
      String name,
      Map<HardPoint, FieldVector3D<T>> shifts,
      HardPoint frontPivot,
      HardPoint rearPivot,
      HardPoint ballJoint) {
    FieldVector3D<T> ball = shifted(shifts, ballJoint);
    return ArmCircle.of(
        name,
        shifted(shifts, frontPivot),
        shifted(shifts, rearPivot),
        Products.square(ball.subtract(at(frontPivot))),
        Products.square(ball.subtract(at(rearPivot))));
  }

  /** The lower arm, which every corner has. */
  ArmCircle<T> lowerArm(Map<HardPoint, FieldVector3D<T>> shifts) {
    return arm(
        "lower arm",
        shifts,
        HardPoint.LOWER_FRONT_PIVOT,
        HardPoint.LOWER_REAR_PIVOT,
        HardPoint.LOWER_BALL_JOINT);
  }

  /** The same corner with one joint elsewhere by a shift (mm). */
  public HardPoints<T> moved(HardPoint point, FieldVector3D<T> shift) {
    Map<HardPoint, FieldVector3D<T>> moved = new EnumMap<>(points);
    moved.put(point, at(point).add(shift));
    return new HardPoints<>(moved, camber, toe);
  }

  /** The same corner in other numbers. */
  public <S extends CalculusFieldElement<S>> HardPoints<S> in(
      Function<FieldVector3D<T>, FieldVector3D<S>> point, Function<T, S> angle) {
    Map<HardPoint, FieldVector3D<S>> other = new EnumMap<>(HardPoint.class);
    points.forEach((name, at) -> other.put(name, point.apply(at)));
    return new HardPoints<>(other, angle.apply(camber), angle.apply(toe));
  }

  /** The same corner in plain numbers. */
  public HardPoints<Binary64> plain() {
    return in(
        point -> new FieldVector3D<>(Binary64Field.getInstance(), point.toVector3D()),
        angle -> new Binary64(angle.getReal()));
  }

  /** The numbers these are computed in. */
  Field<T> field() {
    return camber.getField();
  }
}
