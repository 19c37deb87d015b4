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
 * @param points one for each {@link HardPoint}
 */
public record HardPoints<T extends CalculusFieldElement<T>>(
    Map<HardPoint, FieldVector3D<T>> points, T camber, T toe) {

  public HardPoints {
    for (HardPoint point : HardPoint.values()) {
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

  /** Where a joint is (mm). */
  public FieldVector3D<T> at(HardPoint point) {
    return points.get(point);
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
