package trammel.geometry;

import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * The joints of a strut corner as surveyed, with the wheel's camber and toe in that pose.
 * Coordinates and signs as in {@link HardPoints} (mm, degrees).
 *
 * @param strutTop center of the top mount, fixed to the body
 * @param strutFoot another point on the strut's axis, fixed to the upright
 */
public record StrutPoints<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> lowerFrontPivot,
    FieldVector3D<T> lowerRearPivot,
    FieldVector3D<T> lowerBallJoint,
    FieldVector3D<T> strutTop,
    FieldVector3D<T> strutFoot,
    FieldVector3D<T> tieRodInner,
    FieldVector3D<T> tieRodOuter,
    FieldVector3D<T> wheelCenter,
    T camber,
    T toe) {

  /** The same corner in other numbers. */
  public <S extends CalculusFieldElement<S>> StrutPoints<S> in(Function<T, S> number) {
    return new StrutPoints<>(
        Corner.point(lowerFrontPivot, number),
        Corner.point(lowerRearPivot, number),
        Corner.point(lowerBallJoint, number),
        Corner.point(strutTop, number),
        Corner.point(strutFoot, number),
        Corner.point(tieRodInner, number),
        Corner.point(tieRodOuter, number),
        Corner.point(wheelCenter, number),
        number.apply(camber),
        number.apply(toe));
  }
}
