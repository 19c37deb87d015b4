package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** T / 2h, NHTSA, rollover rulemaking, chapter 5; the vehicle is worked by hand. */
class StabilityFactorTest {

  @Test
  void aLiftLowersItAndSpacersGiveSomeBack() {
    assertThat(StabilityFactor.of(1643, 730)).isCloseTo(1.125, Offset.offset(0.0005));
    double raised = 730 + StabilityFactor.rise(50, 0.85, 11.5);
    assertThat(raised).isCloseTo(784, Offset.offset(0.05));
    assertThat(StabilityFactor.of(1643, raised)).isCloseTo(1.048, Offset.offset(0.0005));
    assertThat(StabilityFactor.of(1643 + 2 * 25, raised)).isCloseTo(1.080, Offset.offset(0.0005));
  }

  /** On level ground a vehicle tips where lateral force × height = weight × half track. */
  @Test
  void itIsTheLateralAccelerationThatLiftsTheInnerWheels() {
    double weight = 2000;
    double factor = StabilityFactor.of(1600, 700);
    assertThat(factor * weight * 700).isCloseTo(weight * 1600 / 2, Offset.offset(1e-6));
  }

  @Test
  void derivativesAreThoseOfTheFormula() {
    Partial.assertPartial(
        t -> StabilityFactor.of(t, 730), 1643, StabilityFactor.perTrack(1643, 730));
    Partial.assertPartial(
        h -> StabilityFactor.of(1643, h), 730, StabilityFactor.perHeight(1643, 730));
  }

  @Test
  void impossibleVehiclesAreRefused() {
    assertThatThrownBy(() -> StabilityFactor.of(1643, 0)).hasMessageContaining("center of gravity");
    assertThatThrownBy(() -> StabilityFactor.rise(50, 1.2, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("raised fraction");
  }
}
