package trammel.geometry;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;

/**
 * How long a mount on a double wishbone is, and its motion ratio, by how far the wheel's center has
 * risen against the body; and what an error of any surveyed point makes of both.
 *
 * <p>The wheel keeps its toe at every height, as after an alignment, so that its tie rod has no
 * say.
 */
public final class MountPath {
  /** The joints that have a say. */
  public static final List<HardPoint> JOINTS =
      HardPoint.ofWishbones().stream()
          .filter(joint -> joint != HardPoint.TIE_ROD_INNER && joint != HardPoint.TIE_ROD_OUTER)
          .toList();

  /**
   * How far the lower arm is turned on to see what more travel makes of a mount (radians). The
   * quotient's error goes into slopes alone: some parts in 100,000 of all of them together, and
   * more in the last tenth of a millimeter before the wheel turns back.
   */
  private static final double TURN = 1e-5;

  private final DoubleWishbone<Binary64> corner;
  private final Mount<Binary64> mount;
  private final Heading.Reset<Binary64> toe;
  private final WheelTravel<Binary64> travel;
  private final JointForces.Parts surveyed;

  /** What a degree of camber, and of toe, turns the spindle's end by, as surveyed. */
  private final Vector3D spindleByCamber;

  private final Vector3D spindleByToe;

  private MountPath(
      DoubleWishbone<Binary64> corner, Mount<Binary64> mount, Heading.Reset<Binary64> toe) {
    this.corner = corner;
    this.mount = mount;
    this.toe = toe;
    this.travel = WheelTravel.of(corner).only(toe);
    this.surveyed = JointForces.Parts.of(corner, corner.asSurveyed());
    FieldVector3D<Gradient> spindle =
        Upright.spindle(
            Gradient.variable(2, 0, corner.points().camber().getReal()),
            Gradient.variable(2, 1, corner.points().toe().getReal()));
    this.spindleByCamber = slope(spindle, 0);
    this.spindleByToe = slope(spindle, 1);
  }

  private static Vector3D slope(FieldVector3D<Gradient> vector, int by) {
    return new Vector3D(
        vector.getX().getPartialDerivative(by),
        vector.getY().getPartialDerivative(by),
        vector.getZ().getPartialDerivative(by));
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

  /**
   * What a number grows by with the places it was surveyed from: for each millimeter fore, out and
   * up, and for each degree.
   *
   * @param joints one for each of {@link #JOINTS}
   * @param body with the mount's end on the body
   * @param moving with its other end
   * @param camber with the wheel's camber as surveyed
   * @param toe with its toe as surveyed
   */
  public record ByPlace(
      Map<HardPoint, Vector3D> joints, Vector3D body, Vector3D moving, double camber, double toe) {

    /** What it changes by on the way to another, times a number. */
    private ByPlace change(ByPlace to, double times) {
      Map<HardPoint, Vector3D> change = new EnumMap<>(HardPoint.class);
      for (HardPoint joint : JOINTS) {
        change.put(joint, change(joints.get(joint), to.joints.get(joint), times));
      }
      return new ByPlace(
          change,
          change(body, to.body, times),
          change(moving, to.moving, times),
          times * (to.camber - camber),
          times * (to.toe - toe));
    }

    private static Vector3D change(Vector3D from, Vector3D to, double times) {
      return Products.sum(times, to, -times, from);
    }
  }

  /** What a pose tells. */
  private record Point(double height, double length, double ratio, ByPlace lengthBy) {}

  /**
   * Where the mount is; nothing where the linkage does not reach that travel, or ends there in
   * bump.
   *
   * @param rise of the wheel's center from where it was surveyed (mm)
   */
  public Optional<Place> at(double rise) {
    if (!(travel.at(new Binary64(rise), toe) instanceof Pose<Binary64> pose)
        || !(corner.pose(pose.lowerAngle().add(TURN), toe) instanceof Pose<Binary64> turned)) {
      return Optional.empty();
    }
    Point here = point(pose);
    Point above = point(turned);
    double perRise = 1 / (above.height - here.height);
    // Where the wheel no longer rises as the arm turns, nothing finite holds it.
    return above.height > here.height
        ? Optional.of(
            new Place(
                here.length,
                here.ratio,
                (above.ratio - here.ratio) * perRise,
                here.lengthBy,
                // The ratio is what the length loses by rising.
                here.lengthBy.change(above.lengthBy, -perRise)))
        : Optional.empty();
  }

  private Point point(Pose<Binary64> pose) {
    JointForces forces = JointForces.of(corner, mount, pose, toe);
    Vector3D spindle = forces.bySpindle(surveyed);
    return new Point(
        pose.wheelCenter().getZ().getReal(),
        forces.length(),
        forces.wheel(),
        new ByPlace(
            forces.byJoint(surveyed),
            forces.mount().negate(),
            forces.byMoving(mount.carrier(), surveyed),
            Products.dot(spindle, spindleByCamber),
            Products.dot(spindle, spindleByToe)));
  }
}
