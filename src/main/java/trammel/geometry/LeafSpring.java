package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/**
 * What blocks, wedges and longer shackles do to an axle on leaf springs, from lengths a tape
 * measures: the spring is taken as rigid and its eyes as level with each other. Own derivation from
 * the lengths. Lift is the rise of the frame over the axle (mm); turns are those of the axle under
 * the frame in degrees, positive with the front of the housing up, as {@link AxlePose} has them.
 *
 * @param fixedEyeToAxle from the eye on the frame to the center bolt (mm)
 * @param axleToShackleEye from the center bolt to the eye on the shackle (mm)
 * @param shackle end of the spring that hangs on the shackle
 * @param springOverAxle whether the spring lies above the axle tube
 */
public record LeafSpring<T extends CalculusFieldElement<T>>(
    T fixedEyeToAxle, T axleToShackleEye, Facing shackle, boolean springOverAxle) {

  /**
   * @throws IllegalArgumentException if a length is not above 0
   */
  public LeafSpring {
    requirePositive("from fixed eye to axle", fixedEyeToAxle);
    requirePositive("from axle to shackle eye", axleToShackleEye);
  }

  /**
   * How far a longer shackle lets its eye down below the frame (mm). The eye keeps its distance
   * fore and aft from the shackle's bolt, so a leaning shackle gains more than its extra length.
   *
   * @param before length of the shackle between its bolts (mm)
   * @param after length of the new one (mm)
   * @param lean angle of the shackle to the vertical as found (degrees)
   * @throws IllegalArgumentException if a length is not above 0, the lean not below 90, or the new
   *     shackle too short to span the lean
   */
  public static <T extends CalculusFieldElement<T>> T eyeDrop(T before, T after, T lean) {
    requirePositive("shackle before", before);
    requirePositive("shackle after", after);
    T aside = before.multiply(lean.toRadians().sin());
    T square = after.square().subtract(aside.square());
    if (!(Math.abs(lean.getReal()) < 90 && square.getReal() > 0)) {
      throw new IllegalArgumentException(
          "found a shackle of "
              + after.getReal()
              + " mm in place of one of "
              + before.getReal()
              + " mm leaning "
              + lean.getReal()
              + " degrees; expected one that reaches");
    }
    return square.sqrt().subtract(before.multiply(lean.toRadians().cos()));
  }

  /** Lift at the axle (mm) by a drop of the shackle eye (mm): half of it for a centered axle. */
  public T liftOfShackle(T eyeDrop) {
    return eyeDrop.multiply(fixedEyeToAxle).divide(span());
  }

  /**
   * Turn of the axle by a drop of the shackle eye (mm), about the fixed eye: asin(drop / distance
   * of the eyes). A shackle at the rear turns the front of the housing up.
   *
   * @throws IllegalArgumentException if the drop is not less than the distance of the eyes
   */
  public T turnOfShackle(T eyeDrop) {
    T sine = eyeDrop.divide(span());
    if (!(Math.abs(sine.getReal()) < 1)) {
      throw new IllegalArgumentException(
          "found a drop of the shackle eye of "
              + eyeDrop.getReal()
              + " mm; expected less than the distance of the eyes");
    }
    return frontUp(sine.asin().toDegrees(), shackle == Facing.REARWARD);
  }

  /** Lift by a block between spring and axle (mm); below an axle over its spring it lowers. */
  public T liftOfBlock(T thickness) {
    return springOverAxle ? thickness : thickness.negate();
  }

  /**
   * Turn of the axle by a wedge between spring and axle, or a block cut to one (degrees).
   *
   * @param angle between the wedge's faces
   * @param thickEnd end at which it is thicker; to the rear, under a spring over the axle, it turns
   *     the front of the housing up
   */
  public T turnOfWedge(T angle, Facing thickEnd) {
    return frontUp(angle, (thickEnd == Facing.REARWARD) == springOverAxle);
  }

  private T span() {
    return fixedEyeToAxle.add(axleToShackleEye);
  }

  private static <T extends CalculusFieldElement<T>> T frontUp(T angle, boolean up) {
    return up ? angle : angle.negate();
  }

  private static <T extends CalculusFieldElement<T>> void requirePositive(String name, T length) {
    if (!(length.getReal() > 0 && length.getReal() < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "found " + length.getReal() + " mm as length " + name + "; expected a number above 0");
    }
  }
}
