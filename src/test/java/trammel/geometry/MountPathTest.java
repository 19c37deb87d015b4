package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
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

  /** The toe that the wheel is held at (degrees). */
  private static final double SET = 0.1;

  private static FieldVector3D<Binary64> vector(Binary64[] from, int first) {
    return new FieldVector3D<>(from[first], from[first + 1], from[first + 2]);
  }

  private static DoubleWishbone<Binary64> corner(Binary64[] variables) {
    Map<HardPoint, FieldVector3D<Binary64>> points = new EnumMap<>(HardPoint.class);
    int first = 0;
    for (HardPoint point : HardPoint.ofWishbones()) {
      points.put(point, vector(variables, first));
      first += 3;
    }
    return DoubleWishbone.of(new HardPoints<>(points, variables[CAMBER], variables[TOE]));
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

  /** Length and motion ratio in the pose at a travel. */
  private static double[] stands(
      double[] at, int moved, double by, Mount.Carrier carrier, double travel) {
    Binary64[] variables = new Binary64[VARIABLES];
    for (int i = 0; i < VARIABLES; i++) {
      variables[i] = new Binary64(i == moved ? at[i] + by : at[i]);
    }
    DoubleWishbone<Binary64> corner = corner(variables);
    Mount<Binary64> mount =
        Mount.of(corner, carrier, vector(variables, BODY), vector(variables, MOVING));
    Heading<Binary64> heading = new Heading.Reset<>(new Binary64(SET));
    if (WheelTravel.of(corner).at(new Binary64(travel), heading) instanceof Pose<Binary64> pose) {
      return new double[] {
        mount.length(corner, pose).getReal(),
        MotionRatio.of(corner, mount).at(pose, heading).getReal()
      };
    }
    throw new AssertionError("out of reach");
  }

  private static MountPath path(double[] at, Mount.Carrier carrier) {
    Binary64[] variables = Arrays.stream(at).mapToObj(Binary64::new).toArray(Binary64[]::new);
    DoubleWishbone<Binary64> corner = corner(variables);
    Mount<Binary64> mount =
        Mount.of(corner, carrier, vector(variables, BODY), vector(variables, MOVING));
    return MountPath.of(corner, mount, SET);
  }

  /** In the order of the variables. */
  private static double[] slopes(ByPlace by) {
    double[] told = by.slopes(0);
    double[] slopes = new double[VARIABLES];
    int next = 0;
    for (HardPoint joint : ByPlace.JOINTS) {
      System.arraycopy(told, next, slopes, 3 * HardPoint.ofWishbones().indexOf(joint), 3);
      next += 3;
    }
    System.arraycopy(told, next, slopes, BODY, 3);
    System.arraycopy(told, next + 3, slopes, MOVING, 3);
    slopes[CAMBER] = told[next + 6];
    slopes[TOE] = told[next + 7];
    return slopes;
  }

  @ParameterizedTest
  @EnumSource(Mount.Carrier.class)
  void virtualWorkTellsTheSlopesOfLengthAndRatio(Mount.Carrier carrier) {
    Random random = new Random(20261126);
    for (int geometry = 0; geometry < 12; geometry++) {
      double[] at = draw(random);
      // The first where it was surveyed, though in another heading.
      double travel = geometry == 0 ? 0 : RandomLinkage.between(random, -60, 60);
      Place place = path(at, carrier).at(travel).orElseThrow();
      double[] unmoved = stands(at, 0, 0, carrier, travel);
      assertThat(place.length()).isCloseTo(unmoved[0], within(1e-9));
      assertThat(place.ratio()).isCloseTo(unmoved[1], within(1e-9));
      double higher = stands(at, 0, 0, carrier, travel + 0.1)[1];
      double lower = stands(at, 0, 0, carrier, travel - 0.1)[1];
      assertThat(place.ratioPerRise()).isCloseTo((higher - lower) / 0.2, within(1e-7));
      double[] lengthBy = slopes(place.lengthBy());
      double[] ratioBy = slopes(place.ratioBy());
      for (int i = 0; i < VARIABLES; i++) {
        String which = "geometry " + geometry + " by variable " + i;
        double[] more = stands(at, i, STEP, carrier, travel);
        double[] less = stands(at, i, -STEP, carrier, travel);
        assertThat(lengthBy[i])
            .as("length, " + which)
            .isCloseTo((more[0] - less[0]) / (2 * STEP), within(1e-6));
        assertThat(ratioBy[i])
            .as("ratio, " + which)
            .isCloseTo((more[1] - less[1]) / (2 * STEP), within(1e-6));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void beyondTheLinkagesReachIsNowhere(int way) {
    double[] at = draw(new Random(5));
    MountPath path = path(at, Mount.Carrier.LOWER_ARM);
    assertThat(path.at(60 * way)).isPresent();
    assertThat(path.at(600 * way)).isEmpty();
    // Up to where the linkage ends.
    double reached = 60;
    double beyond = 600;
    while (beyond - reached > 1e-6) {
      double middle = (reached + beyond) / 2;
      boolean there = path.at(middle * way).isPresent();
      reached = there ? middle : reached;
      beyond = there ? beyond : middle;
    }
    Binary64[] variables = Arrays.stream(at).mapToObj(Binary64::new).toArray(Binary64[]::new);
    WheelTravel<Binary64> travel = WheelTravel.of(corner(variables));
    Heading<Binary64> heading = new Heading.Reset<>(new Binary64(SET));
    assertThat(travel.at(new Binary64((reached + 0.1) * way), heading))
        .isInstanceOf(OutOfReach.class);
  }

  @Test
  void aCornerThatIsNotAsSurveyedHasNoFrameToMountOn() {
    Random random = new Random(6);
    DoubleWishbone<Binary64> shifted =
        DoubleWishbone.of(
            RandomLinkage.wishbones(random),
            Map.of(HardPoint.LOWER_FRONT_PIVOT, RandomLinkage.in(new Vector3D(0, 3, 0))));
    FieldVector3D<Binary64> somewhere = RandomLinkage.in(new Vector3D(0, 500, 400));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Mount.of(shifted, Mount.Carrier.LOWER_ARM, somewhere, somewhere))
        .withMessage("this corner is not as it was surveyed");
    Mount<Binary64> mount = new Mount<>(Mount.Carrier.LOWER_ARM, somewhere, somewhere);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MountPath.of(shifted, mount, SET))
        .withMessage("this corner is not as it was surveyed");
  }
}
