package trammel.geometry;

import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * How long a mount on a double wishbone is, and its motion ratio, by how far the wheel's center has
 * risen against the body; and what an error of any surveyed point makes of both.
 *
 * <p>The wheel keeps its toe at every height, as after an alignment, so that its tie rod has no
 * say.
 */
public final class MountPath {
  /**
   * How far the lower arm is turned on to see what more travel makes of a mount (radians). The
   * quotient's error goes into slopes alone: some parts in 100,000 of all of them together, and
   * more in the last tenth of a millimeter before the wheel turns back.
   */
  private static final double TURN = 1e-5;

  /**
   * How near to a travel a pose is looked for (mm): a place is carried on from there along its
   * slopes, which leaves less than a billionth of a millimeter.
   */
  private static final double NEAR = 0.01;

  /** How often the wheel's circle is asked for such a pose before it is searched for. */
  private static final int TRIES = 3;

  private final DoubleWishbone<Binary64> corner;
  private final Mount<Binary64> mount;
  private final Heading.Reset<Binary64> toe;
  private final WheelTravel<Binary64> travel;
  private final @Nullable WheelCircle circle;
  private final double surveyedHeight;
  private final JointForces.Parts surveyed;

  /** Slopes of {@link Upright#spindle} by a degree of camber, and of toe, as surveyed. */
  private final Vector3D spindleByCamber;

  private final Vector3D spindleByToe;

  private MountPath(
      DoubleWishbone<Binary64> corner, Mount<Binary64> mount, Heading.Reset<Binary64> toe) {
    this.corner = corner;
    this.mount = mount;
    this.toe = toe;
    this.travel = WheelTravel.of(corner);
    this.circle = WheelCircle.of(corner, toe);
    this.surveyedHeight = corner.surveyedWheel().getZ().getReal();
    this.surveyed = JointForces.Parts.of(corner, corner.asSurveyed());
    double camber = FastMath.toRadians(corner.points().camber().getReal());
    double heading = FastMath.toRadians(corner.points().toe().getReal());
    this.spindleByCamber =
        perDegree(
            -FastMath.sin(heading) * FastMath.sin(camber),
            -FastMath.cos(heading) * FastMath.sin(camber),
            -FastMath.cos(camber));
    this.spindleByToe =
        perDegree(
            FastMath.cos(heading) * FastMath.cos(camber),
            -FastMath.sin(heading) * FastMath.cos(camber),
            0);
  }

  private static Vector3D perDegree(double fore, double out, double up) {
    return new Vector3D(FastMath.toRadians(1), new Vector3D(fore, out, up));
  }

  /**
   * The path of a mount.
   *
   * @param corner as surveyed
   * @param toe that the wheel is set to (degrees), positive toward the inside
   * @throws IllegalArgumentException if the corner has anything shifted
   */
  public static MountPath of(DoubleWishbone<Binary64> corner, Mount<Binary64> mount, double toe) {
    corner.mustBeAsSurveyed();
    return new MountPath(corner, mount, new Heading.Reset<>(new Binary64(toe)));
  }

  /**
   * A mount at a travel.
   *
   * @param length of the mount (mm)
   * @param ratio how far it shortens for each millimeter that the wheel rises
   * @param ratioPerRise what the ratio grows by for each such millimeter (1/mm)
   * @param lengthBy what the length grows by with the places surveyed, at the same travel (mm/mm
   *     and mm/degree)
   * @param ratioBy what the ratio grows by with them (1/mm and 1/degree)
   */
  public record Place(
      double length, double ratio, double ratioPerRise, ByPlace lengthBy, ByPlace ratioBy) {}

  /** What a pose tells. */
  private record Point(double height, double length, double ratio, ByPlace lengthBy) {}

  /**
   * Where the mount is; nothing where the linkage does not reach that travel, or ends there in
   * bump.
   *
   * @param rise of the wheel's center from where it was surveyed (mm)
   */
  public Optional<Place> at(double rise) {
    Pose<Binary64> pose = near(rise);
    if (pose == null
        || !(corner.pose(pose.lowerAngle().add(TURN), toe) instanceof Pose<Binary64> turned)) {
      return Optional.empty();
    }
    Point here = point(pose);
    Point above = point(turned);
    double perRise = 1 / (above.height - here.height);
    double left = surveyedHeight + rise - here.height;
    double ratioPerRise = (above.ratio - here.ratio) * perRise;
    // The ratio is what the length loses by rising.
    ByPlace ratioBy = here.lengthBy.change(above.lengthBy, -perRise);
    // Where the wheel no longer rises as the arm turns, nothing finite holds it.
    return above.height > here.height
        ? Optional.of(
            new Place(
                here.length - left * (here.ratio + left / 2 * ratioPerRise),
                here.ratio + left * ratioPerRise,
                ratioPerRise,
                here.lengthBy.plus(-left, ratioBy),
                ratioBy))
        : Optional.empty();
  }

  /** A pose near a travel; null where the linkage does not reach that. */
  private @Nullable Pose<Binary64> near(double rise) {
    double aim = surveyedHeight + rise;
    for (int tries = 0; circle != null && tries < TRIES; tries++) {
      double angle = circle.angle(aim);
      // Farther out, and where the circle has no such height, the search watches its way.
      if (!(FastMath.abs(angle - circle.surveyed()) < WheelTravel.FAR)
          || !(corner.pose(new Binary64(angle), toe) instanceof Pose<Binary64> pose)) {
        break;
      }
      double off = pose.wheelCenter().getZ().getReal() - surveyedHeight - rise;
      if (FastMath.abs(off) < NEAR) {
        return pose;
      }
      aim -= off;
    }
    return travel.at(new Binary64(rise), toe) instanceof Pose<Binary64> pose ? pose : null;
  }

  private Point point(Pose<Binary64> pose) {
    JointForces forces = JointForces.of(corner, mount, pose, toe);
    Vector3D spindle = forces.bySpindle(surveyed);
    return new Point(
        pose.wheelCenter().getZ().getReal(),
        forces.length(),
        forces.wheel(),
        ByPlace.of(
            forces.byJoint(surveyed),
            forces.mount().negate(),
            forces.byMoving(mount.carrier(), surveyed),
            Products.dot(spindle, spindleByCamber),
            Products.dot(spindle, spindleByToe)));
  }
}
