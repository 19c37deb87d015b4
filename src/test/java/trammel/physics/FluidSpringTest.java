package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trammel.physics.FluidSpring.Change;
import trammel.physics.FluidSpring.Pressure;
import trammel.physics.FluidSpring.Spacer;

/** Own numbers throughout: no published pressures of such a system were found. */
class FluidSpringTest {
  private static final Offset<Double> LAST_DIGIT = Offset.offset(0.5);

  @ParameterizedTest(name = "{0}: {8} to {9} MPa")
  @CsvFileSource(files = "shared/reference/fluid-beside-spring.csv", useHeadersInDisplayName = true)
  void aHigherSetHeightLoadsTheFluid(
      String axle,
      double rate,
      double springRatio,
      double ramRatio,
      double area,
      double load,
      double springForce,
      double lift,
      double pressure,
      double lifted) {
    double found = FluidSpring.pressure(load, springForce, springRatio, area, ramRatio).value();
    double added = FluidSpring.lift(rate, springRatio, lift, area, ramRatio).value();
    assertThat(found).as(axle).isCloseTo(1000 * pressure, LAST_DIGIT);
    assertThat(found + added).as(axle).isCloseTo(1000 * lifted, LAST_DIGIT);
    double extended = springForce - rate * springRatio * lift;
    assertThat(FluidSpring.pressure(load, extended, springRatio, area, ramRatio).value())
        .isCloseTo(found + added, Offset.offset(1e-9));
  }

  @Test
  void springShareFallsWithTheLift() {
    assertThat(FluidSpring.springShare(6400, 6150, 0.62)).isCloseTo(0.60, Offset.offset(0.005));
    assertThat(FluidSpring.springShare(6400, 6150 - 92 * 0.62 * 40, 0.62))
        .isCloseTo(0.37, Offset.offset(0.005));
  }

  @Test
  void aSpacerBringsThePressureDownAgain() {
    double lifted = 9078;
    assertThat(lifted + FluidSpring.spacer(92, 0.62, 15, 760, 0.58).value())
        .isCloseTo(7137, Offset.offset(1.0));
    assertThat(lifted + FluidSpring.spacer(92, 0.62, 24.8, 760, 0.58).value())
        .isCloseTo(5869, Offset.offset(1.0));
    assertThat(FluidSpring.spacerFor(9078 - 5869, 92, 0.62, 760, 0.58).value())
        .isCloseTo(24.8, Offset.offset(0.01));
  }

  @Test
  void theRatioTimesTheLiftRestoresThePressureAndASpacerTakenOutCancels() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      double rate = 15 + 150 * random.nextDouble();
      double ratio = 0.4 + 0.7 * random.nextDouble();
      double lift = 120 * random.nextDouble();
      double area = 300 + 900 * random.nextDouble();
      double ramRatio = 0.4 + 0.7 * random.nextDouble();
      double added = FluidSpring.lift(rate, ratio, lift, area, ramRatio).value();
      double taken = FluidSpring.spacer(rate, ratio, ratio * lift, area, ramRatio).value();
      assertThat(added).isNotNegative();
      assertThat(added + taken).isCloseTo(0, Offset.offset(1e-9));
      assertThat(FluidSpring.spacerFor(added, rate, ratio, area, ramRatio).value())
          .isCloseTo(ratio * lift, Offset.offset(1e-10));
      assertThat(taken + FluidSpring.spacer(rate, ratio, -ratio * lift, area, ramRatio).value())
          .isZero();
    }
  }

  @Test
  void derivativesAreThoseOfTheFormulas() {
    Pressure p = FluidSpring.pressure(6400, 6150, 0.62, 760, 0.58);
    Partial.assertPartial(
        w -> FluidSpring.pressure(w, 6150, 0.62, 760, 0.58).value(), 6400, p.perLoad());
    Partial.assertPartial(
        f -> FluidSpring.pressure(6400, f, 0.62, 760, 0.58).value(), 6150, p.perSpringForce());
    Partial.assertPartial(
        r -> FluidSpring.pressure(6400, 6150, r, 760, 0.58).value(), 0.62, p.perSpringRatio());
    Partial.assertPartial(
        a -> FluidSpring.pressure(6400, 6150, 0.62, a, 0.58).value(), 760, p.perArea());
    Partial.assertPartial(
        r -> FluidSpring.pressure(6400, 6150, 0.62, 760, r).value(), 0.58, p.perRamRatio());
    Partial.assertPartial(FluidSpring::ramArea, 31, FluidSpring.ramAreaPerDiameter(31));
  }

  @Test
  void derivativesOfChangesAreThoseOfTheFormulas() {
    Change lift = FluidSpring.lift(92, 0.62, 40, 760, 0.58);
    Partial.assertPartial(
        k -> FluidSpring.lift(k, 0.62, 40, 760, 0.58).value(), 92, lift.perRate());
    Partial.assertPartial(
        r -> FluidSpring.lift(92, r, 40, 760, 0.58).value(), 0.62, lift.perSpringRatio());
    Partial.assertPartial(
        x -> FluidSpring.lift(92, 0.62, x, 760, 0.58).value(), 40, lift.perMove());
    Partial.assertPartial(
        a -> FluidSpring.lift(92, 0.62, 40, a, 0.58).value(), 760, lift.perArea());
    Partial.assertPartial(
        r -> FluidSpring.lift(92, 0.62, 40, 760, r).value(), 0.58, lift.perRamRatio());
    Change spacer = FluidSpring.spacer(92, 0.62, 15, 760, 0.58);
    Partial.assertPartial(
        k -> FluidSpring.spacer(k, 0.62, 15, 760, 0.58).value(), 92, spacer.perRate());
    Partial.assertPartial(
        r -> FluidSpring.spacer(92, r, 15, 760, 0.58).value(), 0.62, spacer.perSpringRatio());
    Partial.assertPartial(
        t -> FluidSpring.spacer(92, 0.62, t, 760, 0.58).value(), 15, spacer.perMove());
    Partial.assertPartial(
        a -> FluidSpring.spacer(92, 0.62, 15, a, 0.58).value(), 760, spacer.perArea());
    Partial.assertPartial(
        r -> FluidSpring.spacer(92, 0.62, 15, 760, r).value(), 0.58, spacer.perRamRatio());
    Spacer wanted = FluidSpring.spacerFor(3200, 92, 0.62, 760, 0.58);
    Partial.assertPartial(
        p -> FluidSpring.spacerFor(p, 92, 0.62, 760, 0.58).value(), 3200, wanted.perFall());
    Partial.assertPartial(
        k -> FluidSpring.spacerFor(3200, k, 0.62, 760, 0.58).value(), 92, wanted.perRate());
    Partial.assertPartial(
        r -> FluidSpring.spacerFor(3200, 92, r, 760, 0.58).value(), 0.62, wanted.perSpringRatio());
    Partial.assertPartial(
        a -> FluidSpring.spacerFor(3200, 92, 0.62, a, 0.58).value(), 760, wanted.perArea());
    Partial.assertPartial(
        r -> FluidSpring.spacerFor(3200, 92, 0.62, 760, r).value(), 0.58, wanted.perRamRatio());
  }

  @Test
  void impossibleRamsAreRefused() {
    assertThatThrownBy(() -> FluidSpring.pressure(6400, 6150, 0.62, 0, 0.58))
        .hasMessageContaining("ram area");
    assertThatThrownBy(() -> FluidSpring.lift(92, 0.62, 40, 760, 0))
        .hasMessageContaining("motion ratio of the ram");
    assertThatThrownBy(() -> FluidSpring.ramArea(-1)).hasMessageContaining("ram diameter");
  }
}
