package trammel.derive;

import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import trammel.geometry.Corner;
import trammel.geometry.Heading;
import trammel.geometry.Motion;
import trammel.geometry.Pose;
import trammel.geometry.Stance;
import trammel.geometry.Stances;
import trammel.geometry.WheelTravel;

/**
 * A wheel over its whole travel and lock. Travel is told by the lower arm's angle, which a bump
 * stop holds whatever the steering does; steering by rack or pitman arm, as {@link
 * CornerModel#steered} has it.
 */
final class WheelSweep implements Stances {
  private final CornerModel model;
  private final Corner<Binary64> linkage;
  private final Binary64 tieRod;
  private final double outboard;
  private final Pose<Binary64> surveyed;

  /**
   * @param surveyed the pose that obstacles on the knuckle were surveyed in
   * @param tieRod its length once toe is set (mm)
   * @param outboard how far the tire's center plane stands outboard of the surveyed wheel's (mm)
   */
  WheelSweep(
      CornerModel model,
      Corner<Binary64> linkage,
      Pose<Binary64> surveyed,
      double tieRod,
      double outboard) {
    this.model = model;
    this.linkage = linkage;
    this.surveyed = surveyed;
    this.tieRod = new Binary64(tieRod);
    this.outboard = outboard;
  }

  /** The lower arm's angle (radians) at a travel (mm), straight ahead; NaN out of reach. */
  double angle(double travel) {
    return WheelTravel.of(linkage).at(new Binary64(travel), straight()) instanceof Pose<Binary64> p
        ? p.lowerAngle().getReal()
        : Double.NaN;
  }

  private Heading<Binary64> straight() {
    return steered(0);
  }

  private Heading<Binary64> steered(double steer) {
    return new Heading.ByTieRod<>(
        model.steered(linkage.tieRodInner(), new Binary64(steer)), tieRod);
  }

  @Override
  public Optional<Stance> at(double angle, double rack) {
    if (!(linkage.pose(new Binary64(angle), steered(rack)) instanceof Pose<Binary64> pose)) {
      return Optional.empty();
    }
    Vector3D axis = pose.spindle().toVector3D();
    return Optional.of(
        new Stance(
            pose.wheelCenter().toVector3D().add(outboard, axis), axis, knuckle(pose), arm(pose)));
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
