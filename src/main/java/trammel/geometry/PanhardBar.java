package trammel.geometry;

import java.util.List;
import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * The bar that holds a beam axle sideways (Panhard bar, track bar), as found. Points in mm: fore,
 * left, up. Lift is the rise of the frame over the axle (mm); travel in bump is the opposite.
 * Lateral movement is that of the axle under the frame, positive to the left.
 *
 * <p>A bar of length L whose ends differ by h in height and by a fore and aft spans b = √(L² − h² −
 * a²) sideways. Lift d makes it h + d; the axle moves toward the side of the frame end by the loss
 * of b. Exact for an axle that rises level; own derivation from the constant length. Where h² + a²
 * is not less than L² there is no such position, and the result is empty.
 *
 * @param frameEnd center of the end on the frame
 * @param axleEnd center of the end on the axle
 */
public record PanhardBar<T extends CalculusFieldElement<T>>(
    FieldVector3D<T> frameEnd, FieldVector3D<T> axleEnd) {

  /**
   * Farthest lateral positions over a range of travel, counted from ride height (mm, positive to
   * the left): {@code left} is 0 or more, {@code right} 0 or less.
   */
  public record Sweep<T extends CalculusFieldElement<T>>(T left, T right) {}

  /**
   * @throws IllegalArgumentException if the ends are not apart sideways: such a bar holds nothing
   */
  public PanhardBar {
    double apart = frameEnd.getY().getReal() - axleEnd.getY().getReal();
    if (!(Math.abs(apart) > 0)) {
      throw new IllegalArgumentException(
          "found a bar whose ends are " + apart + " mm apart sideways; expected more than 0");
    }
  }

  /** Length between the centers of the ends (mm). */
  public T length() {
    return frameEnd.distance(axleEnd);
  }

  /** Angle to the horizontal in front view (degrees), positive when the frame end is higher. */
  public T angle() {
    return rise().atan2(frameEnd.getY().subtract(axleEnd.getY()).abs()).toDegrees();
  }

  /** That angle after a lift and a change of the bar. */
  public Optional<T> angle(T lift, LinkChange<T> change) {
    T rise = rise(lift, change);
    return span(rise, change).map(span -> rise.atan2(span).toDegrees());
  }

  /**
   * Slope of the bar in front view as an angle (degrees), positive when it rises to the left,
   * whichever end that is: to be compared with that of a drag link.
   */
  public Optional<T> inclination(T lift, LinkChange<T> change) {
    return angle(lift, change).map(this::towardFrameEnd);
  }

  /** Movement of the axle by lift, the bar as found (mm, positive to the left). */
  public Optional<T> shift(T lift) {
    return shift(lift, LinkChange.none(lift.getField()));
  }

  /** Movement of the axle from where it was found, by lift and a change of the bar (mm). */
  public Optional<T> shift(T lift, LinkChange<T> change) {
    T before = frameEnd.getY().subtract(axleEnd.getY()).abs();
    return span(rise(lift, change), change).map(after -> towardFrameEnd(before.subtract(after)));
  }

  /**
   * Length that leaves the axle where it was found (mm): √(b² + (h + lift + raised)² + a²).
   *
   * @param change only where the ends were moved to; its length is not used
   */
  public T lengthThatRecenters(T lift, LinkChange<T> change) {
    T before = frameEnd.getY().subtract(axleEnd.getY());
    return before.square().add(rise(lift, change).square()).add(foreAndAft().square()).sqrt();
  }

  /**
   * Lateral range over wheel travel about ride height. The bar's widest span, level, is taken into
   * account where it lies within the travel.
   *
   * @param bump travel up from ride height to the stop (mm, 0 or more)
   * @param droop travel down from ride height (mm, 0 or more)
   * @return empty if the bar does not reach over the whole range
   */
  public Optional<Sweep<T>> sweep(T lift, T bump, T droop, LinkChange<T> change) {
    T ride = rise(lift, change);
    T lowest = ride.subtract(bump);
    T highest = ride.add(droop);
    T level = ride.getField().getZero();
    boolean passesLevel = lowest.getReal() < 0 && highest.getReal() > 0;
    Optional<T> atRide = span(ride, change);
    Optional<T> atBump = span(lowest, change);
    Optional<T> atDroop = span(highest, change);
    Optional<T> atWidest = passesLevel ? span(level, change) : atRide;
    if (atRide.isEmpty() || atBump.isEmpty() || atDroop.isEmpty() || atWidest.isEmpty()) {
      return Optional.empty();
    }
    T left = level;
    T right = level;
    for (T span : List.of(atBump.get(), atDroop.get(), atWidest.get())) {
      T moved = towardFrameEnd(atRide.get().subtract(span));
      left = moved.getReal() > left.getReal() ? moved : left;
      right = moved.getReal() < right.getReal() ? moved : right;
    }
    return Optional.of(new Sweep<>(left, right));
  }

  /**
   * Lateral movement of the axle per mm of further lift (positive to the left), h/b. Also the
   * jacking force per lateral force: the tangent of the bar's angle. A level bar has none.
   */
  public Optional<T> slope(T lift, LinkChange<T> change) {
    T rise = rise(lift, change);
    return span(rise, change).map(span -> towardFrameEnd(rise.divide(span)));
  }

  /**
   * Height of the roll center (mm): where the bar's line crosses the frame's center plane, as pages
   * of the trade have it; common practice. Counted from where the points' heights are counted, the
   * axle staying at its height and the frame rising by the lift.
   */
  public Optional<T> rollCenterHeight(T lift, LinkChange<T> change) {
    T rise = rise(lift, change);
    T axleEndUp = axleEnd.getZ().add(change.axleEndRaised());
    return span(rise, change)
        .map(
            span -> {
              T axleEndLeft = frameEnd.getY().subtract(towardFrameEnd(span));
              T slopeToLeft = towardFrameEnd(rise.divide(span));
              return axleEndUp.subtract(slopeToLeft.multiply(axleEndLeft));
            });
  }

  private T rise() {
    return frameEnd.getZ().subtract(axleEnd.getZ());
  }

  private T rise(T lift, LinkChange<T> change) {
    return rise().add(lift).add(change.riseGained());
  }

  private T foreAndAft() {
    return frameEnd.getX().subtract(axleEnd.getX());
  }

  private Optional<T> span(T rise, LinkChange<T> change) {
    T changed = length().add(change.longer());
    T square = changed.square().subtract(rise.square()).subtract(foreAndAft().square());
    return changed.getReal() > 0 && square.getReal() > 0
        ? Optional.of(square.sqrt())
        : Optional.empty();
  }

  /** Gives what points toward the frame end its sign to the left. */
  private T towardFrameEnd(T magnitude) {
    return frameEnd.getY().getReal() > axleEnd.getY().getReal() ? magnitude : magnitude.negate();
  }
}
