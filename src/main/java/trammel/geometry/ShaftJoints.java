package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * A shaft between the joint at the transfer case (or gearbox) and the joint at the axle's pinion.
 * Points in mm: fore, left, up. An axis is a line: it may be given either way and of any length.
 *
 * @param outputCenter center of the joint at the output
 * @param outputAxis direction of the output shaft
 * @param pinionCenter center of the joint at the pinion
 * @param pinionAxis direction of the pinion shaft
 */
public record ShaftJoints<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> outputCenter,
    FieldVector3D<T> outputAxis,
    FieldVector3D<T> pinionCenter,
    FieldVector3D<T> pinionAxis) {

  /**
   * @throws IllegalArgumentException if the joint centers coincide or an axis has no length
   */
  public ShaftJoints {
    AngleBetween.requireDirection("shaft", pinionCenter.subtract(outputCenter));
    AngleBetween.requireDirection("output axis", outputAxis);
    AngleBetween.requireDirection("pinion axis", pinionAxis);
  }

  /** Operating angle at the output (degrees, 0 to 90), in space. */
  public T outputAngle() {
    return AngleBetween.lines(outputAxis, shaft());
  }

  /** Operating angle at the pinion (degrees, 0 to 90), in space. */
  public T pinionAngle() {
    return AngleBetween.lines(pinionAxis, shaft());
  }

  /** Output angle less pinion angle (degrees): 0 where two single joints cancel. */
  public T difference() {
    return outputAngle().subtract(pinionAngle());
  }

  /** Distance between the joint centers (mm). */
  public T length() {
    return outputCenter.distance(pinionCenter);
  }

  /** How much longer the shaft must be in another position (mm); negative where it pushes in. */
  public T slip(ShaftJoints<T> after) {
    return after.length().subtract(length());
  }

  /**
   * How far the pinion's nose must turn up, in side view, to point along the shaft (degrees), as it
   * should where the output has a double Cardan joint; negative where it must turn down. Handbooks
   * of driveshaft makers have the pinion point at the case; common practice.
   */
  public T turnToAimPinion() {
    FieldVector3D<T> towardCase = outputCenter.subtract(pinionCenter);
    boolean away = pinionAxis.dotProduct(towardCase).getReal() < 0;
    FieldVector3D<T> nose = away ? pinionAxis.negate() : pinionAxis;
    return elevation(towardCase).subtract(elevation(nose));
  }

  /**
   * Square of the single joint's angle that would run as unevenly as the two joints together
   * (degrees²), the forks on the shaft in line: |w₁ − w₂|·|w₁ + w₂| where w is the angle at a joint
   * laid off along the part of its axis across the shaft. Where both axes lie in one plane with the
   * shaft that is |b₁² − b₂²|; where they do not, equal angles no longer cancel. Own derivation to
   * second order in the angles. The square is given because the root has no derivative at 0.
   */
  public T residualAngleSquared() {
    FieldVector3D<T> first = angleAcross(outputAxis, outputAngle());
    FieldVector3D<T> second = angleAcross(pinionAxis, pinionAngle());
    return length(first.subtract(second)).multiply(length(first.add(second)));
  }

  private FieldVector3D<T> shaft() {
    return pinionCenter.subtract(outputCenter);
  }

  /** Which way an axis is drawn turns only its sign, which the product above does not feel. */
  private FieldVector3D<T> angleAcross(FieldVector3D<T> axis, T angle) {
    FieldVector3D<T> along = shaft().normalize();
    FieldVector3D<T> across = axis.subtract(along.scalarMultiply(axis.dotProduct(along)));
    T size = length(across);
    return size.getReal() > 0 ? across.scalarMultiply(angle.divide(size)) : across;
  }

  private static <T extends CalculusFieldElement<T>> T length(FieldVector3D<T> vector) {
    T square = vector.getNormSq();
    return square.getReal() > 0 ? square.sqrt() : square.getField().getZero();
  }

  private static <T extends CalculusFieldElement<T>> T elevation(FieldVector3D<T> direction) {
    return direction.getZ().atan2(direction.getX().abs()).toDegrees();
  }
}
