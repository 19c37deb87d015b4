package trammel.geometry;

import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;

/** Points, numbers and changes without derivatives. */
final class Plain {
  private Plain() {}

  static Binary64 number(double value) {
    return new Binary64(value);
  }

  static FieldVector3D<Binary64> point(double fore, double left, double up) {
    return new FieldVector3D<>(number(fore), number(left), number(up));
  }

  static LinkChange<Binary64> unchanged() {
    return LinkChange.none(Binary64Field.getInstance());
  }

  static LinkChange<Binary64> change(double longer, double frameEndRaised, double axleEndRaised) {
    return new LinkChange<>(number(longer), number(frameEndRaised), number(axleEndRaised));
  }
}
