package trammel.geometry;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;

/**
 * Forces at the joints of a double wishbone that stands still under a unit force of its mount, with
 * the wheel held at its height and in its heading.
 *
 * <p>By the principle of virtual work they tell what would otherwise take poses with derivatives.
 * The force that holds the wheel is the mount's motion ratio. And what an error of a joint's place
 * does to the mount's length is the force there, times how far the error opens the joint: the part
 * on one side of it has turned since it was surveyed and has turned the error with it, the part on
 * the other side has turned it otherwise, or not at all.
 *
 * <p>Forces are told for each unit of the mount's own, so that they have no unit.
 *
 * @param parts where the parts stand
 * @param length of the mount (mm)
 * @param wheel force up on the wheel's center; the mount's motion ratio
 * @param heading force at the end of a unit spindle, along the way that the wheel heads; it acts as
 *     a couple (mm)
 * @param mount unit force on what carries the mount, the way it lengthens
 * @param lowerBall force on the lower arm
 * @param upperBall force on the upright
 * @param lowerArm forces on the lower arm at its pivots
 * @param upperArm forces on the upper arm at its pivots
 */
record JointForces(
    Parts parts,
    double length,
    double wheel,
    Vector3D heading,
    Vector3D mount,
    Vector3D lowerBall,
    Vector3D upperBall,
    Pivots lowerArm,
    Pivots upperArm) {

  /** An origin and three unit vectors that move with a part. */
  private record Axes(Vector3D origin, Vector3D first, Vector3D second, Vector3D third) {

    /** The axes of {@link Frame#arm}, in plain numbers. */
    static Axes ofArm(ArmCircle<Binary64> arm, Vector3D ball) {
      Vector3D center = arm.center().toVector3D();
      Vector3D reach = ball.subtract(center).scalarMultiply(1 / arm.radius().getReal());
      return of(center, arm.axis().toVector3D(), reach);
    }

    /** The axes by two unit vectors square to each other. */
    static Axes of(Vector3D origin, Vector3D first, Vector3D second) {
      return new Axes(origin, first, second, Products.cross(first, second));
    }

    /** The place that has these coordinates along the axes. */
    Vector3D out(Vector3D own) {
      return origin
          .add(Products.sum(own.getX(), first, own.getY(), second))
          .add(third.scalarMultiply(own.getZ()));
    }

    /** What a vector that has turned with the part was when the part stood elsewhere. */
    Vector3D back(Vector3D vector, Axes before) {
      double a = Products.dot(vector, first);
      double b = Products.dot(vector, second);
      double c = Products.dot(vector, third);
      return Products.sum(a, before.first, b, before.second).add(before.third.scalarMultiply(c));
    }
  }

  /** Where the parts stand. */
  record Parts(Axes lowerArm, Axes upperArm, Axes upright) {

    static Parts of(DoubleWishbone<Binary64> corner, Pose<Binary64> pose) {
      Vector3D lowerBall = pose.lowerBall().toVector3D();
      return new Parts(
          Axes.ofArm(corner.lower(), lowerBall),
          Axes.ofArm(corner.upper(), pose.upperBall().toVector3D()),
          Axes.of(lowerBall, pose.kingpin().toVector3D(), pose.steeringArm().toVector3D()));
    }

    private Axes of(Mount.Carrier carrier) {
      return switch (carrier) {
        case LOWER_ARM -> lowerArm;
        case UPPER_ARM -> upperArm;
        case UPRIGHT -> upright;
      };
    }
  }

  /** Forces on an arm at its pivots; what they share along its axis is all at the rear one. */
  record Pivots(Vector3D front, Vector3D rear) {}

  /** A force at a place. */
  private record Load(Vector3D at, Vector3D force) {

    Vector3D about(Vector3D point) {
      return Products.cross(at.subtract(point), force);
    }
  }

  /** What holds the upright against a moment about its lower ball joint. */
  private record Hold(Vector3D upperBall, double heading) {

    Hold plus(double times, Hold other) {
      return new Hold(
          Products.sum(1, upperBall, times, other.upperBall), heading + times * other.heading);
    }
  }

  /**
   * The forces in a pose.
   *
   * @param toe that the wheel is held at
   */
  static JointForces of(
      DoubleWishbone<Binary64> corner,
      Mount<Binary64> mount,
      Pose<Binary64> pose,
      Heading.Reset<Binary64> toe) {
    Parts parts = Parts.of(corner, pose);
    Vector3D moving = parts.of(mount.carrier()).out(mount.along().toVector3D());
    Vector3D along = moving.subtract(mount.body().toVector3D());
    double length = along.getNorm();
    Load load = new Load(moving, along.scalarMultiply(1 / length));
    Load none = new Load(moving, Vector3D.ZERO);
    Load onLower = mount.carrier() == Mount.Carrier.LOWER_ARM ? load : none;
    Load onUpper = mount.carrier() == Mount.Carrier.UPPER_ARM ? load : none;
    Load onUpright = mount.carrier() == Mount.Carrier.UPRIGHT ? load : none;
    Vector3D heading = new Vector3D(toe.turn().cos().getReal(), -toe.turn().sin().getReal(), 0);

    // The upper arm takes any force along its plane, and across it what turns it by the mount.
    Axes upper = parts.upperArm;
    Vector3D across =
        upper.third.scalarMultiply(
            Products.dot(onUpper.about(upper.origin), upper.first)
                / corner.upper().radius().getReal());
    Vector3D ball = pose.lowerBall().toVector3D();
    Vector3D upperBall = pose.upperBall().toVector3D();
    Vector3D kingpin = upperBall.subtract(ball);
    Upholding upholding =
        new Upholding(upper, kingpin, Products.cross(pose.spindle().toVector3D(), heading));
    Hold byWheel =
        upholding.against(new Load(pose.wheelCenter().toVector3D(), Vector3D.PLUS_K).about(ball));
    Hold byMount =
        upholding
            .against(Products.cross(kingpin, across).add(onUpright.about(ball)))
            .plus(1, new Hold(across, 0));

    // Nothing may turn the lower arm about its axis: so much holds the wheel.
    Axes lower = parts.lowerArm;
    Vector3D perWheel = byWheel.upperBall.add(Vector3D.PLUS_K);
    Vector3D byMountAlone = byMount.upperBall.add(onUpright.force);
    double turning =
        Products.dot(onLower.about(lower.origin), lower.first) / corner.lower().radius().getReal()
            + Products.dot(byMountAlone, lower.third);
    double wheel = -turning / Products.dot(perWheel, lower.third);
    Hold held = byMount.plus(wheel, byWheel);
    Vector3D lowerBall = Products.sum(1, byMountAlone, wheel, perWheel);
    return new JointForces(
        parts,
        length,
        wheel,
        heading.scalarMultiply(held.heading),
        load.force,
        lowerBall,
        held.upperBall,
        pivots(
            corner.points().at(HardPoint.LOWER_FRONT_PIVOT).toVector3D(),
            corner.points().at(HardPoint.LOWER_REAR_PIVOT).toVector3D(),
            new Load(ball, lowerBall),
            onLower),
        pivots(
            corner.points().at(HardPoint.UPPER_FRONT_PIVOT).toVector3D(),
            corner.points().at(HardPoint.UPPER_REAR_PIVOT).toVector3D(),
            new Load(upperBall, held.upperBall.negate()),
            onUpper));
  }

  /** The three things that can turn an upright about its lower ball joint. */
  private static final class Upholding {
    private final Axes upper;
    private final Vector3D alongAxis;
    private final Vector3D alongReach;
    private final Vector3D byHeading;
    private final double volume;

    Upholding(Axes upper, Vector3D kingpin, Vector3D couple) {
      this.upper = upper;
      Vector3D first = Products.cross(kingpin, upper.first);
      Vector3D second = Products.cross(kingpin, upper.second);
      // Each is square to two of the three moments, and so picks out the third.
      alongAxis = Products.cross(second, couple);
      alongReach = Products.cross(couple, first);
      byHeading = Products.cross(first, second);
      volume = Products.dot(first, alongAxis);
    }

    /** What balances a moment. */
    Hold against(Vector3D moment) {
      return new Hold(
          Products.sum(
              -Products.dot(moment, alongAxis) / volume,
              upper.first,
              -Products.dot(moment, alongReach) / volume,
              upper.second),
          -Products.dot(moment, byHeading) / volume);
    }
  }

  private static Pivots pivots(Vector3D front, Vector3D rear, Load ball, Load mount) {
    Vector3D along = front.subtract(rear);
    Vector3D moment = ball.about(rear).add(mount.about(rear));
    Vector3D atFront = Products.cross(along, moment).scalarMultiply(1 / Products.dot(along, along));
    return new Pivots(atFront, ball.force.add(mount.force).add(atFront).negate());
  }

  /**
   * How much the mount's length grows for each millimeter that a joint was surveyed amiss, with the
   * wheel as high above where it was surveyed, and in the same heading.
   *
   * @param surveyed where the parts stood when they were surveyed
   * @return one for each of {@link ByPlace#JOINTS}
   */
  List<Vector3D> byJoint(Parts surveyed) {
    return List.of(
        upperArm(upperArm.front, surveyed).subtract(upperArm.front),
        upperArm(upperArm.rear, surveyed).subtract(upperArm.rear),
        upright(upperBall, surveyed).subtract(upperArm(upperBall, surveyed)),
        lowerArm(lowerArm.front, surveyed).subtract(lowerArm.front),
        lowerArm(lowerArm.rear, surveyed).subtract(lowerArm.rear),
        lowerArm(lowerBall, surveyed).subtract(upright(lowerBall, surveyed)),
        Products.sum(wheel, upright(Vector3D.PLUS_K, surveyed), -wheel, Vector3D.PLUS_K));
  }

  /** The same by the place of the mount's moving end. */
  Vector3D byMoving(Mount.Carrier carrier, Parts surveyed) {
    return parts.of(carrier).back(mount, surveyed.of(carrier));
  }

  /** The same by the end of the unit spindle. */
  Vector3D bySpindle(Parts surveyed) {
    return upright(heading, surveyed);
  }

  private Vector3D lowerArm(Vector3D force, Parts surveyed) {
    return parts.lowerArm.back(force, surveyed.lowerArm);
  }

  private Vector3D upperArm(Vector3D force, Parts surveyed) {
    return parts.upperArm.back(force, surveyed.upperArm);
  }

  private Vector3D upright(Vector3D force, Parts surveyed) {
    return parts.upright.back(force, surveyed.upright);
  }
}
