package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.FieldUnivariateDerivative1;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * How far a mount shortens for each millimeter that the wheel's center rises: spring, damper or
 * sensor travel over wheel travel, positive where the mount shortens in bump. Some documents print
 * its inverse.
 *
 * <p>Exact: lengths and heights carry their derivative by the lower arm's angle through the closed
 * form, and the ratio is the quotient of both.
 */
public final class MotionRatio<T extends CalculusFieldElement<T>> {
  private final Corner<FieldUnivariateDerivative1<T>> swinging;
  private final Mount<FieldUnivariateDerivative1<T>> mount;

  private MotionRatio(
      Corner<FieldUnivariateDerivative1<T>> swinging, Mount<FieldUnivariateDerivative1<T>> mount) {
    this.swinging = swinging;
    this.mount = mount;
  }

  /** The motion ratio of a mount on a corner. */
  public static <T extends CalculusFieldElement<T>> MotionRatio<T> of(
      Corner<T> corner, Mount<T> mount) {
    return new MotionRatio<>(
        corner.in(MotionRatio::still),
        new Mount<>(mount.carrier(), still(mount.body()), still(mount.along())));
  }

  /**
   * The ratio in a pose.
   *
   * @param pose where the corner stands
   * @param heading what holds its heading there
   * @throws IllegalArgumentException if the corner cannot stand so
   */
  public T at(Pose<T> pose, Heading<T> heading) {
    T angle = pose.lowerAngle();
    FieldUnivariateDerivative1<T> turning =
        new FieldUnivariateDerivative1<>(angle, angle.getField().getOne());
    if (!(swinging.pose(turning, still(heading))
        instanceof Pose<FieldUnivariateDerivative1<T>> swung)) {
      throw new IllegalArgumentException("the corner does not reach this pose");
    }
    T shortening = mount.length(swinging, swung).getFirstDerivative().negate();
    return shortening.divide(swung.wheelCenter().getZ().getFirstDerivative());
  }

  private static <T extends CalculusFieldElement<T>> Heading<FieldUnivariateDerivative1<T>> still(
      Heading<T> heading) {
    if (heading instanceof Heading.ByTieRod<T> rod) {
      T length = rod.length();
      return new Heading.ByTieRod<>(still(rod.inner()), length == null ? null : still(length));
    }
    return new Heading.Reset<>(still(((Heading.Reset<T>) heading).toe()));
  }

  private static <T extends CalculusFieldElement<T>>
      FieldVector3D<FieldUnivariateDerivative1<T>> still(FieldVector3D<T> point) {
    return Corner.point(point, MotionRatio::still);
  }

  /** A number that does not change with the angle. */
  private static <T extends CalculusFieldElement<T>> FieldUnivariateDerivative1<T> still(T number) {
    return new FieldUnivariateDerivative1<>(number, number.getField().getZero());
  }
}
