package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** The pose told straight from the hard points is the one that the closed form comes to. */
class SurveyedPoseTest {
  private static final double CLOSE = 1e-9;

  @Test
  void itIsTheOneSolvedForTheSurveyedAngleAndTieRod() {
    Random random = new Random(20261126);
    for (int i = 0; i < 500; i++) {
      assertSolved(DoubleWishbone.of(RandomLinkage.wishbones(random)));
      assertSolved(Strut.of(RandomLinkage.strut(random)));
    }
  }

  private static void assertSolved(Corner<Binary64> corner) {
    Pose<Binary64> told = corner.asSurveyed();
    Posed<Binary64> solved =
        corner.pose(corner.surveyedAngle(), new Heading.ByTieRod<>(corner.tieRodInner()));
    assertThat(solved).isInstanceOf(Pose.class);
    Pose<Binary64> pose = (Pose<Binary64>) solved;
    assertThat(told.lowerAngle().getReal()).isEqualTo(pose.lowerAngle().getReal());
    assertClose(told.lowerBall(), pose.lowerBall());
    assertClose(told.upperBall(), pose.upperBall());
    assertClose(told.tieRodInner(), pose.tieRodInner());
    assertClose(told.tieRodOuter(), pose.tieRodOuter());
    assertClose(told.wheelCenter(), pose.wheelCenter());
    assertClose(told.kingpin(), pose.kingpin());
    assertClose(told.steeringArm(), pose.steeringArm());
    assertClose(told.spindle(), pose.spindle());
  }

  private static void assertClose(FieldVector3D<Binary64> told, FieldVector3D<Binary64> solved) {
    assertThat(told.toVector3D().distance(solved.toVector3D())).isLessThan(CLOSE);
  }

  /** A corner on shifted pivots was surveyed before anybody shifted them. */
  @Test
  void shiftsDoNotMoveIt() {
    Random random = new Random(11);
    for (HardPoint pivot :
        new HardPoint[] {HardPoint.LOWER_FRONT_PIVOT, HardPoint.UPPER_REAR_PIVOT}) {
      Corner<Binary64> corner = DoubleWishbone.of(RandomLinkage.wishbones(random));
      Pose<Binary64> shifted =
          corner.shifted(Map.of(pivot, RandomLinkage.in(new Vector3D(0, 5, 0)))).asSurveyed();
      assertThat(shifted.lowerAngle().getReal())
          .isCloseTo(corner.surveyedAngle().getReal(), within(1e-15));
      assertClose(shifted.wheelCenter(), corner.surveyedWheel());
      assertClose(shifted.kingpin(), corner.asSurveyed().kingpin());
    }
  }
}
