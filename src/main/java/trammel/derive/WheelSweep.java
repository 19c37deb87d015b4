package trammel.derive;

import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import trammel.geometry.Corner;
import trammel.geometry.Heading;
import trammel.geometry.Motion;
import trammel.geometry.Pose;
import trammel.geometry.Posed;
import trammel.geometry.Stance;
import trammel.geometry.Stances;
import trammel.geometry.SweepRange;

/**
 * A wheel over its whole travel and lock. Travel is told by the lower arm's angle, which a bump
 * stop holds whatever the steering does; steering by rack or pitman arm, as {@link
 * CornerModel#steered} has it.
 */
final class WheelSweep implements Stances {
  private final CornerModel model;
  private final CornerPoses corner;
  private final boolean asProposed;
  private final double bump;
  private final double droop;
  private final double outboard;
  private final Corner<Binary64> linkage;
  private final Pose<Binary64> surveyed;
  private final Memo<Double, Function<Heading<Binary64>, Posed<Binary64>>> arms = new Memo<>();
  private final Memo<Double, Heading<Binary64>> headings = new Memo<>();

  /**
   * @param asProposed or as surveyed
   * @param bump travel to the bump stop from where it was surveyed (mm)
   * @param droop travel down to where it hangs, as a positive number (mm)
   * @param outboard how far the tire's center plane stands outboard of the surveyed wheel's (mm)
   */
  WheelSweep(
      CornerModel model,
      CornerPoses corner,
      boolean asProposed,
      double bump,
      double droop,
      double outboard) {
    this.model = model;
    this.corner = corner;
    this.asProposed = asProposed;
    this.bump = bump;
    this.droop = droop;
    this.outboard = outboard;
    linkage = corner.plain(asProposed);
    surveyed = corner.plainSurveyed();
  }

  /**
   * From droop to bump, told by the lower arm's angle (radians), and from lock to lock; empty where
   * the linkage does not reach an end straight ahead.
   */
  Optional<SweepRange> range() {
    double lock = model.end(CornerModel.LOCK);
    return corner.plainAt(asProposed, -droop, 0) instanceof Pose<Binary64> low
            && corner.plainAt(asProposed, bump, 0) instanceof Pose<Binary64> high
        ? Optional.of(
            new SweepRange(low.lowerAngle().getReal(), high.lowerAngle().getReal(), -lock, lock))
        : Optional.empty();
  }

  @Override
  public Optional<Stance> at(double angle, double rack) {
    if (!(arms.get(angle, lower -> linkage.poses(new Binary64(lower)))
            .apply(headings.get(rack, steer -> corner.plainSteered(asProposed, steer)))
        instanceof Pose<Binary64> pose)) {
      return Optional.empty();
    }
    Vector3D axis = pose.spindle().toVector3D();
    return Optional.of(
        new Stance(
            pose.wheelCenter().toVector3D().add(outboard, axis),
            axis,
            () -> knuckle(pose),
            () -> arm(pose)));
  }

  private Motion knuckle(Pose<Binary64> pose) {
    return motion(
        surveyed.lowerBall(),
        surveyed.kingpin(),
        surveyed.steeringArm(),
        pose.lowerBall(),
        pose.kingpin(),
        pose.steeringArm());
  }

  /** Obstacles on an arm are on the lower one. */
  private Motion arm(Pose<Binary64> pose) {
    double turned = pose.lowerAngle().getReal() - surveyed.lowerAngle().getReal();
    return linkage.lowerArmTurned(turned);
  }

  private static Motion motion(
      FieldVector3D<Binary64> from,
      FieldVector3D<Binary64> first,
      FieldVector3D<Binary64> second,
      FieldVector3D<Binary64> to,
      FieldVector3D<Binary64> firstNow,
      FieldVector3D<Binary64> secondNow) {
    Rotation rotation =
        new Rotation(
            first.toVector3D(), second.toVector3D(), firstNow.toVector3D(), secondNow.toVector3D());
    return new Motion(rotation, to.toVector3D().subtract(rotation.applyTo(from.toVector3D())));
  }
}
