package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trammel.geometry.MountPath.Place;

/**
 * A mount's path against the mount's own length and motion ratio in the pose at that travel, and
 * its derivatives against central differences of them (own derivation).
 */
class MountPathTest {
  private static final int COORDINATES = 3 * HardPoint.ofWishbones().size();
  private static final int CAMBER = COORDINATES;
  private static final int TOE = COORDINATES + 1;
  private static final int BODY = COORDINATES + 2;
  private static final int MOVING = BODY + 3;
  private static final int VARIABLES = MOVING + 3;
  private static final double STEP = 1e-3;

  private static <T extends CalculusFieldElement<T>> FieldVector3D<T> vector(T[] from, int first) {
    return new FieldVector3D<>(from[first], from[first + 1], from[first + 2]);
  }

  private static <T extends CalculusFieldElement<T>> DoubleWishbone<T> corner(T[] variables) {
    Map<HardPoint, FieldVector3D<T>> points = new EnumMap<>(HardPoint.class);
    int first = 0;
    for (HardPoint point : HardPoint.ofWishbones()) {
      points.put(point, vector(variables, first));
      first += 3;
    }
    return DoubleWishbone.of(new HardPoints<>(points, variables[CAMBER], variables[TOE]));
  }

  private static <T extends CalculusFieldElement<T>> Heading<T> heading(
      DoubleWishbone<T> corner, boolean reset, T toe) {
    return reset
        ? new Heading.Reset<>(toe.getField().getZero().newInstance(0.1))
        : new Heading.ByTieRod<>(corner.tieRodInner());
  }

  private static double[] draw(Random random) {
    HardPoints<Binary64> points = RandomLinkage.wishbones(random);
    double[] at = new double[VARIABLES];
    int first = 0;
    for (HardPoint point : HardPoint.ofWishbones()) {
      System.arraycopy(points.at(point).toVector3D().toArray(), 0, at, first, 3);
      first += 3;
    }
    at[CAMBER] = points.camber().getReal();
    at[TOE] = points.toe().getReal();
    System.arraycopy(new Vector3D(20, 480, 800).toArray(), 0, at, BODY, 3);
    Vector3D moving = new Vector3D(0, RandomLinkage.between(random, 500, 650), 350);
    System.arraycopy(moving.toArray(), 0, at, MOVING, 3);
    return at;
  }

  /** Length and motion ratio in the pose at a travel, in plain numbers. */
  private static double[] plain(
      double[] at, int moved, double by, Mount.Carrier carrier, double travel, boolean reset) {
    Binary64[] variables = new Binary64[VARIABLES];
    for (int i = 0; i < VARIABLES; i++) {
      variables[i] = new Binary64(i == moved ? at[i] + by : at[i]);
    }
    DoubleWishbone<Binary64> corner = corner(variables);
    Mount<Binary64> mount =
        Mount.of(corner, carrier, vector(variables, BODY), vector(variables, MOVING));
    Heading<Binary64> heading = heading(corner, reset, variables[TOE]);
    if (WheelTravel.of(corner).at(new Binary64(travel), heading) instanceof Pose<Binary64> pose) {
      return new double[] {
        mount.length(corner, pose).getReal(),
        MotionRatio.of(corner, mount).at(pose, heading).getReal()
      };
    }
    throw new AssertionError("out of reach");
  }

  private static Place<Gradient> path(
      double[] at, Mount.Carrier carrier, double travel, boolean reset) {
    Gradient[] variables = new Gradient[VARIABLES];
    for (int i = 0; i < VARIABLES; i++) {
      variables[i] = Gradient.variable(VARIABLES, i, at[i]);
    }
    DoubleWishbone<Gradient> corner = corner(variables);
    Mount<Gradient> mount =
        Mount.of(corner, carrier, vector(variables, BODY), vector(variables, MOVING));
    return MountPath.of(corner, mount, corner.in(number -> new Binary64(number.getReal())))
        .at(travel, heading(corner, reset, variables[TOE]))
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Mount.Carrier.class)
  void theDerivativesAreTheSlopesOfThePlainNumbers(Mount.Carrier carrier) {
    Random random = new Random(20261126);
    for (int geometry = 0; geometry < 12; geometry++) {
      double[] at = draw(random);
      double travel = RandomLinkage.between(random, -60, 60);
      boolean reset = geometry % 2 == 0;
      Place<Gradient> place = path(at, carrier, travel, reset);
      double[] unmoved = plain(at, 0, 0, carrier, travel, reset);
      assertThat(place.length().getValue()).isCloseTo(unmoved[0], within(1e-6));
      assertThat(place.ratio().getValue()).isCloseTo(unmoved[1], within(1e-8));
      double higher = plain(at, 0, 0, carrier, travel + 0.1, reset)[1];
      double lower = plain(at, 0, 0, carrier, travel - 0.1, reset)[1];
      assertThat(place.ratioPerRise()).isCloseTo((higher - lower) / 0.2, within(1e-7));
      for (int i = 0; i < VARIABLES; i++) {
        String which = "geometry " + geometry + " by variable " + i;
        double[] more = plain(at, i, STEP, carrier, travel, reset);
        double[] less = plain(at, i, -STEP, carrier, travel, reset);
        assertThat(place.length().getPartialDerivative(i))
            .as("length, " + which)
            .isCloseTo((more[0] - less[0]) / (2 * STEP), within(1e-6));
        assertThat(place.ratio().getPartialDerivative(i))
            .as("ratio, " + which)
            .isCloseTo((more[1] - less[1]) / (2 * STEP), within(1e-6));
      }
    }
  }

  @Test
  void beyondTheLinkagesReachIsNowhere() {
    double[] at = draw(new Random(5));
    Binary64[] variables = new Binary64[VARIABLES];
    for (int i = 0; i < VARIABLES; i++) {
      variables[i] = new Binary64(at[i]);
    }
    DoubleWishbone<Binary64> corner = corner(variables);
    Mount<Binary64> mount =
        Mount.of(
            corner, Mount.Carrier.LOWER_ARM, vector(variables, BODY), vector(variables, MOVING));
    MountPath<Binary64> path = MountPath.of(corner, mount, corner);
    Heading<Binary64> heading = heading(corner, true, variables[TOE]);
    assertThat(path.at(60, heading)).isPresent();
    assertThat(path.at(600, heading)).isEmpty();
    // What the linkage just reaches has a ratio, whose change is seen from one side alone.
    double reached = 60;
    double beyond = 600;
    while (beyond - reached > 1e-6) {
      double middle = (reached + beyond) / 2;
      boolean there =
          WheelTravel.of(corner).at(new Binary64(middle), heading) instanceof Pose<Binary64>;
      reached = there ? middle : reached;
      beyond = there ? beyond : middle;
    }
    assertThat(path.at(reached - 0.05, heading)).isPresent();
  }

  @Test
  void aCornerThatIsNotAsSurveyedHasNoFrameToMountOn() {
    Random random = new Random(6);
    Corner<Binary64> shifted =
        DoubleWishbone.of(
            RandomLinkage.wishbones(random),
            Map.of(HardPoint.LOWER_FRONT_PIVOT, RandomLinkage.in(new Vector3D(0, 3, 0))));
    FieldVector3D<Binary64> somewhere = RandomLinkage.in(new Vector3D(0, 500, 400));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Mount.of(shifted, Mount.Carrier.LOWER_ARM, somewhere, somewhere))
        .withMessage("this corner is not as it was surveyed");
  }
}
