package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/**
 * Where a beam axle stands under the frame in side view, counted from where it was found.
 *
 * @param frontUp turn about the lateral axis (degrees), positive when the side of the housing that
 *     faces forward turns up
 * @param foreShift movement of the wheel center (mm), positive forward: it lengthens the wheelbase
 *     on a front axle and shortens it on a rear axle
 */
public record AxlePose<T extends CalculusFieldElement<T>>(T frontUp, T foreShift) {

  /**
   * Turn of the pinion (degrees), nose up positive: a pinion that points forward, as on a rear
   * axle, turns with the front of the housing; one that points rearward, as on a front axle,
   * against it.
   */
  public T pinionNoseUp(Facing pinion) {
    return pinion == Facing.FORWARD ? frontUp : frontUp.negate();
  }

  /** Change of caster of a steered axle (degrees): as the front turns up, the top goes rearward. */
  public T casterChange() {
    return frontUp;
  }
}
