package trammel.geometry;

import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * The drag link from the pitman arm on the frame to the steering arm of a beam axle, steered
 * straight ahead. Points in mm: fore, left, up. Lift is the rise of the frame over the axle (mm).
 * Where drag link and Panhard bar do not swing alike, travel steers the wheels: both of them
 * through the tie rod, so this is steer, not toe.
 *
 * <p>The steering arm turns about a line taken as vertical: caster and kingpin inclination are left
 * out. The pitman arm stands still. Own derivation from the constant length.
 *
 * @param pitmanEnd center of the end on the pitman arm
 * @param armEnd center of the end on the steering arm
 * @param armAhead how far the steering arm's end lies ahead of the steering axis (mm); behind it,
 *     negative
 */
public record DragLink<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> pitmanEnd, FieldVector3D<T> armEnd, T armAhead) {

  /**
   * @throws IllegalArgumentException if the steering arm has no length or the ends are not apart
   *     sideways: such a link does not steer
   */
  public DragLink {
    double apart = pitmanEnd.getY().getReal() - armEnd.getY().getReal();
    if (!(Math.abs(apart) > 0 && Math.abs(armAhead.getReal()) > 0)) {
      throw new IllegalArgumentException(
          "found a drag link whose ends are "
              + apart
              + " mm apart sideways on a steering arm of "
              + armAhead.getReal()
              + " mm; expected neither to be 0");
    }
  }

  /** Length between the centers of the ends (mm). */
  public T length() {
    return pitmanEnd.distance(armEnd);
  }

  /**
   * Slope of the link in front view as an angle (degrees), positive when it rises to the left, with
   * the wheels set straight by the link's length.
   *
   * @param axleShift lateral movement of the axle, positive to the left (mm)
   * @param change only where the ends were moved to; its length is not used
   */
  public T inclination(T lift, T axleShift, LinkChange<T> change) {
    FieldVector3D<T> link = pitmanFromArm(lift, axleShift, change);
    boolean pitmanIsLeft = link.getY().getReal() > 0;
    T toLeft = pitmanIsLeft ? link.getZ() : link.getZ().negate();
    return toLeft.atan2(link.getY().abs()).toDegrees();
  }

  /**
   * Inclination of the drag link less that of the Panhard bar after a lift (degrees): 0 where they
   * lie parallel in front view. Empty if the bar does not reach.
   */
  public Optional<T> mismatch(
      T lift, LinkChange<T> change, PanhardBar<T> bar, LinkChange<T> barChange) {
    return bar.shift(lift, barChange)
        .flatMap(
            shift ->
                bar.inclination(lift, barChange)
                    .map(slope -> inclination(lift, shift, change).subtract(slope)));
  }

  /** Length that holds the wheels straight after a lift and a lateral movement of the axle (mm). */
  public T lengthThatCenters(T lift, T axleShift, LinkChange<T> change) {
    return pitmanFromArm(lift, axleShift, change).getNorm();
  }

  /**
   * Steer of the wheel from straight ahead (degrees, positive to the left), by lift, a lateral
   * movement of the axle (mm, positive to the left) and a change of the link. Empty if the link
   * does not reach.
   */
  public Optional<T> steer(T lift, T axleShift, LinkChange<T> change) {
    // With q from the pitman end to the steering axis at the arm's height and the arm a turned by
    // the steer s: |q + a(s)|² = L², so along · cos s + across · sin s = reach.
    FieldVector3D<T> link = pitmanFromArm(lift, axleShift, change);
    T axisFore = link.getX().negate().subtract(armAhead);
    T axisLeft = link.getY().negate();
    T along = axisFore.multiply(armAhead);
    T across = axisLeft.multiply(armAhead);
    T axisSquare = axisFore.square().add(axisLeft.square()).add(link.getZ().square());
    T changed = length().add(change.longer());
    T reach = changed.square().subtract(axisSquare).subtract(armAhead.square()).divide(2);
    // The root that steers straight ahead where nothing has changed has the sign of `across`.
    double sign = Math.signum(across.getReal());
    T sine = reach.multiply(sign).divide(along.square().add(across.square()).sqrt());
    if (!(changed.getReal() > 0 && Math.abs(sine.getReal()) < 1)) {
      return Optional.empty();
    }
    T lead = along.multiply(sign).atan2(across.multiply(sign));
    return Optional.of(sine.asin().subtract(lead).toDegrees());
  }

  /**
   * Bump steer (degrees, positive to the left): steer by wheel travel from a ride height at which
   * the link was adjusted straight, the axle following its Panhard bar.
   *
   * @param lift at ride height (mm)
   * @param travel of the wheels up from there (mm), droop negative
   * @param change only where the ends were moved to; its length is that which holds straight
   * @return empty if bar or link do not reach
   */
  public Optional<T> bumpSteer(
      T lift, T travel, LinkChange<T> change, PanhardBar<T> bar, LinkChange<T> barChange) {
    T there = lift.subtract(travel);
    return bar.shift(lift, barChange)
        .flatMap(
            atRide -> {
              T longer = lengthThatCenters(lift, atRide, change).subtract(length());
              LinkChange<T> adjusted =
                  new LinkChange<>(longer, change.frameEndRaised(), change.axleEndRaised());
              return bar.shift(there, barChange).flatMap(s -> steer(there, s, adjusted));
            });
  }

  private FieldVector3D<T> pitmanFromArm(T lift, T axleShift, LinkChange<T> change) {
    FieldVector3D<T> found = pitmanEnd.subtract(armEnd);
    return new FieldVector3D<>(
        found.getX(),
        found.getY().subtract(axleShift),
        found.getZ().add(lift).add(change.riseGained()));
  }
}
