package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.facts;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.fact.AxleShift;

/**
 * The Skerrow's rear bar against the closed formula of geometry.md, section 3 (own, exact): the
 * axle moves toward the frame end's side by b(h₀) − b(h₀ + d − r), b(h) = √(L² − h² − a²).
 *
 * <p>Its frame end is on the right, 467 out, 485 up, −227 fore; its axle end on the left, 499 out,
 * 400 up, −205 fore: b(h₀) 966, h₀ 85, a 22.
 */
class PanhardFactsTest {
  private static final double SPAN = 966;
  private static final double RISE = 85;
  private static final double AFT = 22;

  @TempDir private Path folder;

  private AxleShift shift(double raise, String more) throws IOException {
    List<AxleShift> shifts =
        facts(
            DemoSheet.of(folder, "skerrow", DemoSheet.raised("", 0, raise, more)), AxleShift.class);
    assertThat(shifts).hasSize(1);
    return shifts.get(0);
  }

  /** Toward the frame end's side, which is the right (mm). */
  private static double toRight(double lift, double raised) {
    double rise = RISE + lift - raised;
    double length = Math.sqrt(SPAN * SPAN + RISE * RISE + AFT * AFT);
    return SPAN - Math.sqrt(length * length - rise * rise - AFT * AFT);
  }

  @ParameterizedTest
  @CsvSource({
    "28, lower, 25",
    "28, upper, 50",
    "55, lower, 25",
    "55, upper, 50",
    "10, lower, 25",
    "10, upper, 50",
    "40, lower, 25",
    "40, upper, 50"
  })
  void eachHoleShiftsTheAxleAsTheFormulaSays(double lift, String hole, double raised)
      throws IOException {
    AxleShift bar = shift(lift, "  - { add: LB-PK-SK, at: rear, hole: " + hole + " }\n");
    double right = toRight(lift, raised);
    assertThat(bar.hole()).isEqualTo(hole);
    assertThat(bar.shift().value()).isCloseTo(Math.abs(right), within(1e-6));
    assertThat(bar.toward()).isEqualTo(right > 0 ? "right" : "left");
    double lower = Math.abs(toRight(lift, 25));
    double upper = Math.abs(toRight(lift, 50));
    assertThat(bar.bestHole()).isEqualTo(lower < upper ? "lower" : "upper");
    assertThat(bar.bestShift().value()).isCloseTo(Math.min(lower, upper), within(1e-6));
    assertThat(bar.lost().value())
        .isCloseTo(Math.abs(right) - Math.min(lower, upper), within(1e-6));
  }

  /** The book's bar: nothing but the lift. */
  @ParameterizedTest
  @CsvSource({"28", "55", "-20"})
  void theBooksBarShiftsTheAxleAsTheFormulaSays(double lift) throws IOException {
    AxleShift bar = shift(lift, "");
    assertThat(bar.shift().value()).isCloseTo(Math.abs(toRight(lift, 0)), within(1e-6));
    assertThat(bar.toward()).isEqualTo(lift > 0 ? "right" : "left");
    assertThat(bar.slope().value())
        .isCloseTo(
            Math.toDegrees(Math.atan((RISE + lift) / (SPAN - toRight(lift, 0)))), within(1e-6));
    assertThat(bar.slopeBefore().value())
        .isCloseTo(Math.toDegrees(Math.atan(RISE / SPAN)), within(1e-6));
    assertThat(bar.hole()).isEmpty();
    assertThat(bar.lost().value()).isZero();
  }

  /** 28 mm in the lower hole leaves 3 mm of lift; in the upper one it is 22 mm too many. */
  @Test
  void withoutAHoleNamedTheBestOneIsMeant() throws IOException {
    assertThat(shift(28, "  - { add: LB-PK-SK, at: rear }\n").hole()).isEqualTo("lower");
    assertThat(shift(55, "  - { add: LB-PK-SK, at: rear }\n").hole()).isEqualTo("upper");
  }

  /** L' = √(b₀² + (h₀ + d)² + a²); its thread goes from 955 to 1010. */
  @Test
  void anAdjustableBarCentersTheAxle() throws IOException {
    AxleShift bar = shift(55, "  - { add: LB-PB-SK, at: rear }\n");
    double length = Math.sqrt(SPAN * SPAN + Math.pow(RISE + 55, 2) + AFT * AFT);
    assertThat(length).isBetween(955.0, 1010.0);
    assertThat(bar.recenters().value()).isCloseTo(length, within(1e-6));
    assertThat(bar.shift().value()).isCloseTo(0, within(1e-6));
  }

  /**
   * To first order a shift d·(h₀ + d/2)/b changes by (h/b) for each mm of lift: U of the lift and
   * of both heights, by h/b and by their difference.
   */
  @Test
  void theShiftIsAsUncertainAsLiftAndEnds() throws IOException {
    AxleShift bar =
        facts(
                DemoSheet.of(
                    folder, "skerrow", "changes:\n  - { raise: 40 mm ± 6 mm, at: rear }\n"),
                AxleShift.class)
            .get(0);
    double rise = RISE + 40;
    double after = SPAN - toRight(40, 0);
    double byLift = 6 * rise / after;
    double byHeight = 2 * (rise / after - RISE / after);
    double bySpan = 2 * (1 - SPAN / after);
    double expected = Math.sqrt(byLift * byLift + 2 * byHeight * byHeight + 2 * bySpan * bySpan);
    assertThat(bar.shift().expanded()).isCloseTo(expected, within(0.01));
  }
}
