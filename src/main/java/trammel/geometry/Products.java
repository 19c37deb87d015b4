package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Products of vectors by plain multiplications and sums. The mathematics library compensates the
 * rounding of each sum, for every derivative too: with thirty variables that is most of a pose's
 * time, for digits far below a nanometer.
 */
final class Products {
  private Products() {}

  /** a · b. */
  static <T extends CalculusFieldElement<T>> T dot(FieldVector3D<T> a, FieldVector3D<T> b) {
    return SumOfProducts.of(a.getX(), b.getX(), a.getY(), b.getY(), a.getZ(), b.getZ());
  }

  /** a · a. */
  static <T extends CalculusFieldElement<T>> T square(FieldVector3D<T> a) {
    return dot(a, a);
  }

  /** Length of a vector. */
  static <T extends CalculusFieldElement<T>> T length(FieldVector3D<T> a) {
    return dot(a, a).sqrt();
  }

  /** a × b. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> cross(
      FieldVector3D<T> a, FieldVector3D<T> b) {
    return new FieldVector3D<>(
        SumOfProducts.difference(a.getY(), b.getZ(), a.getZ(), b.getY()),
        SumOfProducts.difference(a.getZ(), b.getX(), a.getX(), b.getZ()),
        SumOfProducts.difference(a.getX(), b.getY(), a.getY(), b.getX()));
  }

  /** a · b in plain numbers. */
  static double dot(Vector3D a, Vector3D b) {
    return a.getX() * b.getX() + a.getY() * b.getY() + a.getZ() * b.getZ();
  }

  /** a × b in plain numbers. */
  static Vector3D cross(Vector3D a, Vector3D b) {
    return new Vector3D(
        a.getY() * b.getZ() - a.getZ() * b.getY(),
        a.getZ() * b.getX() - a.getX() * b.getZ(),
        a.getX() * b.getY() - a.getY() * b.getX());
  }

  /** a u + b v in plain numbers. */
  static Vector3D sum(double a, Vector3D u, double b, Vector3D v) {
    return new Vector3D(
        a * u.getX() + b * v.getX(), a * u.getY() + b * v.getY(), a * u.getZ() + b * v.getZ());
  }

  /** a u. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> times(T a, FieldVector3D<T> u) {
    return new FieldVector3D<>(a.multiply(u.getX()), a.multiply(u.getY()), a.multiply(u.getZ()));
  }

  /** a u + b v. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> sum(
      T a, FieldVector3D<T> u, T b, FieldVector3D<T> v) {
    return new FieldVector3D<>(
        SumOfProducts.of(a, u.getX(), b, v.getX()),
        SumOfProducts.of(a, u.getY(), b, v.getY()),
        SumOfProducts.of(a, u.getZ(), b, v.getZ()));
  }

  /** The place that is a u + b v from another. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> from(
      FieldVector3D<T> start, T a, FieldVector3D<T> u, T b, FieldVector3D<T> v) {
    return new FieldVector3D<>(
        SumOfProducts.from(start.getX(), a, u.getX(), b, v.getX()),
        SumOfProducts.from(start.getY(), a, u.getY(), b, v.getY()),
        SumOfProducts.from(start.getZ(), a, u.getZ(), b, v.getZ()));
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
    T a = components.getX();
    T b = components.getY();
    T c = components.getZ();
    return new FieldVector3D<>(
        SumOfProducts.of(a, first.getX(), b, second.getX(), c, third.getX()),
        SumOfProducts.of(a, first.getY(), b, second.getY(), c, third.getY()),
        SumOfProducts.of(a, first.getZ(), b, second.getZ(), c, third.getZ()));
  }

  /** The place whose components from another are these along three vectors. */
  static <T extends CalculusFieldElement<T>> FieldVector3D<T> composedFrom(
      FieldVector3D<T> start,
      FieldVector3D<T> components,
      FieldVector3D<T> first,
      FieldVector3D<T> second,
      FieldVector3D<T> third) {
    T a = components.getX();
    T b = components.getY();
    T c = components.getZ();
    return new FieldVector3D<>(
        SumOfProducts.from(start.getX(), a, first.getX(), b, second.getX(), c, third.getX()),
        SumOfProducts.from(start.getY(), a, first.getY(), b, second.getY(), c, third.getY()),
        SumOfProducts.from(start.getZ(), a, first.getZ(), b, second.getZ(), c, third.getZ()));
  }
}
