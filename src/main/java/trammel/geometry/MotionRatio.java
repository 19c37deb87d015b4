package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/**
 * How far a mount shortens for each millimeter that the wheel's center rises: spring, damper or
 * sensor travel over wheel travel, positive where the mount shortens in bump. Some documents print
 * its inverse.
 *
 * <p>The quotient of central differences of length and height over a turn of the lower arm so small
 * that what they leave out lies below a billionth; carried out in the corner's own numbers, so that
 * the ratio has their derivatives.
 */
public final class MotionRatio<T extends CalculusFieldElement<T>> {
  /**
   * Half the turn of the lower arm (radians): the difference's error, of its square, and that of
   * rounding, of its inverse, are alike here.
   */
  private static final double STEP = 3e-5;

  private final Corner<T> corner;
  private final Mount<T> mount;

  private MotionRatio(Corner<T> corner, Mount<T> mount) {
    this.corner = corner;
    this.mount = mount;
  }

  /** The motion ratio of a mount on a corner. */
  public static <T extends CalculusFieldElement<T>> MotionRatio<T> of(
      Corner<T> corner, Mount<T> mount) {
    return new MotionRatio<>(corner, mount);
  }

  /**
   * The ratio in a pose.
   *
   * @param pose where the corner stands
   * @param heading what holds its heading there
   * @throws IllegalArgumentException if the corner cannot stand so
   */
  public T at(Pose<T> pose, Heading<T> heading) {
    Pose<T> below = beside(pose, -STEP, heading);
    Pose<T> above = beside(pose, STEP, heading);
    T shortening = mount.length(corner, below).subtract(mount.length(corner, above));
    return shortening.divide(above.wheelCenter().getZ().subtract(below.wheelCenter().getZ()));
  }

  private Pose<T> beside(Pose<T> pose, double turn, Heading<T> heading) {
    if (corner.pose(pose.lowerAngle().add(turn), heading) instanceof Pose<T> turned) {
      return turned;
    }
    throw new IllegalArgumentException("the corner does not reach this pose");
  }
}
