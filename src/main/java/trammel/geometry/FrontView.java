package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/**
 * Instant center and roll center of a corner by the front-view construction: the planes of both
 * arms cut the transverse plane through the wheel's center; their lines meet in the instant center;
 * the line from it to the center of contact crosses the vehicle's center plane at the roll center.
 * A strut guides its top as an arm would whose plane lies square to it.
 *
 * <p>Computed from the motion of the contact instead, a roll center may lie 10 mm elsewhere, since
 * trail times bump steer moves the contact sideways; so the method belongs to the number.
 *
 * @param instantOut instant center, from the center plane (mm)
 * @param instantUp instant center, height (mm)
 * @param rollCenter roll center, height (mm) in the points' own frame
 */
public record FrontView<T extends CalculusFieldElement<T>>(
    T instantOut, T instantUp, T rollCenter) {

  /**
   * The construction in one pose. With arms parallel in this view the instant center is infinitely
   * far away and the roll center lies where the parallel through the contact meets the center
   * plane.
   *
   * @param loadedRadius of the tire (mm)
   */
  public static <T extends CalculusFieldElement<T>> FrontView<T> of(
      Corner<T> corner, Pose<T> pose, T loadedRadius) {
    T fore = pose.wheelCenter().getX();
    Line<T> upper = Line.of(corner.upperNormal(pose), pose.upperBall(), fore);
    FieldVector3D<T> across =
        Products.cross(corner.lower().axis(), pose.lowerBall().subtract(corner.lower().center()));
    Line<T> lower = Line.of(across, pose.lowerBall(), fore);
    // z = height + slope·y on both lines
    T closing = upper.slope.subtract(lower.slope);
    T out = lower.height.subtract(upper.height).divide(closing);
    T up = lower.height.add(lower.slope.multiply(out));
    FieldVector3D<T> contact = pose.contact(loadedRadius);
    boolean parallel = Math.abs(closing.getReal()) < 1e-9;
    T slope =
        parallel ? lower.slope : up.subtract(contact.getZ()).divide(out.subtract(contact.getY()));
    return new FrontView<>(out, up, contact.getZ().subtract(slope.multiply(contact.getY())));
  }

  /** An arm's plane cut by a transverse plane. */
  private record Line<T extends CalculusFieldElement<T>>(T height, T slope) {
    static <T extends CalculusFieldElement<T>> Line<T> of(
        FieldVector3D<T> normal, FieldVector3D<T> ball, T fore) {
      T slope = normal.getY().divide(normal.getZ()).negate();
      T atBall =
          ball.getZ()
              .subtract(normal.getX().divide(normal.getZ()).multiply(fore.subtract(ball.getX())));
      return new Line<>(atBall.subtract(slope.multiply(ball.getY())), slope);
    }
  }
}
