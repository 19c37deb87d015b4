package trammel.geometry;

import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.twod.FieldVector2D;
import org.hipparchus.util.FieldSinCos;

/**
 * Frame, lower link, axle and upper link as a planar four-bar in side view (fore, up; mm), placed
 * by the angle of the lower link: the axle end of the upper link lies where the circle about its
 * frame end meets the circle about the axle end of the lower link.
 *
 * @param lowerOnAxle axle end of the lower link, from the wheel center, in the axle's axes
 * @param upperOnAxle axle end of the upper link, likewise
 * @param branch which of the two meetings: 1 or −1
 */
record FourBar<T extends CalculusFieldElement<T>>(
    FieldVector2D<T> lowerFrameEnd,
    FieldVector2D<T> upperFrameEnd,
    T lowerLength,
    T upperLength,
    FieldVector2D<T> lowerOnAxle,
    FieldVector2D<T> upperOnAxle,
    double branch) {

  /** Wheel center (mm) and turn of the axle, front up (radians). */
  record Position<T extends CalculusFieldElement<T>>(FieldVector2D<T> wheelCenter, T turn) {}

  /** Position at an angle of the lower link from forward to up (radians); empty if none. */
  Optional<Position<T>> at(T lowerAngle) {
    FieldSinCos<T> direction = lowerAngle.sinCos();
    FieldVector2D<T> lower =
        new FieldVector2D<>(direction.cos(), direction.sin())
            .scalarMultiply(lowerLength)
            .add(lowerFrameEnd);
    FieldVector2D<T> base = upperFrameEnd.subtract(lower);
    FieldVector2D<T> bracket = upperOnAxle.subtract(lowerOnAxle);
    T bracketSquare = bracket.getNormSq();
    T baseSquare = base.getNormSq();
    T along =
        bracketSquare.subtract(upperLength.square()).add(baseSquare).divide(baseSquare.multiply(2));
    T asideSquare = bracketSquare.divide(baseSquare).subtract(along.square());
    if (!(asideSquare.getReal() > 0)) {
      return Optional.empty();
    }
    T aside = asideSquare.sqrt().multiply(branch);
    FieldVector2D<T> turned =
        new FieldVector2D<>(
            base.getX().multiply(along).subtract(base.getY().multiply(aside)),
            base.getY().multiply(along).add(base.getX().multiply(aside)));
    T cosine = bracket.dotProduct(turned).divide(bracketSquare);
    T sine = cross(bracket, turned).divide(bracketSquare);
    T fore = lowerOnAxle.getX().multiply(cosine).subtract(lowerOnAxle.getY().multiply(sine));
    T up = lowerOnAxle.getX().multiply(sine).add(lowerOnAxle.getY().multiply(cosine));
    return Optional.of(
        new Position<>(lower.subtract(new FieldVector2D<>(fore, up)), sine.atan2(cosine)));
  }

  static <T extends CalculusFieldElement<T>> T cross(FieldVector2D<T> a, FieldVector2D<T> b) {
    return a.getX().multiply(b.getY()).subtract(a.getY().multiply(b.getX()));
  }
}
