package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.physics.HubGeometry.Backspace.FROM_BEAD_SEAT;
import static trammel.physics.HubGeometry.Backspace.FROM_FLANGE_EDGE;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.designation.ThreadSize;

class HubGeometryTest {
  private static final double INCH = 25.4;

  @ParameterizedTest(name = "{0} studs on {1}: {2} apart")
  @CsvFileSource(files = "shared/reference/bolt-circle.csv", useHeadersInDisplayName = true)
  void neighborsStandAsFarApartAsPublished(
      int count, double circle, double chord, double tolerance) {
    assertThat(HubGeometry.chord(circle, count, 1)).isCloseTo(chord, Offset.offset(tolerance));
    assertThat(HubGeometry.circle(chord, count, 1))
        .isCloseTo(circle, Offset.offset(tolerance / HubGeometry.chordFactor(count, 1)));
  }

  /** Pages of the trade: opposite studs stand on the diameter; five studs, skip one, times 1.05. */
  @Test
  void otherStudsGiveTheCircleByTheFactorsOfTheTrade() {
    assertThat(HubGeometry.circle(114.3, 4, 2)).isCloseTo(114.3, Offset.offset(1e-9));
    assertThat(HubGeometry.circle(139.7, 6, 3)).isCloseTo(139.7, Offset.offset(1e-9));
    assertThat(HubGeometry.circle(165.1, 8, 4)).isCloseTo(165.1, Offset.offset(1e-9));
    assertThat(HubGeometry.circle(1, 5, 2)).isCloseTo(1.05, Offset.offset(0.005));
    assertThat(HubGeometry.circle(1, 3, 1)).isCloseTo(1.154, Offset.offset(0.001));
  }

  @Property
  void chordAndCircleAreInverse(
      @ForAll @IntRange(min = 3, max = 10) int count,
      @ForAll @DoubleRange(min = 90, max = 250) double circle) {
    for (int step = 1; step <= count / 2; step++) {
      assertThat(HubGeometry.circle(HubGeometry.chord(circle, count, step), count, step))
          .isCloseTo(circle, Offset.offset(1e-9));
    }
  }

  /**
   * A shop page prints, by the short rule, 10 in with +25 as about 6 in and with −25 as about 4 in
   * (common practice); the other rows are the two conventions worked by hand.
   */
  @ParameterizedTest
  @CsvSource({
    "7, 0, 4.000, 3.500",
    "8, 45, 6.272, 5.772",
    "9, 12, 5.472, 4.972",
    "10, 25, 6.484, 5.984",
    "10, -25, 4.516, 4.016",
    "8.5, -10, 4.356, 3.856",
  })
  void backspaceHasTwoConventionsHalfAnInchApart(
      double width, double offset, double fromFlange, double fromBeadSeat) {
    assertThat(FROM_FLANGE_EDGE.of(width * INCH, offset) / INCH)
        .isCloseTo(fromFlange, Offset.offset(0.0005));
    assertThat(FROM_BEAD_SEAT.of(width * INCH, offset) / INCH)
        .isCloseTo(fromBeadSeat, Offset.offset(0.0005));
    assertThat(FROM_FLANGE_EDGE.offset(width * INCH, fromFlange * INCH))
        .isCloseTo(offset, Offset.offset(0.0005 * INCH));
    assertThat(FROM_BEAD_SEAT.offset(width * INCH, fromBeadSeat * INCH))
        .isCloseTo(offset, Offset.offset(0.0005 * INCH));
  }

  /**
   * Pages of the trade: at +45, an 8 in rim reaches half an inch further inboard than a 7 in one.
   */
  @Test
  void aWiderRimOfTheSameOffsetGrowsHalfOnEitherSide() {
    double seven = HubGeometry.inboardEdge(7 * INCH, 45);
    double eight = HubGeometry.inboardEdge(8 * INCH, 45);
    assertThat(eight - seven).isCloseTo(INCH / 2, Offset.offset(1e-9));
  }

  /** Worked by hand: offset 45 to 20 widens the track by 50 and the scrub by 25. */
  @Test
  void lessOffsetWidensTheTrackByTwiceAndTheScrubByOnce() {
    assertThat(HubGeometry.trackChange(45, 20)).isEqualTo(50);
    assertThat(HubGeometry.scrubChange(20 - 45, 0, 12)).isEqualTo(25);
    assertThat(HubGeometry.scrubChange(20 - 45, 16, 12)).isCloseTo(21.6, Offset.offset(0.05));
    assertThat(HubGeometry.trackChange(45, HubGeometry.effectiveOffset(45, 25))).isEqualTo(50);
  }

  @Property
  void aSpacerMovesBothEdgesOutboardByItsThickness(
      @ForAll @DoubleRange(min = 150, max = 400) double width,
      @ForAll @DoubleRange(min = -60, max = 60) double offset,
      @ForAll @DoubleRange(min = 0, max = 60) double spacer) {
    double acting = HubGeometry.effectiveOffset(offset, spacer);
    double outboard = HubGeometry.outboardEdge(width, acting);
    double inboard = HubGeometry.inboardEdge(width, acting);
    assertThat(outboard + inboard).isCloseTo(width, Offset.offset(1e-9));
    assertThat(outboard - HubGeometry.outboardEdge(width, offset))
        .isCloseTo(spacer, Offset.offset(1e-9));
    assertThat(HubGeometry.inboardEdge(width, offset) - inboard)
        .isCloseTo(spacer, Offset.offset(1e-9));
  }

  @Test
  void scrubChangeStatesItsDerivative() {
    Partial.assertPartial(
        kpi -> HubGeometry.scrubChange(-25, 16, kpi),
        12,
        HubGeometry.scrubChangePerInclination(16, 12));
  }

  @ParameterizedTest(name = "{0}: {1} turns")
  @CsvFileSource(files = "shared/reference/thread-turns.csv", useHeadersInDisplayName = true)
  void oneDiameterOfThreadTakesThePublishedTurns(String thread, double turns, int decimals) {
    ThreadSize size = ThreadSize.parse(thread);
    double engagement = size.diameterMillimeters();
    assertThat(HubGeometry.threadTurns(engagement, size.pitchMillimeters()))
        .isCloseTo(turns, Offset.offset(0.5 * Math.pow(10, -decimals) + 1e-9));
    assertThat(HubGeometry.threadDiameters(engagement, size.diameterMillimeters())).isEqualTo(1);
  }

  @Test
  void aSlipOnSpacerTakesItsThicknessFromThreadAndPilot() {
    assertThat(HubGeometry.engagementLeft(18, 5)).isEqualTo(13);
    assertThat(HubGeometry.engagementLeft(18, 20)).isZero();
    assertThat(HubGeometry.pilotLeft(9, 5)).isEqualTo(4);
    assertThat(HubGeometry.pilotLeft(9, 12)).isZero();
  }

  @Test
  void impossibleHubsAreRefused() {
    assertThatThrownBy(() -> HubGeometry.chord(100, 2, 1)).hasMessageContaining("number of studs");
    assertThatThrownBy(() -> HubGeometry.chord(100, 5, 3)).hasMessageContaining("step");
    assertThatThrownBy(() -> HubGeometry.effectiveOffset(10, -3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("spacer thickness; expected 0 or more");
  }
}
