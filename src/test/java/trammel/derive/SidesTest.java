package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.fact.FluidLoad;
import trammel.subject.Position;

/** What is worked out for the left side alone, against each side worked out by itself. */
class SidesTest {
  private static final String RAISED =
      """
      changes:
        - { raise: 30 mm, at: front }
        - { raise: 30 mm, at: rear }
        - { add: LS-SK-F20, at: front }
        - { add: LS-SK-R30, at: rear }
      """;

  private static final String HIGHER_SPRINGS =
      """
      changes:
        - { add: CM-CB-R40H, at: rear }
      """;

  /** A reading that no ledger goes by, at each wheel on the right: it only tells sides apart. */
  private static final String TOLD_APART =
      """
      measurements:
        heights:
          - { at: front-right, height: 500 mm, state: book }
          - { at: rear-right, height: 500 mm, state: book }
      """;

  @TempDir Path folder;

  private Position like(Build build, Position position) {
    return new Derivation(build, DemoSheet.DAY).sides().like(position);
  }

  private static Stream<Arguments> alike() {
    return Stream.of(Arguments.of("skerrow", RAISED), Arguments.of("cairnback", HIGHER_SPRINGS));
  }

  @ParameterizedTest
  @MethodSource("alike")
  void alikeSidesHaveTheFiguresThatEachHasAlone(String vehicle, String changes) throws IOException {
    Build alike = DemoSheet.of(folder, vehicle, changes);
    Build apart = DemoSheet.of(folder, vehicle, changes + TOLD_APART);
    assertThat(like(alike, Position.REAR_RIGHT)).isEqualTo(Position.REAR_LEFT);
    for (Position position : Position.running()) {
      assertThat(like(apart, position)).isEqualTo(position);
    }
    Ledgers once = Ledgers.of(alike, DemoSheet.DAY);
    Ledgers each = Ledgers.of(apart, DemoSheet.DAY);
    assertThat(once.heights()).hasToString(each.heights().toString());
    assertThat(once.travel()).hasToString(each.travel().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cairnback | { add: CM-CB-R40H, at: rear-right }
          skerrow   | { raise: 30 mm, at: rear-right }
          cairnback | { add: CM-CB-AIR, at: rear }
          """)
  void partsAndSettingsOfOneSideAreItsOwn(String vehicle, String change) throws IOException {
    own(vehicle, "changes: [" + change + "]\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "measurements: { heights: [{ at: rear-left, height: 560 mm, state: as-found }] }",
        "aims: { payload: [{ carries: water, mass: 40 kg, fore: -2000 mm, out: 300 mm }] }"
      })
  void heightsAndLoadsOfOneSideAreItsOwn(String more) throws IOException {
    own("cairnback", HIGHER_SPRINGS + more + "\n");
  }

  private void own(String vehicle, String sheet) throws IOException {
    Build build = DemoSheet.of(folder, vehicle, sheet);
    assertThat(like(build, Position.REAR_RIGHT)).isEqualTo(Position.REAR_RIGHT);
    assertThat(like(build, Position.SPARE)).isEqualTo(Position.SPARE);
  }

  @Test
  void partsOfTodayTellSidesApartThoughTheChangesMakeThemAlike() throws IOException {
    own(
        "cairnback",
        "as-found:\n  fitted:\n    - { part: CM-CB-R40H, at: rear-right }\n" + HIGHER_SPRINGS);
  }

  @ParameterizedTest
  @CsvSource({
    "front-left, as-found",
    "front-right, as-found",
    "front-left, book",
    "front-right, book"
  })
  void aMeasuredPressureIsItsOwnSides(String measured, String state) throws IOException {
    Build build =
        DemoSheet.of(
            folder,
            "skerrow",
            RAISED
                + "measurements:\n  pressures:\n    - { at: "
                + measured
                + ", pressure: 5.8 MPa, state: "
                + state
                + " }\n");
    assertThat(like(build, Position.FRONT_RIGHT)).isEqualTo(Position.FRONT_LEFT);
    HeightLedger ledger = Ledgers.of(build, DemoSheet.DAY).heights();
    boolean onTheLeft = measured.equals("front-left");
    FluidLoad there = ledger.corners().get(onTheLeft ? 0 : 1).fluid();
    FluidLoad other = ledger.corners().get(onTheLeft ? 1 : 0).fluid();
    assertThat(there.pressureBefore().value()).isEqualTo(5800);
    assertThat(other.pressureBefore().value()).isNotEqualTo(5800);
    assertThat(there.pressureAfter().value() - other.pressureAfter().value())
        .isCloseTo(there.pressureBefore().value() - other.pressureBefore().value(), within(1e-9));
  }
}
