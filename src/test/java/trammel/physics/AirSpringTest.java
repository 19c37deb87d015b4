package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Air springs against textbook forms written out again, and the rate against the slope of the force
 * under the gas law itself, the volume integrated in slices (own derivation).
 */
class AirSpringTest {
  private static final double AIR = 101.325;

  /** 100 mm at 400 kPa: 0.4 MPa · 7853.98 mm² = 3141.6 N. */
  @Test
  void itCarriesPressureTimesArea() {
    assertThat(new AirSpring(100, 0, 2).force(400, 30)).isCloseTo(3141.593, within(1e-3));
    assertThat(new AirSpring(100, -0.5, 2).force(400, 40)).isCloseTo(2010.619, within(1e-3));
  }

  /** A piston of constant area over a column of height h: k = n · p · A / h, absolute. */
  @Test
  void aPistonIsAsStiffAsItsColumnIsShort() {
    double area = Math.PI / 4 * 100 * 100;
    AirSpring piston = new AirSpring(100, 0, area * 200 / 1e6);
    assertThat(piston.rate(1.4, 400, 0))
        .isCloseTo(1.4 * (400 + AIR) / 1000 * area / 200, within(1e-9));
    assertThat(piston.settled(400, 0, -100)).isCloseTo(2 * (400 + AIR) - AIR, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "92, 0, 1.1, 150, 0",
    "118, -0.25, 2.2, 350, 25",
    "118, -0.25, 2.2, 350, -40",
    "80, 0.3, 0.9, 600, 10"
  })
  void itsRateIsTheSlopeOfItsForce(
      double diameter, double perLength, double volume, double pressure, double drawnOut) {
    AirSpring air = new AirSpring(diameter, perLength, volume);
    double step = 1e-3;
    double index = 1.3;
    double less = force(diameter, perLength, volume, pressure, drawnOut, drawnOut - step, index);
    double more = force(diameter, perLength, volume, pressure, drawnOut, drawnOut + step, index);
    assertThat(air.rate(index, pressure, drawnOut))
        .isCloseTo((less - more) / (2 * step), within(1e-5));
  }

  /** Force at a length, from the pressure at another, by p V^n. */
  private static double force(
      double diameter,
      double perLength,
      double volume,
      double pressure,
      double from,
      double to,
      double index) {
    double before = swept(diameter, perLength, from) + volume * 1e6;
    double after = swept(diameter, perLength, to) + volume * 1e6;
    double absolute = (pressure + AIR) * Math.pow(before / after, index);
    double d = diameter + perLength * to;
    return (absolute - AIR) / 1000 * Math.PI / 4 * d * d;
  }

  private static double swept(double diameter, double perLength, double length) {
    int slices = 20000;
    double sum = 0;
    for (int i = 0; i < slices; i++) {
      double d = diameter + perLength * length * (i + 0.5) / slices;
      sum += Math.PI / 4 * d * d * length / slices;
    }
    return sum;
  }

  @Test
  void withoutAreaOrAirThereIsNone() {
    assertThatThrownBy(() -> new AirSpring(0, 0, 1)).hasMessageContaining("effective diameter");
    assertThatThrownBy(() -> new AirSpring(90, 0, 0)).hasMessageContaining("volume");
  }
}
