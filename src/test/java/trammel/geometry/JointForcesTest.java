package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Joint forces against the equilibrium of each part, by the laws of statics. */
class JointForcesTest {
  private static final Heading.Reset<Binary64> TOE = new Heading.Reset<>(new Binary64(0.1));

  /** Forces on a part, and their moments about the origin. */
  private static final class Sum {
    private Vector3D force = Vector3D.ZERO;
    private Vector3D moment = Vector3D.ZERO;

    Sum add(FieldVector3D<Binary64> at, Vector3D each) {
      force = force.add(each);
      moment = moment.add(at.toVector3D().crossProduct(each));
      return this;
    }

    void couple(Vector3D each) {
      moment = moment.add(each);
    }
  }

  @ParameterizedTest
  @EnumSource(Mount.Carrier.class)
  void everyPartStandsStill(Mount.Carrier carrier) {
    Random random = new Random(1126);
    for (int geometry = 0; geometry < 40; geometry++) {
      DoubleWishbone<Binary64> corner = DoubleWishbone.of(RandomLinkage.wishbones(random));
      HardPoints<Binary64> points = corner.points();
      FieldVector3D<Binary64> moving =
          RandomLinkage.in(new Vector3D(0, RandomLinkage.between(random, 500, 650), 350));
      Mount<Binary64> mount =
          Mount.of(corner, carrier, RandomLinkage.in(new Vector3D(20, 480, 800)), moving);
      Pose<Binary64> pose = pose(corner, RandomLinkage.between(random, -60, 60));
      JointForces forces = JointForces.of(corner, mount, pose, TOE);
      Vector3D lowerBall = forces.lowerBall();
      Vector3D upperBall = forces.upperBall();

      Sum lower =
          new Sum()
              .add(pose.lowerBall(), lowerBall)
              .add(points.at(HardPoint.LOWER_FRONT_PIVOT), forces.lowerArm().front())
              .add(points.at(HardPoint.LOWER_REAR_PIVOT), forces.lowerArm().rear());
      Sum upper =
          new Sum()
              .add(pose.upperBall(), upperBall.negate())
              .add(points.at(HardPoint.UPPER_FRONT_PIVOT), forces.upperArm().front())
              .add(points.at(HardPoint.UPPER_REAR_PIVOT), forces.upperArm().rear());
      Sum upright =
          new Sum()
              .add(pose.lowerBall(), lowerBall.negate())
              .add(pose.upperBall(), upperBall)
              .add(pose.wheelCenter(), new Vector3D(0, 0, forces.wheel()));
      upright.couple(pose.spindle().toVector3D().crossProduct(forces.heading()));
      Sum carrying =
          switch (carrier) {
            case LOWER_ARM -> lower;
            case UPPER_ARM -> upper;
            case UPRIGHT -> upright;
          };
      carrying.add(mount.moving(corner, pose), forces.mount());

      for (Sum part : new Sum[] {lower, upper, upright}) {
        assertThat(part.force.getNorm()).isCloseTo(0, within(1e-12));
        assertThat(part.moment.getNorm()).as("N mm").isCloseTo(0, within(1e-9));
      }
      assertThat(forces.wheel())
          .as("the motion ratio")
          .isCloseTo(MotionRatio.of(corner, mount).at(pose, TOE).getReal(), within(1e-9));
    }
  }

  private static Pose<Binary64> pose(DoubleWishbone<Binary64> corner, double travel) {
    if (WheelTravel.of(corner).at(new Binary64(travel), TOE) instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach");
  }
}
