package trammel.geometry;

import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * A beam axle clamped to radius arms: it turns with the arm about the arm's end on the frame.
 * Points in mm: fore, left, up; only fore and up count. Lift is the rise of the frame over the
 * wheel center (mm). With R from the frame end to the wheel center and the wheel center v below it,
 * the turn is the change of asin(v/R): own derivation from the circle.
 *
 * @param frameEnd center of the arm's bush on the frame
 * @param axleEnd middle of the arm's clamp on the axle, which tells the way a longer arm grows
 * @param wheelCenter center of the wheel
 */
public record RadiusArm<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> frameEnd, FieldVector3D<T> axleEnd, FieldVector3D<T> wheelCenter) {

  /**
   * @throws IllegalArgumentException if the wheel center is not before or behind the frame end, or
   *     the arm has no length in side view
   */
  public RadiusArm {
    double before = wheelCenter.getX().getReal() - frameEnd.getX().getReal();
    double arm =
        Math.hypot(
            axleEnd.getX().getReal() - frameEnd.getX().getReal(),
            axleEnd.getZ().getReal() - frameEnd.getZ().getReal());
    if (!(Math.abs(before) > 0 && arm > 0)) {
      throw new IllegalArgumentException(
          "found a radius arm of "
              + arm
              + " mm with the wheel center "
              + before
              + " mm before its frame end; expected neither to be 0");
    }
  }

  /** Pose after a lift, the arm as found; empty if the arm does not reach so far. */
  public Optional<AxlePose<T>> at(T lift) {
    return at(lift, LinkChange.none(lift.getField()));
  }

  /**
   * Pose after a lift and a change of the arm. A longer arm carries the axle along the arm without
   * turning it; a raised axle end lowers the axle on the arm.
   *
   * @return empty if the arm does not reach so far
   */
  public Optional<AxlePose<T>> at(T lift, LinkChange<T> change) {
    T armFore = axleEnd.getX().subtract(frameEnd.getX());
    T armUp = axleEnd.getZ().subtract(frameEnd.getZ());
    T stretch = change.longer().divide(armFore.square().add(armUp.square()).sqrt());
    T wheelFore = wheelCenter.getX().subtract(frameEnd.getX());
    T wheelUp = wheelCenter.getZ().subtract(frameEnd.getZ());
    T fore = wheelFore.add(armFore.multiply(stretch));
    T up = wheelUp.add(armUp.multiply(stretch)).subtract(change.axleEndRaised());
    T newUp = wheelUp.subtract(lift).subtract(change.frameEndRaised());
    T square = fore.square().add(up.square()).subtract(newUp.square());
    if (!(square.getReal() > 0 && fore.getReal() * wheelFore.getReal() > 0)) {
      return Optional.empty();
    }
    T newFore = fore.getReal() > 0 ? square.sqrt() : square.sqrt().negate();
    T sine = fore.multiply(newUp).subtract(up.multiply(newFore));
    T cosine = fore.multiply(newFore).add(up.multiply(newUp));
    return Optional.of(new AxlePose<>(sine.atan2(cosine).toDegrees(), newFore.subtract(wheelFore)));
  }
}
