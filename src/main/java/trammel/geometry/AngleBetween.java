package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * The angle at a joint. From sine and cosine together, which stays exact for small angles. The
 * angle between parallel lines is 0 and has no derivative there: it grows whichever way they turn;
 * 0 is then given for it as well, so let no bound rest on the uncertainty of an angle of exactly 0.
 */
final class AngleBetween {
  private AngleBetween() {}

  /** Between two directions (degrees), 0 to 180. */
  static <T extends CalculusFieldElement<T>> T directions(FieldVector3D<T> a, FieldVector3D<T> b) {
    return sine(a, b).atan2(Products.dot(a, b)).toDegrees();
  }

  /** Between two lines, whichever way each is drawn (degrees), 0 to 90. */
  static <T extends CalculusFieldElement<T>> T lines(FieldVector3D<T> a, FieldVector3D<T> b) {
    return sine(a, b).atan2(Products.dot(a, b).abs()).toDegrees();
  }

  private static <T extends CalculusFieldElement<T>> T sine(
      FieldVector3D<T> a, FieldVector3D<T> b) {
    T square = Products.cross(a, b).getNormSq();
    return square.getReal() > 0 ? square.sqrt() : square.getField().getZero();
  }

  /**
   * @throws IllegalArgumentException if a direction has no length
   */
  static <T extends CalculusFieldElement<T>> void requireDirection(
      String name, FieldVector3D<T> direction) {
    double length = direction.toVector3D().getNorm();
    if (!(length > 0 && length < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "found " + name + " of length " + length + "; expected a direction in space");
    }
  }
}
