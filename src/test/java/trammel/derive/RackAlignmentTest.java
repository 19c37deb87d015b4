package trammel.derive;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.alignment;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.fact.Alignment;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/** Alignment from printouts, where one hard point was never surveyed. Worked by hand. */
class RackAlignmentTest {
  private static final String LOW =
      """
          - at: front-left
            state: as-found
            height: 512 mm ± 0.1 mm
            camber: 0.2° ± 0.1°
            caster: 3.2° ± 0.2°
      """;
  private static final String HIGH =
      """
          - at: front-left
            state: as-found
            height: 532 mm ± 0.1 mm
            camber: 0.6° ± 0.1°
            caster: 2.8° ± 0.2°
      """;
  private static final String ENDS =
      """
            camber-from: -0.5°
            camber-to: 0.9°
            caster-from: 1.9°
            caster-to: 3.1°
      """;

  @TempDir private Path folder;

  private Alignment raised(double raise, String more, String... printouts) throws IOException {
    String sheet =
        "changes:\n  - { raise: "
            + raise
            + " mm ± 0.1 mm, at: front }\n"
            + more
            + "measurements:\n  heights:\n"
            + "    - { at: front-left, height: 512 mm ± 0.1 mm, state: as-found }\n"
            + (printouts.length == 0 ? "" : "  alignment:\n" + String.join("", printouts));
    return alignment(
        DemoSheet.altered(
            folder,
            "skerrow",
            List.of("      tie-rod-outer: { fore: -128 mm, out: 688 mm, up: 300 mm }\n"),
            List.of(""),
            sheet),
        Position.FRONT_LEFT);
  }

  /**
   * 0.4° of camber and −0.4° of caster over 20 mm: 0.02°/mm. At 542, 10 beyond the upper printout,
   * camber 0.6 + 0.2, caster 2.8 − 0.2.
   */
  @Test
  void twoPrintoutsAtTwoHeightsGiveTheChange() throws IOException {
    Alignment wheel = raised(30, "", LOW, HIGH);
    assertThat(wheel.depth()).isEqualTo("rack");
    assertThat(wheel.camber().value()).isCloseTo(0.8, within(1e-9));
    assertThat(wheel.caster().value()).isCloseTo(2.6, within(1e-9));
  }

  /**
   * Design: half of what is extrapolated. Camber: 0.5 · 0.02 · 10 = 0.1; upper printout 1.5 · 0.1,
   * lower 0.5 · 0.1; each of the heights 0.02 · 0.1 or less, which comes to little.
   */
  @Test
  void halfOfWhatIsExtrapolatedIsUncertain() throws IOException {
    Alignment wheel = raised(30, "", LOW, HIGH);
    assertThat(wheel.camber().expanded())
        .isCloseTo(Math.sqrt(0.1 * 0.1 + 0.15 * 0.15 + 0.05 * 0.05), within(0.0005));
    assertThat(wheel.caster().expanded())
        .isCloseTo(Math.sqrt(0.1 * 0.1 + 0.3 * 0.3 + 0.1 * 0.1), within(0.0005));
  }

  /**
   * Heights taken with a tape, ± 5 mm: the slope over 20 mm is as uncertain as they are. By hand,
   * camber a₂ + s (h − h₂), s = (a₂ − a₁)/(h₂ − h₁): by a₂ 1.5, by a₁ 0.5, by h 0.02, by h₂ 0.03,
   * by h₁ 0.01, and 0.1 extrapolated.
   */
  @Test
  void theSlopeIsAsUncertainAsTheHeightsOfThePrintouts() throws IOException {
    String low = LOW.replace("512 mm ± 0.1 mm", "512 mm ± 5 mm");
    String high = HIGH.replace("532 mm ± 0.1 mm", "532 mm ± 5 mm");
    double angles = 0.15 * 0.15 + 0.05 * 0.05;
    double heights = Math.pow(0.03 * 5, 2) + Math.pow(0.01 * 5, 2);
    assertThat(raised(30, "", low, high).camber().expanded())
        .isCloseTo(Math.sqrt(angles + heights + 0.1 * 0.1), within(0.001));
  }

  /** At 522, between both: half of each, nothing extrapolated. */
  @Test
  void betweenThePrintoutsNothingIsExtrapolated() throws IOException {
    Alignment wheel = raised(10, "", LOW, HIGH);
    assertThat(wheel.camber().value()).isCloseTo(0.4, within(1e-9));
    assertThat(wheel.camber().expanded())
        .isCloseTo(Math.sqrt(0.05 * 0.05 + 0.05 * 0.05), within(0.0005));
  }

  /**
   * At 542 the adjusters' ends, shown at 532, go up by 0.2 in camber and down by 0.2 in caster:
   * −0.3 to 1.1 and 1.7 to 2.9, against −0.75 to 0.75 and 2.5 to 4.
   */
  @Test
  void theAdjustersEndsGoWithTheHeight() throws IOException {
    Alignment wheel = raised(30, "", LOW, HIGH + ENDS);
    assertThat(wheel.camber().value()).isZero();
    assertThat(wheel.camberReserve().value()).isCloseTo(1.05, within(1e-9));
    assertThat(wheel.caster().value()).isCloseTo(2.9, within(1e-9));
    assertThat(wheel.casterReserve().value()).isCloseTo(0.4, within(1e-9));
  }

  /** What the arm's seller claims comes on top: −1.5° of camber, 2.2° of caster. */
  @Test
  void anArmBringsWhatItsSellerClaims() throws IOException {
    Alignment wheel = raised(30, "  - { add: LB-UA-SK-S, at: front }\n", LOW, HIGH);
    assertThat(wheel.camber().value()).isCloseTo(-0.7, within(1e-9));
    assertThat(wheel.caster().value()).isCloseTo(4.8, within(1e-9));
  }

  /**
   * Geometry.md, section 2: estimates of 0.45 to 0.8° of caster lost and about 0.5° of camber
   * gained for an inch, the sign itself not guaranteed.
   */
  @Test
  void onePrintoutLeavesAnEstimateWhoseSignIsOpen() throws IOException {
    Alignment wheel = raised(25.4, "", LOW);
    assertThat(wheel.depth()).isEqualTo("tape");
    assertThat(3.2 - wheel.caster().value()).isBetween(0.45, 0.8);
    assertThat(wheel.camber().value() - 0.2).isBetween(0.3, 0.6);
    assertThat(wheel.caster().expanded()).isGreaterThanOrEqualTo(3.2 - wheel.caster().value());
    assertThat(wheel.camber().expanded()).isGreaterThanOrEqualTo(wheel.camber().value() - 0.2);
  }

  @Test
  void nothingKnownAsksForTheRack() throws IOException {
    Alignment wheel = raised(30, "");
    assertThat(wheel.depth()).isEqualTo("tape");
    asks(wheel.camber(), Instrument.CAMBER_RACK, "as it stands");
    asks(wheel.caster(), Instrument.CASTER_RACK, "as it stands");
    asks(wheel.camberReserve(), Instrument.CAMBER_RACK, "two printouts at two heights");
    asks(wheel.casterReserve(), Instrument.CASTER_RACK, "two printouts at two heights");
  }

  private static void asks(Quantity quantity, Instrument by, String advice) {
    assertThat(quantity.isKnown()).isFalse();
    assertThat(requireNonNull(quantity.absence()).instrument()).isEqualTo(by);
    assertThat(requireNonNull(quantity.absence()).how()).contains(advice);
  }
}
