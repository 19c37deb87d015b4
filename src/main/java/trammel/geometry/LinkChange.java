package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.Field;

/**
 * What was altered on a bar or link between frame and axle since it was found.
 *
 * @param longer new less old length between the centers of its ends (mm)
 * @param frameEndRaised how much higher its end sits on the frame (mm); a dropped bracket or a
 *     dropped pitman arm is negative
 * @param axleEndRaised how much higher its end sits on the axle (mm)
 */
public record LinkChange<T extends CalculusFieldElement<T>>(
    T longer, T frameEndRaised, T axleEndRaised) {

  /** As found. */
  public static <T extends CalculusFieldElement<T>> LinkChange<T> none(Field<T> field) {
    return new LinkChange<>(field.getZero(), field.getZero(), field.getZero());
  }

  /** Another length (mm) in the same mountings. */
  public static <T extends CalculusFieldElement<T>> LinkChange<T> longerBy(T longer) {
    T zero = longer.getField().getZero();
    return new LinkChange<>(longer, zero, zero);
  }

  /** The frame end moved up by this much (mm). */
  public static <T extends CalculusFieldElement<T>> LinkChange<T> frameEndRaisedBy(T raised) {
    T zero = raised.getField().getZero();
    return new LinkChange<>(zero, raised, zero);
  }

  /** The axle end moved up by this much (mm). */
  public static <T extends CalculusFieldElement<T>> LinkChange<T> axleEndRaisedBy(T raised) {
    T zero = raised.getField().getZero();
    return new LinkChange<>(zero, zero, raised);
  }

  /** How much the changes add to the height of the frame end over the axle end (mm). */
  T riseGained() {
    return frameEndRaised.subtract(axleEndRaised);
  }
}
