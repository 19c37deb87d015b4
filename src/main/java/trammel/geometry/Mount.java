package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * Something that reaches from the body to an arm or the upright: a spring, a damper, the link of a
 * height sensor.
 *
 * @param carrier what its moving end is fixed to
 * @param body its end on the body (mm)
 * @param along place of its moving end in the carrier's own directions (mm)
 */
public record Mount<T extends CalculusFieldElement<T>>(
    Carrier carrier, FieldVector3D<T> body, FieldVector3D<T> along) {

  /** What moves with the wheel. */
  public enum Carrier {
    LOWER_ARM,
    UPPER_ARM,
    UPRIGHT
  }

  /**
   * A mount as surveyed.
   *
   * @param surveyed the corner with nothing shifted
   * @param moving its end on the carrier, surveyed with the corner's hard points (mm)
   * @throws IllegalArgumentException if anything is shifted
   */
  public static <T extends CalculusFieldElement<T>> Mount<T> of(
      Corner<T> surveyed, Carrier carrier, FieldVector3D<T> body, FieldVector3D<T> moving) {
    return new Mount<>(carrier, body, Frame.surveyed(surveyed, carrier).in(moving));
  }

  /** Where its moving end is in a pose (mm). */
  public FieldVector3D<T> moving(Corner<T> corner, Pose<T> pose) {
    return Frame.of(corner, pose, carrier).out(along);
  }

  /** Its length in a pose (mm). */
  public T length(Corner<T> corner, Pose<T> pose) {
    return Products.length(moving(corner, pose).subtract(body));
  }
}
