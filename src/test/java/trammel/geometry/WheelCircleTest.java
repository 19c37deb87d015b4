package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** The wheel's circle against poses in closed form. */
class WheelCircleTest {
  private static final Heading<Binary64> STRAIGHT = new Heading.Reset<>(new Binary64(0));

  /**
   * A circle that fits a course at three places leaves an error of the third order: none at the
   * places, the outer of which lie some 8 mm up and down (1/mm²).
   */
  private static final double THIRD_ORDER = 1e-6;

  /** Two arms alike, one above the other: an upright between them keeps upright. */
  private static DoubleWishbone<Binary64> parallelogram() {
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    points.put(HardPoint.UPPER_FRONT_PIVOT, new Vector3D(150, 320, 580));
    points.put(HardPoint.UPPER_REAR_PIVOT, new Vector3D(-150, 320, 580));
    points.put(HardPoint.UPPER_BALL_JOINT, new Vector3D(0, 720, 610));
    points.put(HardPoint.LOWER_FRONT_PIVOT, new Vector3D(150, 320, 330));
    points.put(HardPoint.LOWER_REAR_PIVOT, new Vector3D(-150, 320, 330));
    points.put(HardPoint.LOWER_BALL_JOINT, new Vector3D(0, 720, 360));
    points.put(HardPoint.TIE_ROD_INNER, new Vector3D(-150, 380, 400));
    points.put(HardPoint.TIE_ROD_OUTER, new Vector3D(-145, 740, 390));
    points.put(HardPoint.WHEEL_CENTER, new Vector3D(0, 820, 400));
    return DoubleWishbone.of(HardPoints.of(points, 0, 0));
  }

  private static WheelCircle circle(DoubleWishbone<Binary64> corner) {
    return Objects.requireNonNull(WheelCircle.of(corner, STRAIGHT));
  }

  private static double height(DoubleWishbone<Binary64> corner, double angle) {
    return ((Pose<Binary64>) corner.pose(new Binary64(angle), STRAIGHT))
        .wheelCenter()
        .getZ()
        .getReal();
  }

  @Test
  void betweenTwoArmsAlikeTheWheelGoesRoundTheArmsOwnCircle() {
    DoubleWishbone<Binary64> corner = parallelogram();
    WheelCircle circle = circle(corner);
    double arm = Math.hypot(400, 30);
    assertThat(circle.radius()).isCloseTo(arm, within(1e-6));
    assertThat(circle.center()).isCloseTo(400 - 30, within(1e-6));
    for (double rise : new double[] {-250, -90, -20, 0, 35, 200}) {
      assertThat(circle.angle(400 + rise))
          .as("rise %s", rise)
          .isCloseTo(Math.asin((30 + rise) / arm), within(1e-8));
    }
    assertThat(circle.angle(400 + 500)).isNaN();
  }

  @Test
  void nearWhereItWasSurveyedAnyWheelAboutKeepsToItsCircle() {
    Random random = new Random(20261127);
    int told = 0;
    for (int geometry = 0; geometry < 200; geometry++) {
      DoubleWishbone<Binary64> corner = DoubleWishbone.of(RandomLinkage.wishbones(random));
      WheelCircle circle = WheelCircle.of(corner, STRAIGHT);
      if (circle == null) {
        continue;
      }
      told++;
      double surveyed = height(corner, corner.surveyedAngle().getReal());
      for (double rise : new double[] {-30, -10, -1, 1, 10, 30}) {
        assertThat(height(corner, circle.angle(surveyed + rise)))
            .as("geometry %s, rise %s", geometry, rise)
            .isCloseTo(surveyed + rise, within(THIRD_ORDER * Math.abs(rise) * (rise * rise + 80)));
      }
    }
    assertThat(told).isGreaterThan(190);
  }
}
