package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.derive.HeightLedger.Corner;
import trammel.derive.HeightLedger.Line;
import trammel.fact.AirSpringLoad;
import trammel.quantity.Quantity;

/**
 * Heights on steel and air together, against closed forms and an independent bisection on the
 * balance of forces written out again here (own derivation). The vehicles are invented.
 */
class AirCornerTest {
  private static final double G = 9.80665;
  private static final double AIR = 101.325;

  @TempDir private Path folder;

  private Corner corner(String vehicle, String text) throws IOException {
    return Ledgers.of(DemoSheet.of(folder, vehicle, text), DemoSheet.DAY)
        .heights()
        .corners()
        .get(2);
  }

  private static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  private static String bags(String pressure, String payload) {
    return "changes:\n  - { add: CM-CB-AIR, at: rear }\naims:\n  inflate:\n"
        + "    - { at: rear, pressure: "
        + pressure
        + " }\n"
        + payload;
  }

  /** At a kept pressure and area: p · A · MRa = k · MR² · lift, with 38 N/mm at 0.95. */
  @Test
  void aBagOfOneAreaLiftsByItsForceOverTheWheelRate() throws IOException {
    Corner corner = corner("cairnback", bags("1.5 bar", ""));
    double expected = 0.15 * area(92) * 0.95 / (38 * 0.95 * 0.95);
    assertThat(corner.lines()).extracting(Line::what).containsExactly("air spring CM-CB-AIR");
    assertThat(corner.lines().get(0).lift().value()).isCloseTo(expected, within(1e-6));
  }

  /** 220 kg over the rear axle, half on each wheel: the coil takes what the bag leaves. */
  @Test
  void aLoadLowersWhatTheBagHasRaised() throws IOException {
    Corner corner =
        corner(
            "cairnback",
            bags(
                "1.5 bar",
                "  payload:\n    - { carries: tools, mass: 220 kg, fore: -2790 mm, out: 0 mm }\n"));
    double lift = (0.15 * area(92) * 0.95 - 110 * G) / (38 * 0.95 * 0.95);
    assertThat(corner.lines())
        .extracting(Line::what)
        .containsExactly("air spring CM-CB-AIR", "load");
    assertThat(sum(corner)).isCloseTo(lift, within(1e-6));
  }

  /** 118 mm, 0.25 mm less for each millimeter drawn out, at 0.9, over leaves of one rate. */
  @Test
  void aBagThatNecksLiftsLess() throws IOException {
    Corner corner =
        corner(
            "drayling",
            "changes:\n  - { add: CM-DR-AIR, at: rear }\naims:\n  inflate:\n    - { at: rear, pressure: 3 bar }\n");
    double rate = 58;
    double expected =
        new BisectionSolver(1e-12, 1e-12)
            .solve(500, x -> 0.3 * area(118 - 0.25 * 0.9 * x) * 0.9 - rate * x, 0, 300);
    assertThat(sum(corner))
        .isCloseTo(expected, within(1e-6))
        .isLessThan(0.3 * area(118) * 0.9 / rate);
  }

  /** Its valve shut, a load raises the pressure: Boyle's law and the balance, both unknown. */
  @Test
  void aShutBagTakesPartOfTheLoad() throws IOException {
    String text =
        """
        as-found:
          fitted:
            - { part: CM-CB-AIR, at: rear }
        changes:
          - { add: HR-2656517, at: all }
        measurements:
          pressures:
            - { at: rear-left, pressure: 150 kPa, state: as-found }
        aims:
          payload:
            - { carries: tools, mass: 220 kg, fore: -2790 mm, out: 0 mm }
        """;
    double wheelRate = 38 * 0.95 * 0.95;
    double found = 0.15 * area(92) * 0.95 / wheelRate;
    double lift =
        new BisectionSolver(1e-12, 1e-12)
            .solve(
                500,
                x -> {
                  double before = 1.1e6 + area(92) * 0.95 * found;
                  double after = 1.1e6 + area(92) * 0.95 * (found + x);
                  double pressure = (150 + AIR) * before / after - AIR;
                  return (pressure - 150) / 1000 * area(92) * 0.95 - wheelRate * x - 110 * G;
                },
                -200,
                0);
    Corner corner = corner("cairnback", text);
    assertThat(sum(corner)).isCloseTo(lift, within(1e-6)).isGreaterThan(-110 * G / wheelRate);
    AirSpringLoad load =
        DemoSheet.facts(DemoSheet.of(folder, "cairnback", text), AirSpringLoad.class).get(0);
    assertThat(load.pressure().value()).isGreaterThan(150);
  }

  /** What the gauge leaves open moves the height by as much as another pressure does. */
  @Test
  void theGaugesUncertaintyIsInTheHeight() throws IOException {
    double more = corner("cairnback", bags("155 kPa ± 0 kPa", "")).lines().get(0).lift().value();
    double less = corner("cairnback", bags("145 kPa ± 0 kPa", "")).lines().get(0).lift().value();
    Quantity exact = corner("cairnback", bags("150 kPa ± 0 kPa", "")).lines().get(0).lift();
    Quantity read = corner("cairnback", bags("150 kPa ± 5 kPa", "")).lines().get(0).lift();
    assertThat(Math.sqrt(Math.pow(read.expanded(), 2) - Math.pow(exact.expanded(), 2)))
        .isCloseTo((more - less) / 2, within(1e-4));
  }

  @Test
  void aBagThatNobodyHasSetLeavesTheHeightOpen() throws IOException {
    Corner corner = corner("cairnback", "changes:\n  - { add: CM-CB-AIR, at: rear }\n");
    assertThat(corner.lines().get(0).lift().isKnown()).isFalse();
  }

  private static double sum(Corner corner) {
    List<Line> lines = corner.lines();
    return lines.stream().mapToDouble(line -> line.lift().value()).sum();
  }
}
