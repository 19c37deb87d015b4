package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.DAY;
import static trammel.derive.DemoSheet.alignment;
import static trammel.derive.DemoSheet.raised;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.fact.Standing;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * What the body's attitude adds to caster. Geometry.md, section 2 (own derivation; signs from a
 * maker's published correction for frame angle): up in front adds atan(d/L).
 */
class RakeTest {
  @TempDir private Path folder;

  private Build skerrow(String from, String sheet) throws IOException {
    return DemoSheet.altered(
        folder,
        "skerrow",
        List.of("caster-from: frame", "wheelbase: 2850 mm"),
        List.of("caster-from: " + from, "wheelbase: 2800 mm"),
        sheet);
  }

  private static Quantity rake(Build build) {
    return Rake.of(
        new Derivation(build, DAY), build.vehicle().axle(Axle.FRONT).alignment(), Side.LEFT);
  }

  @ParameterizedTest
  @CsvSource({"50, 0, 1.02", "0, 50, -1.02", "50, 50, 0", "20, 50, -0.61", "-30, 0, -0.61"})
  void raisingTheFrontAloneAddsToCasterToldFromTheGround(double front, double rear, double rake)
      throws IOException {
    String sheet = raised("seized", front, rear, "");
    assertThat(rake(skerrow("ground", sheet)).value()).isCloseTo(rake, within(0.005));
    assertThat(rake(skerrow("frame", sheet)).value()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"50, 0, 1.023", "50, 20, 0.614", "30, 30, 0"})
  void theRackShowsTheRakeAndTheFrameDoesNot(double front, double rear, double rake)
      throws IOException {
    String sheet = raised("seized", front, rear, "");
    double ground = alignment(skerrow("ground", sheet), Position.FRONT_LEFT).caster().value();
    double frame = alignment(skerrow("frame", sheet), Position.FRONT_LEFT).caster().value();
    assertThat(ground - frame).isCloseTo(rake, within(0.001));
    double camber = alignment(skerrow("ground", sheet), Position.FRONT_LEFT).camber().value();
    assertThat(camber)
        .isEqualTo(alignment(skerrow("frame", sheet), Position.FRONT_LEFT).camber().value());
  }

  /** Raising the rear alone takes caster told from the ground: the changes touch it. */
  @Test
  void raisingTheRearAloneIsAChangeOfCasterToldFromTheGround() throws IOException {
    String sheet = raised("seized", 0, 50, "");
    assertThat(alignment(skerrow("ground", sheet), Position.FRONT_LEFT).standing())
        .isEqualTo(Standing.WORSE_OR_NEW);
  }

  /** Own derivation: half the difference of the diameters, over the wheelbase. */
  @Test
  void largerTiresInFrontRakeItToo() throws IOException {
    Build build = skerrow("ground", "changes:\n  - { add: HR-2757017, at: front }\n");
    Derivation derivation = new Derivation(build, DAY);
    double taller =
        (derivation.after(Position.FRONT_LEFT).diameter.value()
                - derivation.before(Position.FRONT_LEFT).diameter.value())
            / 2;
    assertThat(taller).isGreaterThan(5);
    assertThat(rake(build).value())
        .isCloseTo(Math.toDegrees(Math.atan(taller / 2800)), within(1e-9));
  }

  /** Own derivation: U of each raise goes in with 1/L. */
  @Test
  void theRakeIsAsUncertainAsBothRaises() throws IOException {
    Build build =
        skerrow(
            "ground",
            "changes:\n  - { raise: 50 mm ± 3 mm, at: front }\n  - { raise: 20 mm ± 4 mm, at: rear }\n");
    assertThat(rake(build).expanded()).isCloseTo(Math.toDegrees(5.0 / 2800), within(0.001));
  }
}
