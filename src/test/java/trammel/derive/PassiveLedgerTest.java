package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.derive.HeightLedger.Corner;
import trammel.derive.HeightLedger.Line;
import trammel.fact.SideLean;
import trammel.physics.SpringPath;
import trammel.quantity.Input;
import trammel.subject.Axle;

/**
 * Heights by the balance of forces, against an independent bisection on the balance itself, and
 * against closed forms written out again here (own derivation, shared/reference/geometry.md,
 * section 4). The vehicles are invented.
 */
class PassiveLedgerTest {
  private static final double G = 9.80665;
  private static final double ROUNDING = 1e-9;

  @TempDir private Path folder;

  private Corner corner(String vehicle, String text, int which) throws IOException {
    return corner(DemoSheet.of(folder, vehicle, text), which);
  }

  private static Corner corner(Build build, int which) {
    return Ledgers.of(build, DemoSheet.DAY).heights().corners().get(which);
  }

  /** Seat distance at which a spring of one rate carries a wheel's body (mm). */
  private static double seats(double rate, double free, double ratio, double load) {
    return new BisectionSolver(1e-13, 1e-13)
        .solve(500, s -> rate * (free - s) * ratio - load, 0, free);
  }

  @ParameterizedTest
  @CsvSource({
    "stonecrop, CM-SC-F50, front, 0, 26, 460, 29, 489, 0.9, 950, 190",
    "stonecrop, CM-SC-R50, rear, 2, 28, 448, 33, 473, 0.92, 880, 180",
    "cairnback, CM-CB-F45, front, 0, 85, 340, 112, 351, 0.58, 1120, 130",
    "linnhope, CM-LH-R25, rear, 2, 92, 318, 104, 327, 0.72, 1170, 140"
  })
  void aNewSpringStandsWhereTheForcesBalance(
      String vehicle,
      String part,
      String axle,
      int which,
      double oldRate,
      double oldFree,
      double newRate,
      double newFree,
      double ratio,
      double axleLoad,
      double unsprung)
      throws IOException {
    Corner corner =
        corner(vehicle, "changes:\n  - { add: " + part + ", at: " + axle + " }\n", which);
    double load = (axleLoad - unsprung) / 2 * G;
    double expected =
        (seats(newRate, newFree, ratio, load) - seats(oldRate, oldFree, ratio, load)) / ratio;
    assertThat(corner.lift().value()).isCloseTo(expected, within(1e-9));
    assertThat(corner.lift().expanded()).isPositive();
  }

  @Test
  void aLoadOverTheRearAxleSinksTheRearAlone() throws IOException {
    String text =
        """
        changes:
          - { add: HR-2656517, at: all }
        aims:
          payload:
            - { carries: sacks, mass: 200 kg, fore: -2790 mm, out: 0 mm }
        """;
    Corner rear = corner("cairnback", text, 2);
    assertThat(rear.lift().value()).isCloseTo(-100 * G / (38 * 0.95 * 0.95), within(ROUNDING));
    assertThat(rear.loadProposed().value() - rear.loadFound().value())
        .isCloseTo(100, within(ROUNDING));
    assertThat(corner("cairnback", text, 0).lift().value()).isCloseTo(0, within(ROUNDING));
  }

  @Test
  void whatHangsAheadOfTheFrontAxleTakesLoadFromTheRear() throws IOException {
    Build build =
        DemoSheet.of(
            folder,
            "cairnback",
            "changes:\n  - { add: ST-WN-38, at: front }\n  - { add: ST-CB-RT, at: rear }\n");
    HeightLedger ledger = Ledgers.of(build, DemoSheet.DAY).heights();
    double front = 38 * (1 + 660.0 / 2790) + 74 * (1 - 2350.0 / 2790);
    double rear = -38 * 660.0 / 2790 + 74 * 2350.0 / 2790;
    assertThat(ledger.axles().get(0).load().after().value())
        .isCloseTo(1120 + front, within(ROUNDING));
    assertThat(ledger.axles().get(1).load().after().value())
        .isCloseTo(1080 + rear, within(ROUNDING));
    assertThat(ledger.gross().after().value()).isCloseTo(1120 + 1080 + 38 + 74, within(ROUNDING));
    Corner left = ledger.corners().get(2);
    Corner right = ledger.corners().get(3);
    assertThat(left.loadProposed().value() + right.loadProposed().value())
        .isCloseTo(1080 + rear, within(ROUNDING));
    // The tank lies to the left: that side carries more and stands lower.
    assertThat(left.loadProposed().value()).isGreaterThan(right.loadProposed().value());
    assertThat(ledger.axles().get(1).lean().lower()).isEqualTo("left");
  }

  @Test
  void aWeighedAxleOutranksTheBookAndWhatIsFitted() throws IOException {
    String fitted = "as-found:\n  fitted:\n    - { part: ST-CB-FB, at: [front] }\n";
    String change = "changes:\n  - { add: HR-2656517, at: all }\n";
    Corner byBook = corner("cairnback", fitted + change, 0);
    assertThat(2 * byBook.loadFound().value())
        .isCloseTo(1120 + 52 * (1 + 640.0 / 2790), within(ROUNDING));
    Corner weighed = corner("cairnback", fitted + "  weighed: { front: 1200 kg }\n" + change, 0);
    assertThat(2 * weighed.loadFound().value()).isCloseTo(1200, within(ROUNDING));
    double sunk = (1200 - 1120) / 2.0 * G / (85 * 0.58 * 0.58);
    assertThat(weighed.predicted().value()).isCloseTo(505 - sunk, within(ROUNDING));
  }

