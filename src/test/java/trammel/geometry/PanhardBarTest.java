package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.change;
import static trammel.geometry.Plain.number;
import static trammel.geometry.Plain.point;
import static trammel.geometry.Plain.unchanged;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PanhardBarTest {
  private static final double FRAME_END_LEFT = 430;
  private static final double AXLE_END_UP = 520;

  /** A bar with its frame end on the left. */
  private static PanhardBar<Binary64> bar(double length, double rise, double aft) {
    double span = Math.sqrt(length * length - rise * rise - aft * aft);
    return new PanhardBar<>(
        point(0, FRAME_END_LEFT, AXLE_END_UP + rise),
        point(-aft, FRAME_END_LEFT - span, AXLE_END_UP));
  }

  private static double shift(PanhardBar<Binary64> bar, double lift) {
    return bar.shift(number(lift)).orElseThrow().getReal();
  }

  @ParameterizedTest(name = "{0} mm, {1} high, lifted {2}: {3}")
  @CsvFileSource(files = "shared/reference/panhard-shift.csv", useHeadersInDisplayName = true)
  void theAxleMovesAsWorkedExamplesHaveIt(
      double length,
      double rise,
      double lift,
      double moved,
      double tolerance,
      @Nullable Double longer) {
    PanhardBar<Binary64> bar = bar(length, rise, 0);
    assertThat(bar.length().getReal()).isCloseTo(length, Offset.offset(1e-9));
    assertThat(shift(bar, lift)).isCloseTo(moved, Offset.offset(tolerance));
    if (longer != null) {
      double recentering = bar.lengthThatRecenters(number(lift), unchanged()).getReal();
      assertThat(recentering - length).isCloseTo(longer, Offset.offset(tolerance));
    }
  }

  /** Own computation: 950 mm bar, 55 mm high, lifted 50, axle end 520 up, frame end 430 left. */
  @Test
  void raisingTheAxleEndAlsoRaisesTheRollCenter() {
    PanhardBar<Binary64> bar = bar(950, 55, 0);
    assertThat(bar.rollCenterHeight(number(50), unchanged()).orElseThrow().getReal())
        .isCloseTo(577, Offset.offset(0.5));
    assertThat(bar.rollCenterHeight(number(50), change(0, 0, 50)).orElseThrow().getReal())
        .isCloseTo(600, Offset.offset(0.5));
  }

  /** Pages of the trade, common practice: the roll center of a level bar is at its height. */
  @Property
  void aLevelBarHasItsRollCenterAtItsHeightAndDoesNotJack(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double aft,
      @ForAll @DoubleRange(min = -60, max = 60) double rise) {
    PanhardBar<Binary64> bar = bar(length, rise, aft);
    Binary64 toLevel = number(-rise);
    assertThat(bar.rollCenterHeight(toLevel, unchanged()).orElseThrow().getReal())
        .isCloseTo(AXLE_END_UP, Offset.offset(1e-9));
    assertThat(bar.slope(toLevel, unchanged()).orElseThrow().getReal())
        .isCloseTo(0, Offset.offset(1e-12));
  }

  @Property
  void onlyTheSquareOfTheHeightDifferenceCounts(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double rise,
      @ForAll @DoubleRange(min = -150, max = 150) double lift) {
    assertThat(shift(bar(length, rise, 30), lift))
        .isCloseTo(shift(bar(length, -rise, 30), -lift), Offset.offset(1e-9));
    assertThat(shift(bar(length, rise, 30), -2 * rise)).isCloseTo(0, Offset.offset(1e-9));
  }

  @Property
  void movingEitherEndByTheLiftRestoresEverything(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double rise,
      @ForAll @DoubleRange(min = -150, max = 150) double lift) {
    PanhardBar<Binary64> bar = bar(length, rise, 30);
    for (LinkChange<Binary64> moved :
        List.of(change(0, 0, lift), change(0, -lift, 0), change(0, -lift / 2, lift / 2))) {
      assertThat(bar.shift(number(lift), moved).orElseThrow().getReal())
          .isCloseTo(0, Offset.offset(1e-9));
      assertThat(bar.angle(number(lift), moved).orElseThrow().getReal())
          .isCloseTo(bar.angle().getReal(), Offset.offset(1e-9));
      assertThat(bar.lengthThatRecenters(number(lift), moved).getReal())
          .isCloseTo(length, Offset.offset(1e-9));
    }
  }

  @Property
  void theLengthThatRecentersDoes(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double rise,
      @ForAll @DoubleRange(min = -150, max = 150) double lift,
      @ForAll @DoubleRange(min = -50, max = 50) double raised) {
    PanhardBar<Binary64> bar = bar(length, rise, 30);
    LinkChange<Binary64> moved = change(0, 0, raised);
    double longer = bar.lengthThatRecenters(number(lift), moved).getReal() - length;
    assertThat(bar.shift(number(lift), change(longer, 0, raised)).orElseThrow().getReal())
        .isCloseTo(0, Offset.offset(1e-9));
  }

  @Property
  void aMirroredBarMirrors(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double rise,
      @ForAll @DoubleRange(min = -150, max = 150) double lift) {
    PanhardBar<Binary64> bar = bar(length, rise, 30);
    PanhardBar<Binary64> mirrored =
        new PanhardBar<>(mirrored(bar.frameEnd()), mirrored(bar.axleEnd()));
    Binary64 by = number(lift);
    assertThat(shift(mirrored, lift)).isEqualTo(-shift(bar, lift));
    assertThat(mirrored.angle()).isEqualTo(bar.angle());
    assertThat(mirrored.inclination(by, unchanged()).orElseThrow().getReal())
        .isEqualTo(-bar.inclination(by, unchanged()).orElseThrow().getReal());
    assertThat(mirrored.rollCenterHeight(by, unchanged()).orElseThrow().getReal())
        .isCloseTo(
            bar.rollCenterHeight(by, unchanged()).orElseThrow().getReal(), Offset.offset(1e-9));
    var sweep = bar.sweep(by, number(70), number(90), unchanged()).orElseThrow();
    var mirror = mirrored.sweep(by, number(70), number(90), unchanged()).orElseThrow();
    assertThat(mirror.left().getReal()).isCloseTo(-sweep.right().getReal(), Offset.offset(1e-9));
    assertThat(mirror.right().getReal()).isCloseTo(-sweep.left().getReal(), Offset.offset(1e-9));
  }

  private static FieldVector3D<Binary64> mirrored(FieldVector3D<Binary64> point) {
    return new FieldVector3D<>(point.getX(), point.getY().negate(), point.getZ());
  }

  @Property
  void noLiftMovesNothing(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double rise) {
    PanhardBar<Binary64> bar = bar(length, rise, 30);
    assertThat(shift(bar, 0)).isCloseTo(0, Offset.offset(1e-9));
    assertThat(bar.angle(number(0), unchanged()).orElseThrow().getReal())
        .isCloseTo(bar.angle().getReal(), Offset.offset(1e-9));
  }

  /** Against single positions, step by step through the travel. */
  @Property(tries = 100)
  void theSweepHoldsEveryPositionOfTheTravel(
      @ForAll @DoubleRange(min = 600, max = 1100) double length,
      @ForAll @DoubleRange(min = -100, max = 100) double rise,
      @ForAll @DoubleRange(min = 0, max = 100) double lift,
      @ForAll @DoubleRange(min = 0, max = 120) double bump,
      @ForAll @DoubleRange(min = 0, max = 120) double droop) {
    PanhardBar<Binary64> bar = bar(length, rise, 30);
    double left = 0;
    double right = 0;
    for (int i = 0; i <= 2000; i++) {
      double travel = -droop + (bump + droop) * i / 2000;
      double moved = shift(bar, lift - travel) - shift(bar, lift);
      left = Math.max(left, moved);
      right = Math.min(right, moved);
    }
    PanhardBar.Sweep<Binary64> sweep =
        bar.sweep(number(lift), number(bump), number(droop), unchanged()).orElseThrow();
    assertThat(sweep.left().getReal()).isCloseTo(left, Offset.offset(1e-5));
    assertThat(sweep.right().getReal()).isCloseTo(right, Offset.offset(1e-5));
  }

  @Test
  void whatTheBarDoesNotReachIsEmpty() {
    PanhardBar<Binary64> bar = bar(300, 100, 50);
    assertThat(bar.shift(number(195))).isPresent();
    assertThat(bar.shift(number(197))).isEmpty();
    assertThat(bar.slope(number(197), unchanged())).isEmpty();
    assertThat(bar.rollCenterHeight(number(197), unchanged())).isEmpty();
    assertThat(bar.sweep(number(190), number(20), number(10), unchanged())).isEmpty();
    assertThat(bar.shift(number(197), change(2, 0, 0))).isPresent();
    assertThat(bar.shift(number(0), change(-700, 0, 0))).isEmpty();
  }

  @Test
  void aBarThatHoldsNothingSidewaysIsRefused() {
    assertThatThrownBy(() -> new PanhardBar<>(point(0, 100, 0), point(500, 100, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.0 mm apart sideways");
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    double[] at = {12, 430, 575, -20, -515, 520, 50, 4, -3, 15};
    Slopes.agree(v -> bar(v).shift(v[6], changed(v)).orElseThrow(), at);
    Slopes.agree(v -> bar(v).angle(v[6], changed(v)).orElseThrow(), at);
    Slopes.agree(v -> bar(v).slope(v[6], changed(v)).orElseThrow(), at);
    Slopes.agree(v -> bar(v).rollCenterHeight(v[6], changed(v)).orElseThrow(), at);
    Slopes.agree(v -> bar(v).lengthThatRecenters(v[6], changed(v)), at);
    Slopes.agree(
        v -> bar(v).sweep(v[6], v[9].add(80), v[9].add(60), changed(v)).orElseThrow().left(), at);
  }

  /** The slope is the derivative of the shift by lift. */
  @Test
  void theSlopeIsTheShiftPerLift() {
    double[] at = {12, 430, 575, -20, -515, 520, 50, 4, -3, 15};
    Gradient[] v = new Gradient[at.length];
    for (int i = 0; i < at.length; i++) {
      v[i] = Gradient.variable(at.length, i, at[i]);
    }
    assertThat(bar(v).slope(v[6], changed(v)).orElseThrow().getValue())
        .isCloseTo(
            bar(v).shift(v[6], changed(v)).orElseThrow().getPartialDerivative(6),
            Offset.offset(1e-12));
  }

  private static PanhardBar<Gradient> bar(Gradient[] v) {
    return new PanhardBar<>(
        new FieldVector3D<>(v[0], v[1], v[2]), new FieldVector3D<>(v[3], v[4], v[5]));
  }

  private static LinkChange<Gradient> changed(Gradient[] v) {
    return new LinkChange<>(v[7], v[8], v[9]);
  }
}
