package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

class CornerPropertiesTest {
  private static final Binary64 ZERO = new Binary64(0);

  private static HardPoints<Binary64> wishbones(int seed) {
    return RandomLinkage.wishbones(new Random(seed));
  }

  private static Heading<Binary64> held(Corner<Binary64> corner) {
    return new Heading.ByTieRod<>(corner.tieRodInner());
  }

  private static Pose<Binary64> reached(Posed<Binary64> posed) {
    if (posed instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError(posed.toString());
  }

  private static void assertAt(FieldVector3D<Binary64> point, FieldVector3D<Binary64> expected) {
    assertThat(point.subtract(expected).getNorm().getReal()).isLessThan(1e-8);
  }

  @Property(tries = 300)
  void zeroTravelChangesNothing(@ForAll @IntRange int seed) {
    HardPoints<Binary64> points = wishbones(seed);
    DoubleWishbone<Binary64> corner = DoubleWishbone.of(points);
    WheelTravel<Binary64> travel = WheelTravel.of(corner);
    for (Heading<Binary64> heading : List.of(held(corner), new Heading.Reset<>(points.toe()))) {
      Pose<Binary64> pose = reached(travel.at(ZERO, heading));
      assertAt(pose.lowerBall(), points.at(HardPoint.LOWER_BALL_JOINT));
      assertAt(pose.upperBall(), points.at(HardPoint.UPPER_BALL_JOINT));
      assertAt(pose.tieRodOuter(), points.at(HardPoint.TIE_ROD_OUTER));
      assertAt(pose.wheelCenter(), points.at(HardPoint.WHEEL_CENTER));
      assertThat(pose.camber().getReal()).isCloseTo(points.camber().getReal(), within(1e-9));
      assertThat(pose.toe().getReal()).isCloseTo(points.toe().getReal(), within(1e-9));
      assertThat(pose.tieRodLength().getReal())
          .isCloseTo(corner.tieRodLength().getReal(), within(1e-8));
    }
  }

  @Property(tries = 300)
  void zeroTravelOfAStrutChangesNothing(@ForAll @IntRange int seed) {
    HardPoints<Binary64> points = RandomLinkage.strut(new Random(seed));
    Strut<Binary64> corner = Strut.of(points);
    WheelTravel<Binary64> travel = WheelTravel.of(corner);
    for (Heading<Binary64> heading : List.of(held(corner), new Heading.Reset<>(points.toe()))) {
      Pose<Binary64> pose = reached(travel.at(ZERO, heading));
      assertAt(pose.lowerBall(), points.at(HardPoint.LOWER_BALL_JOINT));
      assertAt(pose.tieRodOuter(), points.at(HardPoint.TIE_ROD_OUTER));
      assertAt(pose.wheelCenter(), points.at(HardPoint.WHEEL_CENTER));
      assertThat(pose.camber().getReal()).isCloseTo(points.camber().getReal(), within(1e-9));
      assertThat(pose.toe().getReal()).isCloseTo(points.toe().getReal(), within(1e-9));
    }
  }

  /**
   * A right corner in the vehicle's own coordinates, out negative, solved from its distances: its
   * joints must be those of the left corner reflected in the center plane.
   */
  @Property(tries = 100)
  void aRightCornerMirrorsTheLeftOne(
      @ForAll @IntRange int seed, @ForAll @DoubleRange(min = -70, max = 70) double rise) {
    HardPoints<Binary64> points = wishbones(seed);
    DoubleWishbone<Binary64> corner = DoubleWishbone.of(points);
    Pose<Binary64> pose = reached(WheelTravel.of(corner).at(new Binary64(rise), held(corner)));
    DistanceSolver right = new DistanceSolver();
    int lower = right.free(mirrored(points.at(HardPoint.LOWER_BALL_JOINT)));
    int upper = right.free(mirrored(points.at(HardPoint.UPPER_BALL_JOINT)));
    int outer = right.free(mirrored(points.at(HardPoint.TIE_ROD_OUTER)));
    int wheel = right.free(mirrored(points.at(HardPoint.WHEEL_CENTER)));
    hold(right, points, lower, HardPoint.LOWER_FRONT_PIVOT);
    hold(right, points, lower, HardPoint.LOWER_REAR_PIVOT);
    hold(right, points, upper, HardPoint.UPPER_FRONT_PIVOT);
    hold(right, points, upper, HardPoint.UPPER_REAR_PIVOT);
    hold(right, points, outer, HardPoint.TIE_ROD_INNER);
    right.held(lower, upper);
    right.held(lower, outer);
    right.held(upper, outer);
    right.held(lower, wheel);
    right.held(upper, wheel);
    right.held(outer, wheel);
    double height = points.at(HardPoint.WHEEL_CENTER).getZ().getReal() + rise;
    right.zero(now -> now[wheel].getZ() - height);
    Vector3D[] solved = right.solve();
    assertThat(solved[lower].distance(mirrored(pose.lowerBall()))).isLessThan(1e-6);
    assertThat(solved[upper].distance(mirrored(pose.upperBall()))).isLessThan(1e-6);
    assertThat(solved[outer].distance(mirrored(pose.tieRodOuter()))).isLessThan(1e-6);
    assertThat(solved[wheel].distance(mirrored(pose.wheelCenter()))).isLessThan(1e-6);
  }

  private static void hold(
      DistanceSolver solver, HardPoints<Binary64> points, int free, HardPoint pivot) {
    Vector3D at = mirrored(points.at(pivot));
    solver.held(free, at, at);
  }

  private static Vector3D mirrored(FieldVector3D<Binary64> point) {
    return new Vector3D(point.getX().getReal(), -point.getY().getReal(), point.getZ().getReal());
  }

  @Property(tries = 200)
  void anUpperBallJointFartherRearAddsCasterAndFartherInLeansTheWheelIn(
      @ForAll @IntRange int seed, @ForAll @DoubleRange(min = 1, max = 12) double shift) {
    HardPoints<Binary64> points = wishbones(seed);
    Pose<Binary64> before = shifted(points, new Vector3D(0, 0, 0));
    Pose<Binary64> rearward = shifted(points, new Vector3D(-shift, 0, 0));
    Pose<Binary64> inboard = shifted(points, new Vector3D(0, -shift, 0));
    assertThat(rearward.caster().getReal()).isGreaterThan(before.caster().getReal());
    assertThat(inboard.camber().getReal()).isLessThan(before.camber().getReal());
  }

  private static Pose<Binary64> shifted(HardPoints<Binary64> points, Vector3D shift) {
    DoubleWishbone<Binary64> corner =
        DoubleWishbone.of(points, Map.of(HardPoint.UPPER_BALL_JOINT, RandomLinkage.in(shift)));
    return reached(WheelTravel.of(corner).at(ZERO, new Heading.Reset<>(ZERO)));
  }

  /** Either a pose whose every number is one and whose wheel has risen so far, or a sentence. */
  @Property(tries = 5000)
  void thereIsAPoseOrASentenceAtEveryTravel(
      @ForAll @IntRange int seed,
      @ForAll @DoubleRange(min = -400, max = 400) double rise,
      @ForAll boolean strut,
      @ForAll boolean reset) {
    Corner<Binary64> corner =
        strut
            ? Strut.of(RandomLinkage.strut(new Random(seed)))
            : DoubleWishbone.of(wishbones(seed));
    Heading<Binary64> heading = reset ? new Heading.Reset<>(ZERO) : held(corner);
    Posed<Binary64> posed = WheelTravel.of(corner).at(new Binary64(rise), heading);
    if (posed instanceof OutOfReach<Binary64> out) {
      assertThat(out.limit())
          .matches(
              "(the upper arm cannot follow the upright|the tie rod cannot follow the steering arm"
                  + "|no steering gives the wheel this toe|the lower arm passes its limit"
                  + "|the upright has come up to the strut's top) at [+-]\\d+ mm");
      double limit = Double.parseDouble(out.limit().replaceAll(".* at | mm", ""));
      assertThat(limit * Math.signum(rise)).isBetween(0.0, Math.abs(rise) + 0.5);
      return;
    }
    Pose<Binary64> pose = reached(posed);
    assertRisesAllTheWay(corner, heading, pose.lowerAngle().getReal());
    double up = corner.surveyedWheel().getZ().getReal() + rise;
    assertThat(pose.wheelCenter().getZ().getReal()).isCloseTo(up, within(1e-6));
    for (FieldVector3D<Binary64> vector :
        List.of(pose.lowerBall(), pose.upperBall(), pose.tieRodOuter(), pose.wheelCenter())) {
      assertThat(vector.isNaN() || vector.isInfinite()).isFalse();
    }
    assertThat(pose.spindle().getNorm().getReal()).isCloseTo(1, within(1e-9));
    assertThat(pose.kingpin().getNorm().getReal()).isCloseTo(1, within(1e-9));
    assertThat(pose.camber().isNaN() || pose.toe().isNaN() || pose.caster().isNaN()).isFalse();
  }

  /** A strut whose tie rod cannot follow on the way, and could again beyond. */
  @Example
  void aWayThatIsShutInTheMiddleIsNotLeaptOver() {
    thereIsAPoseOrASentenceAtEveryTravel(1669, 276.66, true, false);
    thereIsAPoseOrASentenceAtEveryTravel(1690, 314.82, true, false);
  }

  /** From the surveyed angle to the one found, the wheel goes one way only. */
  private static void assertRisesAllTheWay(
      Corner<Binary64> corner, Heading<Binary64> heading, double found) {
    double surveyed = corner.surveyedAngle().getReal();
    double before = Double.NaN;
    for (int step = 0; step <= 20; step++) {
      Binary64 angle = new Binary64(surveyed + (found - surveyed) * step / 20);
      double height = reached(corner.pose(angle, heading)).wheelCenter().getZ().getReal();
      if (step > 0 && Math.abs(found - surveyed) > 1e-6) {
        assertThat((height - before) * Math.signum(found - surveyed)).isPositive();
      }
      before = height;
    }
  }

  @Test
  void pointsThatMakeNoLinkageAreRefused() {
    HardPoints<Binary64> points = wishbones(1);
    FieldVector3D<Binary64> apart =
        points.at(HardPoint.LOWER_REAR_PIVOT).subtract(points.at(HardPoint.LOWER_FRONT_PIVOT));
    assertThatThrownBy(() -> DoubleWishbone.of(points.moved(HardPoint.LOWER_FRONT_PIVOT, apart)))
        .isInstanceOf(OutOfReachException.class)
        .hasMessage("lower arm: its pivots coincide");
    assertThatThrownBy(
            () ->
                DoubleWishbone.of(
                    points,
                    Map.of(HardPoint.UPPER_FRONT_PIVOT, RandomLinkage.in(new Vector3D(900, 0, 0)))))
        .isInstanceOf(OutOfReachException.class)
        .hasMessage("upper arm: its legs cannot meet at a ball joint");
    assertThatThrownBy(
            () ->
                DoubleWishbone.of(
                    points.moved(
                        HardPoint.UPPER_BALL_JOINT, RandomLinkage.in(new Vector3D(0, 0, -400)))))
        .isInstanceOf(OutOfReachException.class)
        .hasMessageContaining("the steering axis lies down");
  }
}
