package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.designation.TireDesignation;

/** Speedometer and gearing. */
class RoadSpeedTest {
  private static final double INCH = 25.4;
  private static final double MILE = 1.609344;

  /** UN R39, 5.3, as motoring bodies print it; one of them prints 86 for the inverse, wrongly. */
  @ParameterizedTest(name = "{0} km/h: at most {1}")
  @CsvFileSource(files = "shared/reference/speedometer-bound.csv", useHeadersInDisplayName = true)
  void highestIndicationIsThePublishedBound(double trueSpeed, double highest) {
    assertThat(Speedometer.highestIndication(trueSpeed)).isCloseTo(highest, Offset.offset(1e-9));
    assertThat(Speedometer.lowestTrueSpeed(highest)).isCloseTo(trueSpeed, Offset.offset(1e-9));
    assertThat(Speedometer.isAllowed(trueSpeed, trueSpeed)).isTrue();
    assertThat(Speedometer.isAllowed(highest - 0.1, trueSpeed)).isTrue();
    assertThat(Speedometer.isAllowed(highest + 0.1, trueSpeed)).isFalse();
    assertThat(Speedometer.isAllowed(trueSpeed - 0.1, trueSpeed)).isFalse();
  }

  /** Pages of the trade: 185/70R14 replaced by 195/50R15 reads 1.0670139 times the true speed. */
  @Test
  void smallerTiresReadHighByThePublishedFactor() {
    double k = ratio("185/70R14", "195/50R15");
    assertThat(Speedometer.indicatedAfter(1, k)).isCloseTo(1.0670139, Offset.offset(1e-6));
    assertThat(Speedometer.neverReadsLow(1, k)).isTrue();
  }

  /** Pages of the trade: P185/75R14 replaced by P205/75R14, 60 mph shown are 63 mph. */
  @Test
  void largerTiresAreFasterThanShownByThePublishedAmount() {
    double k = ratio("P185/75R14", "P205/75R14");
    assertThat(Speedometer.trueAfter(60, k)).isCloseTo(63, Offset.offset(0.5));
    assertThat(k).isCloseTo(1.0474, Offset.offset(0.0005));
  }

  private static double ratio(String before, String after) {
    return Speedometer.circumferenceRatio(diameter(before), diameter(after));
  }

  private static double diameter(String size) {
    TireDesignation tire = TireDesignation.parse(size);
    return TireDimensions.overallDiameter(
        tire.sectionWidthMillimeters(), tire.aspect().orElseThrow(), tire.rim().exactMillimeters());
  }

  /** UN R39, 5.3 allows no indication below the true speed; the condition k ≤ r follows from it. */
  @Property
  void neverReadingLowMeansNeverShowingLessThanTheTrueSpeed(
      @ForAll @DoubleRange(min = 1, max = 1.1) double overReading,
      @ForAll @DoubleRange(min = 0.9, max = 1.2) double k) {
    double trueSpeed = 80;
    double shown = Speedometer.indicatedAfter(trueSpeed * overReading, k);
    double reserve = Speedometer.reserve(overReading, k);
    if (Math.abs(reserve) > 1e-9) {
      assertThat(Speedometer.neverReadsLow(overReading, k)).isEqualTo(shown >= trueSpeed);
      assertThat(reserve > 0).isEqualTo(shown > trueSpeed);
    }
    assertThat(Speedometer.neverReadsLow(k, k)).isTrue();
  }

  @ParameterizedTest(name = "{0} mph, {1}, {2} in: {4}")
  @CsvFileSource(files = "shared/reference/gearing.csv", useHeadersInDisplayName = true)
  void engineSpeedIsThePublishedOneWithinTheRoundingOfTheDiameter(
      double mph, double ratio, double diameter, double rounding, double turns) {
    assertThat(turns)
        .isBetween(
            Gearing.engineSpeed(mph * MILE, ratio, (diameter + rounding) * INCH) - 0.5,
            Gearing.engineSpeed(mph * MILE, ratio, (diameter - rounding) * INCH) + 0.5);
  }

  /** Pages of the trade: 24.7 in and 3.91 give 18.8 mph per 1000 turns. */
  @Test
  void roadSpeedPerThousandTurnsIsThePublishedOne() {
    assertThat(Gearing.roadSpeed(1000, 3.91, 24.7 * INCH) / MILE)
        .isCloseTo(18.8, Offset.offset(0.05));
  }

  /** The rule of the trade, turns = mph × ratio × 336 / diameter in inches; 336 is rounded. */
  @ParameterizedTest
  @CsvSource({"65, 3.08, 28", "65, 3.73, 35", "30, 4.56, 33"})
  void engineSpeedFollowsTheRuleOfTheTrade(double mph, double ratio, double diameter) {
    double rule = mph * ratio * 336 / diameter;
    assertThat(Gearing.engineSpeed(mph * MILE, ratio, diameter * INCH))
        .isCloseTo(rule, Offset.offset(rule * 0.5 / 336));
  }

  /** Worked by hand: 815 to 838 mm, 4.30 acts like 4.18 and needs 4.42. */
  @Test
  void largerTiresActLikeATallerFinalDrive() {
    assertThat(Gearing.effectiveFinalDrive(4.30, 815, 838)).isCloseTo(4.18, Offset.offset(0.005));
    assertThat(Gearing.restoringFinalDrive(4.30, 815, 838)).isCloseTo(4.42, Offset.offset(0.005));
  }

  @Property
  void theRestoringFinalDriveBringsBackTheEngineSpeed(
      @ForAll @DoubleRange(min = 700, max = 900) double before,
      @ForAll @DoubleRange(min = 700, max = 1000) double after,
      @ForAll @DoubleRange(min = 10, max = 130) double speed) {
    double restored = Gearing.restoringFinalDrive(4.1, before, after);
    assertThat(Gearing.engineSpeed(speed, restored, after))
        .isCloseTo(Gearing.engineSpeed(speed, 4.1, before), Offset.offset(1e-6));
    assertThat(Gearing.roadSpeed(Gearing.engineSpeed(speed, 4.1, after), 4.1, after))
        .isCloseTo(speed, Offset.offset(1e-9));
  }
}
