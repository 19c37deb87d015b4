package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.DoubleBinaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trammel.physics.WheelRate.OfTwo;

/** The square of the ratio: Automotive Chassis Engineering, p. 179; the figures are own. */
class WheelRateTest {

  @Test
  void theRatioCountsTwice() {
    OfTwo rate = WheelRate.of(50, 0.75);
    assertThat(rate.value()).isEqualTo(28.125);
    assertThat(WheelRate.frequency(rate.value(), 350).value())
        .isCloseTo(1.427, Offset.offset(0.0005));
  }

  /** A page of the trade: the cosine of the lean is squared; cos² 30° = 3/4. Common practice. */
  @Test
  void theCosineOfALeanCountsTwice() {
    double ratio = WheelRate.leaningRatio(0.8, 30).value();
    assertThat(WheelRate.of(60, ratio).value()).isCloseTo(60 * 0.64 * 0.75, Offset.offset(1e-9));
  }

  /** By hand: 40 and 120 N/mm give 160 side by side, and 30 one on the other. */
  @Test
  void springsCombine() {
    assertThat(WheelRate.parallel(40, 120).value()).isEqualTo(160);
    assertThat(WheelRate.series(40, 120).value()).isEqualTo(30);
    assertThat(WheelRate.rideRate(40, 120)).isEqualTo(WheelRate.series(40, 120));
  }

  @ParameterizedTest(name = "{0} mm: {2} mm")
  @CsvFileSource(files = "shared/reference/spacer-on-coil-over.csv", useHeadersInDisplayName = true)
  void aSpacerRaisesByItsThicknessOverTheRatio(double spacer, double ratio, double rise) {
    FittedSpring found = new FittedSpring(SpringCurve.linear(92), 380, 150, 0);
    SpringPath path = new SpringPath.Constant(310, ratio);
    double before = RideBalance.of(found, path, 3800, -200, 200).travel();
    double after = RideBalance.of(found.withSpacer(spacer), path, 3800, -200, 200).travel();
    assertThat(before - after).isCloseTo(rise, Offset.offset(0.001 * rise));
  }

  @Test
  void derivativesAreThoseOfTheFormulas() {
    assertPartials((k, r) -> WheelRate.of(k, r).value(), 50, 0.75, WheelRate.of(50, 0.75));
    assertPartials(
        (r, a) -> WheelRate.leaningRatio(r, a).value(), 0.8, 25, WheelRate.leaningRatio(0.8, 25));
    assertPartials((a, b) -> WheelRate.parallel(a, b).value(), 4, 9, WheelRate.parallel(4, 9));
    assertPartials((a, b) -> WheelRate.series(a, b).value(), 40, 250, WheelRate.series(40, 250));
    assertPartials(
        (k, m) -> WheelRate.frequency(k, m).value(), 28, 350, WheelRate.frequency(28, 350));
  }

  @Test
  void impossibleInputsAreRefused() {
    assertThatThrownBy(() -> WheelRate.of(50, 0)).hasMessageContaining("motion ratio");
    assertThatThrownBy(() -> WheelRate.leaningRatio(0.8, 90)).hasMessageContaining("lean");
    assertThatThrownBy(() -> WheelRate.frequency(28, 0)).hasMessageContaining("mass");
  }

  private static void assertPartials(
      DoubleBinaryOperator function, double first, double second, OfTwo stated) {
    Partial.assertPartial(x -> function.applyAsDouble(x, second), first, stated.perFirst());
    Partial.assertPartial(x -> function.applyAsDouble(first, x), second, stated.perSecond());
  }
}
