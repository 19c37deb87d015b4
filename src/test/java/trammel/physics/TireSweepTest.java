package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reach against an independent computation: points of the tire's outline turned about the axis,
 * step by step. No published example of a sweep is at hand.
 */
class TireSweepTest {

  /** Worked beside a brute-force sweep about an inclined axis: lever 97.7 mm, shoulder 40 mm. */
  @ParameterizedTest
  @CsvSource({
    "407.5, 275, 97.7, 456.1",
    "407.5, 275, 122.7, 468.4",
    "419.0, 285, 97.7, 468.6",
    "419.0, 285, 122.7, 480.9",
  })
  void reachIsTheWorkedOne(double radius, double width, double lever, double reach) {
    assertThat(TireSweep.reach(radius, TireSweep.outerEdge(lever, width), 40))
        .isCloseTo(reach, Offset.offset(0.1));
  }

  /** The brute-force sweep took 12.35, 12.50 and 24.78 mm from a sill corner's gap of 36.71 mm. */
  @ParameterizedTest
  @CsvSource({"407.5, 275, 122.7, 12.35", "419.0, 285, 97.7, 12.50", "419.0, 285, 122.7, 24.78"})
  void changeOfReachIsThatOfTheInclinedSweep(
      double radius, double width, double lever, double taken) {
    double before = TireSweep.reach(407.5, TireSweep.outerEdge(97.7, 275), 40);
    double after = TireSweep.reach(radius, TireSweep.outerEdge(lever, width), 40);
    assertThat(after - before).isCloseTo(taken, Offset.offset(0.1));
  }

  @Property(tries = 200)
  void reachIsTheFarthestPointOfTheTurnedOutline(
      @ForAll @DoubleRange(min = 330, max = 500) double radius,
      @ForAll @DoubleRange(min = 60, max = 300) double edge,
      @ForAll @DoubleRange(min = 5, max = 50) double shoulder) {
    double farthest = 0;
    for (double steer = 0; steer < 60; steer += 0.05) {
      double phi = Math.toRadians(steer);
      for (double arc = 0; arc <= 90; arc += 1) {
        double lateral = edge - shoulder + shoulder * Math.sin(Math.toRadians(arc));
        double aft = radius - shoulder + shoulder * Math.cos(Math.toRadians(arc));
        farthest = Math.max(farthest, aft * Math.cos(phi) + lateral * Math.sin(phi));
      }
    }
    assertThat(TireSweep.reach(radius, edge, shoulder)).isCloseTo(farthest, Offset.offset(0.01));
  }

  @Property
  void derivativesAreThoseOfTheReach(
      @ForAll @DoubleRange(min = 330, max = 500) double radius,
      @ForAll @DoubleRange(min = 60, max = 300) double edge,
      @ForAll @DoubleRange(min = 5, max = 50) double shoulder) {
    Partial.assertPartial(
        x -> TireSweep.reach(radius, x, shoulder),
        edge,
        TireSweep.reachPerEdge(radius, edge, shoulder));
    Partial.assertPartial(
        r -> TireSweep.reach(r, edge, shoulder),
        radius,
        TireSweep.reachPerRadius(radius, edge, shoulder));
    Partial.assertPartial(
        r -> TireSweep.reach(radius, edge, r),
        shoulder,
        TireSweep.reachPerShoulder(radius, edge, shoulder));
  }

  @Test
  void whereTheShoulderBeginsBeyondTheAxisTheCrownReachesFarthest() {
    double inner = TireSweep.innerEdge(110, 275);
    assertThat(TireSweep.reach(407.5, inner, 40)).isEqualTo(407.5);
    assertThat(TireSweep.reachPerEdge(407.5, inner, 40)).isZero();
    assertThat(TireSweep.reachPerRadius(407.5, inner, 40)).isEqualTo(1);
    assertThat(TireSweep.angleOfReach(407.5, inner, 40)).isZero();
  }

  /**
   * Body mounts are met at 25 to 35 degrees of lock toward the wheel's own side: common practice.
   */
  @Test
  void theWorkedTireReachesFarthestAtTheLockOfPractice() {
    assertThat(TireSweep.angleOfReach(407.5, TireSweep.outerEdge(97.7, 275), 40))
        .isBetween(25.0, 35.0);
  }

  @Test
  void theInnerCornerSwingsInboardWithTheAngle() {
    double inner = TireSweep.innerEdge(97.7, 275);
    assertThat(TireSweep.inboardReach(407.5, inner, 0)).isCloseTo(39.8, Offset.offset(1e-9));
    assertThat(TireSweep.inboardReach(407.5, inner, 90)).isCloseTo(407.5, Offset.offset(1e-9));
    Partial.assertPartial(
        angle -> TireSweep.inboardReach(407.5, inner, angle),
        33,
        TireSweep.inboardReachPerAngle(407.5, inner, 33));
    Partial.assertPartial(
        x -> TireSweep.inboardReach(407.5, x, 33), inner, TireSweep.inboardReachPerEdge(33));
    Partial.assertPartial(
        r -> TireSweep.inboardReach(r, inner, 33), 407.5, TireSweep.inboardReachPerRadius(33));
  }

  /** An upright axis keeps its distance; one at 45 degrees leaves by as much as it rises. */
  @Test
  void theLeverGrowsUpTheInclinedAxis() {
    assertThat(TireSweep.leverAtHub(17.9, 375, 0)).isEqualTo(17.9);
    assertThat(TireSweep.leverAtHub(17.9, 375, 45)).isCloseTo(392.9, Offset.offset(1e-9));
  }

  @Test
  void impossibleTiresAreRefused() {
    assertThatThrownBy(() -> TireSweep.reach(400, 200, 400))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("shoulder radius; expected less than the tire radius");
    assertThatThrownBy(() -> TireSweep.reach(0, 200, 0)).hasMessageContaining("tire radius");
  }
}
