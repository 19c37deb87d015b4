package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class GasSpringTest {

  /**
   * Sample strut of Shock and Vibration 2021, 5526106, table 1: piston 110 mm, static gas 9.25 MPa
   * in 1.2 l, index 1.4, the pressure taken as absolute. 975 N/mm is own, n p A² / V.
   */
  @Test
  void theSampleStrutIsAsStiffAsItsParametersSay() {
    double area = FluidSpring.ramArea(110);
    double gauge = 9250 - GasSpring.ATMOSPHERE;
    double charge = 4000;
    double chargeVolume = 1.2 * 9250 / (charge + GasSpring.ATMOSPHERE);
    assertThat(GasSpring.volume(gauge, charge, chargeVolume).orElseThrow().value())
        .isCloseTo(1.2, Offset.offset(1e-12));
    assertThat(rate(1.4, gauge, charge, chargeVolume, area, 1)).isCloseTo(975, Offset.offset(0.5));
  }

  /** Own numbers, as rounded: 7.9 N/mm at 5.869 MPa is 18.8 at 9.078, whatever the charge. */
  @Test
  void aLiftMakesTheGasMoreThanTwiceAsStiff() {
    double stiffer = rate(1.4, 9078, 4000, 0.3, 760, 0.58) / rate(1.4, 5869, 4000, 0.3, 760, 0.58);
    assertThat(stiffer).isBetween(18.75 / 7.95, 18.85 / 7.85);
  }

  @Test
  void stiffnessGrowsWithTheSquareOfTheAbsolutePressure() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double charge = 1000 + 3000 * random.nextDouble();
      double lower = charge + 1 + 4000 * random.nextDouble();
      double factor = 1 + random.nextDouble();
      double higher = factor * (lower + GasSpring.ATMOSPHERE) - GasSpring.ATMOSPHERE;
      assertThat(rate(1.3, higher, charge, 0.4, 700, 0.6) / rate(1.3, lower, charge, 0.4, 700, 0.6))
          .isCloseTo(factor * factor, Offset.offset(1e-12));
    }
  }

  /** The rate is the slope of p₁ (V₁ / V)ⁿ · A · MRc over wheel travel, taken by differences. */
  @Test
  void theRateIsTheSlopeOfThePolytropicForce() {
    double pressure = 5869;
    double area = 760;
    double ratio = 0.58;
    double volume = GasSpring.volume(pressure, 3500, 0.35).orElseThrow().value();
    double stated = rate(1.3, pressure, 3500, 0.35, area, ratio);
    Partial.assertPartial(
        travel -> {
          double compressed = volume - area * ratio * travel / 1e6;
          double absolute = (pressure + GasSpring.ATMOSPHERE) * Math.pow(volume / compressed, 1.3);
          return absolute / 1000 * area * ratio;
        },
        0,
        stated);
  }

  @Test
  void derivativesAreThoseOfTheFormulas() {
    GasSpring.Volume v = GasSpring.volume(5869, 3500, 0.35).orElseThrow();
    Partial.assertPartial(
        p -> GasSpring.volume(p, 3500, 0.35).orElseThrow().value(), 5869, v.perPressure());
    Partial.assertPartial(
        p -> GasSpring.volume(5869, p, 0.35).orElseThrow().value(), 3500, v.perChargePressure());
    Partial.assertPartial(
        x -> GasSpring.volume(5869, 3500, x).orElseThrow().value(), 0.35, v.perChargeVolume());
    GasSpring.Rate k = GasSpring.rate(1.3, 5869, 3500, 0.35, 760, 0.58).orElseThrow();
    Partial.assertPartial(n -> rate(n, 5869, 3500, 0.35, 760, 0.58), 1.3, k.perIndex());
    Partial.assertPartial(p -> rate(1.3, p, 3500, 0.35, 760, 0.58), 5869, k.perPressure());
    Partial.assertPartial(p -> rate(1.3, 5869, p, 0.35, 760, 0.58), 3500, k.perChargePressure());
    Partial.assertPartial(x -> rate(1.3, 5869, 3500, x, 760, 0.58), 0.35, k.perChargeVolume());
    Partial.assertPartial(a -> rate(1.3, 5869, 3500, 0.35, a, 0.58), 760, k.perArea());
    Partial.assertPartial(r -> rate(1.3, 5869, 3500, 0.35, 760, r), 0.58, k.perRamRatio());
  }

  @Test
  void belowTheChargePressureNoGasMoves() {
    assertThat(GasSpring.volume(3000, 3500, 0.35)).isEmpty();
    assertThat(GasSpring.rate(1.3, 3500, 3500, 0.35, 760, 0.58)).isEmpty();
    assertThatThrownBy(() -> GasSpring.volume(3000, 3500, 0)).hasMessageContaining("charge volume");
  }

  private static double rate(
      double index, double pressure, double charge, double volume, double area, double ratio) {
    return GasSpring.rate(index, pressure, charge, volume, area, ratio).orElseThrow().value();
  }
}
