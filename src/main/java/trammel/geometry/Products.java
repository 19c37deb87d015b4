package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * Products of vectors by plain multiplications and sums. The mathematics library compensates the
 * rounding of each sum, for every derivative too: with thirty variables that is most of a pose's
 * time, for digits far below a nanometer.
 */
final class Products {
  private Products() {}

  /** a · b. */
  static <T extends CalculusFieldElement<T>> T dot(FieldVector3D<T> a, FieldVector3D<T> b) {
    return a.getX()
        .multiply(b.getX())
        .add(a.getY().multiply(b.getY()))
        .add(a.getZ().multiply(b.getZ()));
  }

  /** a × b. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> cross(
      FieldVector3D<T> a, FieldVector3D<T> b) {
    return new FieldVector3D<>(
        a.getY().multiply(b.getZ()).subtract(a.getZ().multiply(b.getY())),
        a.getZ().multiply(b.getX()).subtract(a.getX().multiply(b.getZ())),
        a.getX().multiply(b.getY()).subtract(a.getY().multiply(b.getX())));
  }

  /** a u. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> times(T a, FieldVector3D<T> u) {
    return new FieldVector3D<>(a.multiply(u.getX()), a.multiply(u.getY()), a.multiply(u.getZ()));
  }

  /** a u + b v. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> sum(
      T a, FieldVector3D<T> u, T b, FieldVector3D<T> v) {
    return times(a, u).add(times(b, v));
  }

  /** Components of a vector along three unit vectors. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> components(
      FieldVector3D<T> vector,
      FieldVector3D<T> first,
      FieldVector3D<T> second,
      FieldVector3D<T> third) {
    return new FieldVector3D<>(dot(vector, first), dot(vector, second), dot(vector, third));
  }

  /** The vector that has these components along three vectors. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> composed(
      FieldVector3D<T> components,
      FieldVector3D<T> first,
      FieldVector3D<T> second,
      FieldVector3D<T> third) {
    return sum(components.getX(), first, components.getY(), second)
        .add(times(components.getZ(), third));
  }
}
