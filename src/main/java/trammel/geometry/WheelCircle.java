package trammel.geometry;

import org.hipparchus.util.Binary64;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * A circle that the wheel's center about keeps to as the lower arm turns, to know where to look for
 * a pose. It fits where the wheel was surveyed and just beside; 30 mm from there it is off by
 * micrometers, and of odd linkages by some hundredths of a millimeter.
 *
 * @param surveyed the lower arm's angle as surveyed (radians above level)
 * @param center height of the circle's center (mm)
 * @param radius of the circle (mm)
 * @param ahead how far the center on its circle is turned from level when the arm is as surveyed
 *     (radians)
 */
record WheelCircle(double surveyed, double center, double radius, double ahead) {
  /** To each side of where it was surveyed (radians). */
  private static final double BESIDE = 0.02;

  private static final double ACROSS = 2 * FastMath.sin(BESIDE);
  private static final double DEEP = 2 * (1 - FastMath.cos(BESIDE));

  /** The circle of a corner whose wheel keeps a heading; null where the linkage ends so near. */
  static @Nullable WheelCircle of(Corner<Binary64> corner, Heading<Binary64> heading) {
    double surveyed = corner.surveyedAngle().getReal();
    double below = height(corner, surveyed - BESIDE, heading);
    double here = height(corner, surveyed, heading);
    double above = height(corner, surveyed + BESIDE, heading);
    // Height is here + along · sin x + across · (1 − cos x), for x on from where it was surveyed.
    double along = (above - below) / ACROSS;
    double across = (above + below - 2 * here) / DEEP;
    double radius = FastMath.hypot(along, across);
    return along > 0
        ? new WheelCircle(surveyed, here + across, radius, FastMath.atan2(-across, along))
        : null;
  }

  private static double height(Corner<Binary64> corner, double angle, Heading<Binary64> heading) {
    return corner.pose(new Binary64(angle), heading) instanceof Pose<Binary64> pose
        ? pose.wheelCenter().getZ().getReal()
        : Double.NaN;
  }

  /**
   * The lower arm's angle (radians above level) that brings the wheel's center to about a height;
   * NaN where the circle does not come to it.
   */
  double angle(double height) {
    return surveyed - ahead + FastMath.asin((height - center) / radius);
  }
}
