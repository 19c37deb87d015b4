package trammel.geometry;

import java.util.Map;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.FieldSinCos;

/**
 * The two bolts that clamp a strut to its knuckle, of which one may be eccentric or stand in a
 * slot: it turns the knuckle against the strut about the other. Both bolts are taken to run fore
 * and aft.
 */
final class KnuckleBolts {
  private KnuckleBolts() {}

  /**
   * Where a point of the strut comes to in the knuckle (mm).
   *
   * @param shifts by which the knuckle's holes are moved outward against the strut (mm), their
   *     {@code out} alone
   * @param point of the strut as surveyed
   * @throws OutOfReachException if a bolt is moved farther than the two are apart
   */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> moved(
      HardPoints<T> points, Map<HardPoint, FieldVector3D<T>> shifts, FieldVector3D<T> point) {
    FieldVector3D<T> upperShift = shifts.get(HardPoint.KNUCKLE_UPPER_BOLT);
    FieldVector3D<T> lowerShift = shifts.get(HardPoint.KNUCKLE_LOWER_BOLT);
    if (upperShift == null && lowerShift == null) {
      return point;
    }
    FieldVector3D<T> low = points.at(HardPoint.KNUCKLE_LOWER_BOLT);
    FieldVector3D<T> high = points.at(HardPoint.KNUCKLE_UPPER_BOLT);
    FieldVector3D<T> moved = point;
    if (upperShift != null) {
      Turn<T> turn = Turn.of(low, high, upperShift);
      moved = turn.of(moved);
      high = turn.of(high);
    }
    return lowerShift == null ? moved : Turn.of(high, low, lowerShift).of(moved);
  }

  /** A turn about a fore-and-aft axis. */
  private record Turn<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> about, FieldSinCos<T> angle) {

    /**
     * The turn of the strut that moves one of its bolts inward as far as the knuckle's hole goes
     * out.
     */
    static <T extends CalculusFieldElement<T>> Turn<T> of(
        FieldVector3D<T> about, FieldVector3D<T> bolt, FieldVector3D<T> shift) {
      T out = bolt.getY().subtract(about.getY());
      T up = bolt.getZ().subtract(about.getZ());
      T reach = out.square().add(up.square());
      T outThen = out.subtract(shift.getY());
      T square = reach.subtract(outThen.square());
      if (!(square.getReal() > 0)) {
        throw new OutOfReachException("a bolt at the knuckle moves farther than the two are apart");
      }
      T upThen = square.sqrt().copySign(up);
      return new Turn<>(
          about,
          new FieldSinCos<>(
              out.multiply(upThen).subtract(up.multiply(outThen)).divide(reach),
              out.multiply(outThen).add(up.multiply(upThen)).divide(reach)));
    }

    FieldVector3D<T> of(FieldVector3D<T> point) {
      T out = point.getY().subtract(about.getY());
      T up = point.getZ().subtract(about.getZ());
      return new FieldVector3D<>(
          point.getX(),
          about.getY().add(out.multiply(angle.cos())).subtract(up.multiply(angle.sin())),
          about.getZ().add(out.multiply(angle.sin())).add(up.multiply(angle.cos())));
    }
  }
}