  @Test
  void whatIsTakenOffNoLongerLoadsItsAxle() throws IOException {
    Corner corner =
        corner(
            "cairnback",
            """
            as-found:
              fitted:
                - { part: ST-CB-FB, at: [front] }
            changes:
              - { remove: ST-CB-FB, at: front }
            """,
            0);
    double more = 52 * (1 + 640.0 / 2790) / 2;
    assertThat(corner.loadFound().value()).isCloseTo(560 + more, within(ROUNDING));
    assertThat(corner.loadProposed().value()).isCloseTo(560, within(ROUNDING));
    assertThat(corner.lift().value()).isCloseTo(more * G / (85 * 0.58 * 0.58), within(ROUNDING));
    // What was not known of its mass has gone with it.
    assertThat(corner.loadProposed().expanded()).isLessThan(corner.loadFound().expanded());
  }

  @Test
  void aSpacerAndItsRemovalCancel() throws IOException {
    Corner corner =
        corner(
            "cairnback",
            """
            as-found:
              fitted:
                - { part: LS-CB-R20, at: [rear] }
            changes:
              - { remove: LS-CB-R20, at: rear }
            """,
            2);
    assertThat(corner.predicted().value()).isCloseTo(530 + 20 / 0.95, within(ROUNDING));
    assertThat(corner.proposed().value()).isCloseTo(530, within(ROUNDING));
  }

  @Test
  void nothingChangesNothing() throws IOException {
    for (String vehicle : List.of("stonecrop", "cairnback", "linnhope", "millwren", "gimmer")) {
      Build build =
          DemoSheet.of(folder, vehicle, "changes:\n  - { remove: pressure-sensor, at: all }\n");
      HeightLedger ledger = Ledgers.of(build, DemoSheet.DAY).heights();
      for (Corner corner : ledger.corners()) {
        assertThat(corner.lift().value()).isZero();
        assertThat(corner.lift().expanded()).isZero();
        assertThat(corner.proposed().value()).isEqualTo(corner.book().value());
      }
      assertThat(ledger.axles()).allMatch(axle -> axle.lean().lean().value() == 0);
    }
  }

  /** The unexplained rest stays while the springs stay, and goes with them. */
  @Test
  void aSaggedSpringTakesItsSagAway() throws IOException {
    String measured =
        "measurements:\n  heights:\n    - { at: front-left, height: 500 mm, state: as-found }\n";
    Corner packed =
        corner("stonecrop", "changes:\n  - { add: LS-SC-F40, at: front }\n" + measured, 0);
    assertThat(packed.rest().value()).isCloseTo(-20, within(ROUNDING));
    assertThat(packed.proposed().value()).isCloseTo(500 + 40 / 0.9, within(ROUNDING));
    String springs = "changes:\n  - { add: CM-SC-F50, at: front }\n";
    Corner sagged = corner("stonecrop", springs + measured, 0);
    Corner asBook = corner("stonecrop", springs, 0);
    assertThat(sagged.proposed().value()).isCloseTo(asBook.proposed().value(), within(ROUNDING));
    assertThat(sagged.lift().value()).isCloseTo(asBook.lift().value() + 20, within(ROUNDING));
  }

  /** Two springs of one number are two sources of error in a difference of the sides. */
  @Test
  void aLeanIsNoSurerThanTwoSprings() throws IOException {
    Build build =
        DemoSheet.of(folder, "stonecrop", "changes:\n  - { add: CM-SC-F50, at: front }\n");
    SideLean lean = DemoSheet.facts(build, SideLean.class).get(0);
    Corner corner = corner(build, 0);
    assertThat(lean.lean().value()).isZero();
    assertThat(lean.lean().expanded()).isBetween(corner.lift().expanded() / 2, 30.0);
    // Both sides carry half of one load: its error cancels.
    Input shared = build.vehicle().front().bookLoad().input();
    assertThat(corner.lift().contribution(shared)).isNotZero();
    assertThat(lean.lean().contribution(shared)).isCloseTo(0, within(ROUNDING));
    assertThat(lean.lean().uncertainInputs())
        .noneMatch(input -> input.path().startsWith(shared.path() + " "));
  }

  /**
   * The Skerrow's front without its height control, as if the coils alone carried it: the balance
   * on the path of the surveyed spring.
   */
  @ParameterizedTest
  @CsvSource({"LS-SK-F20, 20", "LS-SK-F30, 30", "LS-SK-F40, 40"})
  void onASurveyedPathTheBalanceCloses(String part, double thickness) throws IOException {
    Build build =
        DemoSheet.altered(
            folder,
            "skerrow",
            List.of("  height-controlled: yes\n  track: 1640 mm"),
            List.of("  height-controlled: no\n  track: 1640 mm"),
            "changes:\n  - { add: " + part + ", at: front }\n");
    Corner corner = corner(build, 0);
    AxleProfile front = build.vehicle().axle(Axle.FRONT);
    SpringPath path = new SpringTravel(front).path();
    double load = (1290 - 150) / 2.0 * G;
    double start =
        new BisectionSolver(1e-13, 1e-13).solve(500, z -> balance(path, z, 0) - load, -20, 82);
    double raised = start - corner.lift().value();
    assertThat(balance(path, raised, thickness)).isCloseTo(load, within(1e-9 * load));
    // A falling or rising ratio moves it from thickness over ratio, but not far.
    assertThat(corner.lift().value()).isCloseTo(thickness / 0.62, within(0.15 * thickness / 0.62));
    assertThat(corner.lines()).extracting(Line::what).containsExactly("spacers");
  }

  private static double balance(SpringPath path, double travel, double spacer) {
    return path.ratio(travel) * 92 * (330 + spacer - path.seatDistance(travel));
  }
}
