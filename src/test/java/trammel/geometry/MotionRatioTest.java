package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.geometry.Mount.Carrier;

class MotionRatioTest {
  private static final double STEP = 0.01;

  private static Pose<Binary64> at(
      Corner<Binary64> corner, double travel, Heading<Binary64> heading) {
    if (WheelTravel.of(corner).at(new Binary64(travel), heading) instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach at " + travel);
  }

  /** Shortening over rise, from lengths a little below and a little above. */
  private static double byDifference(
      Corner<Binary64> corner, Mount<Binary64> mount, double travel, Heading<Binary64> heading) {
    double below = mount.length(corner, at(corner, travel - STEP, heading)).getReal();
    double above = mount.length(corner, at(corner, travel + STEP, heading)).getReal();
    return (below - above) / (2 * STEP);
  }

  private static void assertExact(
      Corner<Binary64> corner, Mount<Binary64> mount, double travel, Heading<Binary64> heading) {
    double ratio = MotionRatio.of(corner, mount).at(at(corner, travel, heading), heading).getReal();
    assertThat(ratio).isCloseTo(byDifference(corner, mount, travel, heading), within(1e-7));
  }

  /** The single-seater's push-rod and the trucks' springs, by differences of their own lengths. */
  @ParameterizedTest
  @ValueSource(doubles = {-30, -10, 0, 20})
  void publishedCornersHaveTheSlopeOfTheirLengths(double travel) {
    PublishedCorner racer = PublishedCorner.of("single-seater-rear-axle.csv", "point");
    assertSlope(
        DoubleWishbone.of(racer.hardPoints(-5, 0)),
        racer.at("PUSH_ROD_ON_ROCKER"),
        racer.at("PUSH_ROD_ON_ARM"),
        travel);
    for (String axle : new String[] {"front", "rear"}) {
      PublishedCorner truck = PublishedCorner.of("truck-wishbones.csv", "point," + axle);
      assertSlope(
          DoubleWishbone.of(truck.hardPoints(0, 0)),
          truck.at("SPRING_ON_BODY"),
          truck.at("SPRING_ON_ARM"),
          travel);
    }
  }

  private static void assertSlope(
      DoubleWishbone<Binary64> corner,
      FieldVector3D<Binary64> body,
      FieldVector3D<Binary64> moving,
      double travel) {
    Heading<Binary64> held = new Heading.ByTieRod<>(corner.tieRodInner());
    Mount<Binary64> mount = Mount.of(corner, Carrier.LOWER_ARM, body, moving);
    assertExact(corner, mount, travel, held);
    assertExact(corner, mount, travel, new Heading.Reset<>(new Binary64(0.1)));
  }

  @ParameterizedTest
  @EnumSource(Carrier.class)
  void everyCarrierHasTheSlopeOfItsLengths(Carrier carrier) {
    Random random = new Random(7);
    for (int i = 0; i < 100; i++) {
      DoubleWishbone<Binary64> corner = DoubleWishbone.of(RandomLinkage.wishbones(random));
      FieldVector3D<Binary64> inner = corner.tieRodInner();
      Mount<Binary64> mount =
          Mount.of(
              corner,
              carrier,
              RandomLinkage.in(new Vector3D(20, 480, 800)),
              RandomLinkage.in(new Vector3D(0, RandomLinkage.between(random, 500, 650), 350)));
      double travel = RandomLinkage.between(random, -60, 60);
      assertExact(corner, mount, travel, new Heading.ByTieRod<>(inner));
      // A tie rod set 4 mm longer turns the upright, and what is mounted on it.
      assertExact(
          corner, mount, travel, new Heading.ByTieRod<>(inner, corner.tieRodLength().add(4)));
    }
  }

  /** A damper that is the strut itself: its moving end slides along the axis. */
  @Test
  void aStrutShortensAlongItsOwnAxis() {
    Random random = new Random(8);
    for (int i = 0; i < 100; i++) {
      HardPoints<Binary64> points = RandomLinkage.strut(random);
      Strut<Binary64> corner = Strut.of(points);
      Heading<Binary64> held = new Heading.ByTieRod<>(corner.tieRodInner());
      Mount<Binary64> damper =
          Mount.of(
              corner,
              Carrier.UPRIGHT,
              points.at(HardPoint.STRUT_TOP),
              points.at(HardPoint.STRUT_FOOT));
      double travel = RandomLinkage.between(random, -60, 60);
      Pose<Binary64> pose = at(corner, travel, held);
      FieldVector3D<Binary64> along =
          points.at(HardPoint.STRUT_TOP).subtract(damper.moving(corner, pose)).normalize();
      assertThat(along.subtract(corner.direction(pose)).getNorm().getReal()).isLessThan(1e-11);
      assertExact(corner, damper, travel, held);
      assertThat(MotionRatio.of(corner, damper).at(pose, held).getReal()).isBetween(0.85, 1.15);
    }
  }

  @Test
  void aStrutHasNoUpperArmToMountOn() {
    HardPoints<Binary64> points = RandomLinkage.strut(new Random(9));
    Strut<Binary64> corner = Strut.of(points);
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Mount.of(
                    corner,
                    Carrier.UPPER_ARM,
                    points.at(HardPoint.STRUT_TOP),
                    points.at(HardPoint.STRUT_FOOT)))
        .withMessage("a strut corner has no upper arm");
  }
}
