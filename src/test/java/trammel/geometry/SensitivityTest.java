package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.junit.jupiter.api.Test;

/**
 * Changes of arms and cams against their simple forms (own derivation): a ball joint moved by a
 * turns an axis of height h by a/h. The exact ones are some percent smaller, since the upright
 * leans and follows its arms: 1.36 for 1.42, 0.84 for 0.885, 1.01 for 1.06 in the worked examples.
 */
class SensitivityTest {
  private static final HardPoints<Binary64> POINTS =
      PublishedCorner.of("truck-wishbones.csv", "point,front").hardPoints(0, 0);

  private static final double HEIGHT =
      POINTS
          .at(HardPoint.UPPER_BALL_JOINT)
          .subtract(POINTS.at(HardPoint.LOWER_BALL_JOINT))
          .getZ()
          .getReal();

  private static FieldVector3D<Binary64> shift(double fore, double out) {
    return new FieldVector3D<>(Binary64Field.getInstance(), new Vector3D(fore, out, 0));
  }

  private static Pose<Binary64> pose(Map<HardPoint, FieldVector3D<Binary64>> shifts) {
    WheelTravel<Binary64> travel = WheelTravel.of(DoubleWishbone.of(POINTS, shifts));
    Heading<Binary64> reset = new Heading.Reset<>(new Binary64(0));
    if (travel.at(new Binary64(0), reset) instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach");
  }

  private static double casterBy(Map<HardPoint, FieldVector3D<Binary64>> shifts) {
    return pose(shifts).caster().subtract(pose(Map.of()).caster()).getReal();
  }

  private static double camberBy(Map<HardPoint, FieldVector3D<Binary64>> shifts) {
    return pose(shifts).camber().subtract(pose(Map.of()).camber()).getReal();
  }

  @Test
  void anUpperBallJointFartherRearAddsCaster() {
    assertThat(casterBy(Map.of(HardPoint.UPPER_BALL_JOINT, shift(-8, 0))))
        .isCloseTo(Math.toDegrees(8 / HEIGHT), withinPercentage(6));
  }

  @Test
  void anUpperBallJointFartherInLeansTheTopInward() {
    assertThat(camberBy(Map.of(HardPoint.UPPER_BALL_JOINT, shift(0, -5))))
        .isCloseTo(-Math.toDegrees(5 / HEIGHT), withinPercentage(6));
  }

  @Test
  void lowerPivotsBothFartherOutLeanTheTopInward() {
    assertThat(
            camberBy(
                Map.of(
                    HardPoint.LOWER_FRONT_PIVOT, shift(0, 6),
                    HardPoint.LOWER_REAR_PIVOT, shift(0, 6))))
        .isCloseTo(-Math.toDegrees(6 / HEIGHT), withinPercentage(6));
  }

  /**
   * Cams turned opposite ways by e over a spacing s move the ball joint by 2eL/s: front one inward,
   * forward.
   */
  @Test
  void lowerCamsTurnedOppositeWaysChangeCaster() {
    double length = 787 - 307;
    double spacing = 446;
    assertThat(
            casterBy(
                Map.of(
                    HardPoint.LOWER_FRONT_PIVOT, shift(0, -6),
                    HardPoint.LOWER_REAR_PIVOT, shift(0, 6))))
        .isCloseTo(Math.toDegrees(2 * 6 * length / spacing / HEIGHT), withinPercentage(6));
  }
}
