package trammel.geometry;

import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.FieldSinCos;

/**
 * Forces at the joints of a double wishbone that stands still under a unit force of its mount, with
 * the wheel held at its height and in its heading.
 *
 * <p>By the principle of virtual work they tell what else would take poses with derivatives. The
 * force that holds the wheel up is the mount's motion ratio. And what an error of a joint's place
 * does to the mount's length is the force there, times how far the error opens the joint: the part
 * on one side of it has turned since it was surveyed and has turned the error with it, the part on
 * the other side has not, or otherwise.
 *
 * @param frames of the parts in this pose
 * @param wheel force up on the wheel's center; the mount's motion ratio
 * @param heading force at the end of a unit spindle along the way it is held; it acts as a couple
 * @param mount unit force on what the mount is fixed to, the way it lengthens
 * @param lowerBall force on the lower arm
 * @param upperBall force on the upright
 * @param lowerArm forces on the lower arm at its pivots
 * @param upperArm forces on the upper arm at its pivots
 */
record JointForces<T extends CalculusFieldElement<T>>(
    Frames<T> frames,
    T wheel,
    FieldVector3D<T> heading,
    FieldVector3D<T> mount,
    FieldVector3D<T> lowerBall,
    FieldVector3D<T> upperBall,
    Pivots<T> lowerArm,
    Pivots<T> upperArm) {

  /** The frames of what moves. */
  record Frames<T extends CalculusFieldElement<T>>(
      Frame<T> lowerArm, Frame<T> upperArm, Frame<T> upright) {

    /** Of a corner as it was surveyed. */
    static <T extends CalculusFieldElement<T>> Frames<T> surveyed(DoubleWishbone<T> corner) {
      return of(corner, corner.asSurveyed());
    }

    static <T extends CalculusFieldElement<T>> Frames<T> of(
        DoubleWishbone<T> corner, Pose<T> pose) {
      return new Frames<>(
          Frame.arm(corner.lower(), pose.lowerBall()), corner.upperArm(pose), corner.upright(pose));
    }

    Frame<T> of(Mount.Carrier carrier) {
      return switch (carrier) {
        case LOWER_ARM -> lowerArm;
        case UPPER_ARM -> upperArm;
        case UPRIGHT -> upright;
      };
    }
  }

  /** Forces on an arm at its pivots; along its axis what they share is all at the rear one. */
  record Pivots<T extends CalculusFieldElement<T>>(FieldVector3D<T> front, FieldVector3D<T> rear) {}

  /** A force at a place. */
  private record Load<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> at, FieldVector3D<T> force) {

    FieldVector3D<T> about(FieldVector3D<T> point) {
      return Products.cross(at.subtract(point), force);
    }
  }

  /** What holds the upright against a moment about its lower ball joint. */
  private record Held<T extends CalculusFieldElement<T>>(FieldVector3D<T> upperBall, T heading) {

    Held<T> plus(T times, Held<T> other) {
      return new Held<>(
          upperBall.add(Products.times(times, other.upperBall)),
          heading.add(times.multiply(other.heading)));
    }
  }

  /**
   * The forces in a pose.
   *
   * @param toe that the wheel is held at
   */
  static <T extends CalculusFieldElement<T>> JointForces<T> of(
      DoubleWishbone<T> corner, Mount<T> mount, Pose<T> pose, Heading.Reset<T> toe) {
    T zero = corner.field().getZero();
    T one = corner.field().getOne();
    FieldVector3D<T> nothing = new FieldVector3D<>(zero, zero, zero);
    FieldVector3D<T> up = new FieldVector3D<>(zero, zero, one);
    FieldSinCos<T> turn = toe.turn();
    FieldVector3D<T> heading = new FieldVector3D<>(turn.cos(), turn.sin().negate(), zero);
    Frames<T> frames = Frames.of(corner, pose);
    FieldVector3D<T> moving = frames.of(mount.carrier()).out(mount.along());
    FieldVector3D<T> length = moving.subtract(mount.body());
    FieldVector3D<T> unit = Products.times(Products.length(length).reciprocal(), length);
    Load<T> none = new Load<>(moving, nothing);
    Load<T> load = new Load<>(moving, unit);
    Load<T> onUpper = mount.carrier() == Mount.Carrier.UPPER_ARM ? load : none;
    Load<T> onUpright = mount.carrier() == Mount.Carrier.UPRIGHT ? load : none;
    Load<T> onLower = mount.carrier() == Mount.Carrier.LOWER_ARM ? load : none;

    // The upper arm takes any force along its plane, and across it what turns the mount's load.
    Frame<T> upper = frames.upperArm;
    FieldVector3D<T> across =
        Products.times(
            Products.dot(onUpper.about(upper.origin()), upper.first())
                .divide(corner.upper().radius()),
            upper.third());
    FieldVector3D<T> ball = pose.lowerBall();
    FieldVector3D<T> kingpin = pose.upperBall().subtract(ball);
    Upholding<T> upholding =
        new Upholding<>(upper, kingpin, Products.cross(pose.spindle(), heading));
    Held<T> byWheel = upholding.against(new Load<>(pose.wheelCenter(), up).about(ball));
    Held<T> byMount =
        upholding
            .against(Products.cross(kingpin, across).add(onUpright.about(ball)))
            .plus(one, new Held<>(across, zero));

    // Nothing turns the lower arm about its axis: so much lifts the wheel.
    Frame<T> lower = frames.lowerArm;
    FieldVector3D<T> perWheel = byWheel.upperBall.add(up);
    FieldVector3D<T> before = byMount.upperBall.add(onUpright.force);
    T turning =
        Products.dot(onLower.about(lower.origin()), lower.first())
            .divide(corner.lower().radius())
            .add(Products.dot(before, lower.third()));
    T wheel = turning.divide(Products.dot(perWheel, lower.third())).negate();
    Held<T> held = byMount.plus(wheel, byWheel);
    FieldVector3D<T> lowerBall = before.add(Products.times(wheel, perWheel));
    return new JointForces<>(
        frames,
        wheel,
        Products.times(held.heading, heading),
        unit,
        lowerBall,
        held.upperBall,
        pivots(
            corner,
            HardPoint.LOWER_FRONT_PIVOT,
            HardPoint.LOWER_REAR_PIVOT,
            new Load<>(ball, lowerBall),
            onLower),
        pivots(
            corner,
            HardPoint.UPPER_FRONT_PIVOT,
            HardPoint.UPPER_REAR_PIVOT,
            new Load<>(pose.upperBall(), held.upperBall.negate()),
            onUpper));
  }

  /** The three things that can turn an upright about its lower ball joint. */
  private static final class Upholding<T extends CalculusFieldElement<T>> {
    private final Frame<T> upper;
    private final FieldVector3D<T> alongAxis;
    private final FieldVector3D<T> alongReach;
    private final FieldVector3D<T> byHeading;
    private final T perVolume;

    Upholding(Frame<T> upper, FieldVector3D<T> kingpin, FieldVector3D<T> couple) {
      this.upper = upper;
      FieldVector3D<T> first = Products.cross(kingpin, upper.first());
      FieldVector3D<T> second = Products.cross(kingpin, upper.second());
      // Reciprocal vectors: each is square to two of the moments and tells the third.
      alongAxis = Products.cross(second, couple);
      alongReach = Products.cross(couple, first);
      byHeading = Products.cross(first, second);
      perVolume = Products.dot(first, alongAxis).reciprocal().negate();
    }

    /** What balances a moment. */
    Held<T> against(FieldVector3D<T> moment) {
      FieldVector3D<T> scaled = Products.times(perVolume, moment);
      return new Held<>(
          Products.sum(
              Products.dot(scaled, alongAxis),
              upper.first(),
              Products.dot(scaled, alongReach),
              upper.second()),
          Products.dot(scaled, byHeading));
    }
  }

  private static <T extends CalculusFieldElement<T>> Pivots<T> pivots(
      DoubleWishbone<T> corner, HardPoint front, HardPoint rear, Load<T> ball, Load<T> mount) {
    FieldVector3D<T> at = corner.points().at(rear);
    FieldVector3D<T> along = corner.points().at(front).subtract(at);
    FieldVector3D<T> moment = ball.about(at).add(mount.about(at));
    FieldVector3D<T> atFront =
        Products.times(Products.square(along).reciprocal(), Products.cross(along, moment));
    return new Pivots<>(atFront, ball.force.add(mount.force).add(atFront).negate());
  }

  /**
   * How much the mount's length grows for each millimeter that a joint was surveyed amiss, with the
   * wheel as high above where it was surveyed, and in the same heading.
   *
   * @param surveyed the frames of the parts as they were surveyed
   */
  Map<HardPoint, FieldVector3D<T>> byJoint(Frames<T> surveyed) {
    Turned<T> lower = new Turned<>(surveyed.lowerArm, frames.lowerArm);
    Turned<T> upper = new Turned<>(surveyed.upperArm, frames.upperArm);
    Turned<T> upright = new Turned<>(surveyed.upright, frames.upright);
    FieldVector3D<T> up =
        new FieldVector3D<>(wheel.getField().getZero(), wheel.getField().getZero(), wheel);
    Map<HardPoint, FieldVector3D<T>> by = new EnumMap<>(HardPoint.class);
    by.put(HardPoint.LOWER_FRONT_PIVOT, lower.back(lowerArm.front).subtract(lowerArm.front));
    by.put(HardPoint.LOWER_REAR_PIVOT, lower.back(lowerArm.rear).subtract(lowerArm.rear));
    by.put(HardPoint.LOWER_BALL_JOINT, lower.back(lowerBall).subtract(upright.back(lowerBall)));
    by.put(HardPoint.UPPER_FRONT_PIVOT, upper.back(upperArm.front).subtract(upperArm.front));
    by.put(HardPoint.UPPER_REAR_PIVOT, upper.back(upperArm.rear).subtract(upperArm.rear));
    by.put(HardPoint.UPPER_BALL_JOINT, upright.back(upperBall).subtract(upper.back(upperBall)));
    by.put(HardPoint.WHEEL_CENTER, upright.back(up).subtract(up));
    return by;
  }

  /** The same by the place of the mount's moving end. */
  FieldVector3D<T> byMoving(Frames<T> surveyed, Mount.Carrier carrier) {
    return new Turned<>(surveyed.of(carrier), frames.of(carrier)).back(mount);
  }

  /** The same by the way the unit spindle was surveyed to point. */
  FieldVector3D<T> bySpindle(Frames<T> surveyed) {
    return new Turned<>(surveyed.upright, frames.upright).back(heading);
  }

  /** How a part stands, from how it stood. */
  private record Turned<T extends CalculusFieldElement<T>>(Frame<T> before, Frame<T> now) {

    /** What a vector that has turned with the part was before. */
    FieldVector3D<T> back(FieldVector3D<T> vector) {
      return Products.composed(
          Products.components(vector, now.first(), now.second(), now.third()),
          before.first(),
          before.second(),
          before.third());
    }
  }
}
