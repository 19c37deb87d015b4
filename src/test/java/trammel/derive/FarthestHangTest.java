package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.quantity.Constants.mm;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.CatalogFiles;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.DroopStrap;
import trammel.fact.JointSwing;
import trammel.fact.TravelBudget;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * How far a wheel hangs with a plate above its strut, against shared/reference/geometry.md, section
 * 6 (own derivation): a plate lets the damper down by its thickness over the motion ratio, and
 * moves neither stop nor strap.
 */
class FarthestHangTest {
  private static final Position LEFT = Position.FRONT_LEFT;
  private static final String STOP =
      "    droop-limit: stop\n    damper: { motion-ratio: 0.62 ± 0.01, length: 433 mm }\n";
  private static final String DAMPER_FIT =
      "    damper: { motion-ratio: 0.62 ± 0.01, length: 433 mm }\n";

  /** The surveyed front: a droop of 98 mm, a plate of 10 mm, the spring's motion ratio 0.62. */
  private static final String PLATE = "changes:\n  - { add: LT-SK-F10, at: front }\n";

  @TempDir private Path folder;

  private Build held(String support) throws IOException {
    return DemoSheet.altered(folder, "skerrow", List.of(STOP), List.of(support), PLATE);
  }

  private static Quantity hang(Build build) {
    return new CornerTravel(build, LEFT, Stage.PROPOSED).farthestHang();
  }

  private static Build strapped(Build build, double droop) {
    DroopStrap strap =
        new DroopStrap(
            CatalogFiles.read(DemoSheet.DEMO).part("LS-CB-R30").orElseThrow().listing(), mm(droop));
    Map<Position, Equipment> proposed = new EnumMap<>(build.proposed());
    for (Position wheel : Position.of(LEFT.axle().orElseThrow())) {
      proposed.put(wheel, build.after(wheel).with(strap));
    }
    return build.proposing(proposed);
  }

  @ParameterizedTest
  @ValueSource(strings = {"stop", "strap"})
  void aPlateLetsNoWheelDownThatAStopOrStrapHolds(String limit) throws IOException {
    assertThat(hang(held("    droop-limit: " + limit + "\n" + DAMPER_FIT)).value()).isEqualTo(98);
  }

  /** Nobody need know the damper: with the plate it reaches the stop all the more. */
  @Test
  void theStopHoldsAlsoWhereNobodyHasMeasuredTheDamper() throws IOException {
    Build plated = held("    droop-limit: stop\n");
    assertThat(hang(plated).value()).isEqualTo(98);
    assertThat(budget(plated).end()).isEqualTo("a stop");
    assertThat(budget(plated).droopAfter().isKnown()).isTrue();
    // The surveyed ball joint swings no farther than it would without the plate.
    Build raised =
        DemoSheet.of(folder, "skerrow", "changes:\n  - { raise: 5 mm, at: front }\n" + ADDED);
    Build bare = DemoSheet.of(folder, "skerrow", "changes:\n  - { raise: 5 mm, at: front }\n");
    assertThat(swing(raised)).isCloseTo(swing(bare), within(1e-9));
  }

  private static final String ADDED = "  - { add: LT-SK-F10, at: front }\n";

  private static double swing(Build build) {
    return DemoSheet.facts(build, JointSwing.class).stream()
        .filter(fact -> fact.subject().where().equals(LEFT.toString()))
        .findFirst()
        .orElseThrow()
        .swing()
        .value();
  }

  private static TravelBudget budget(Build build) {
    return DemoSheet.facts(build, TravelBudget.class).stream()
        .filter(fact -> fact.subject().where().equals(LEFT.toString()))
        .findFirst()
        .orElseThrow();
  }

  /** A plate of 20 mm; damper and spring have the motion ratio 0.96. */
  @Test
  void aPlateLetsAWheelDownThatHangsOnItsDamper() throws IOException {
    Build build = DemoSheet.of(folder, "millwren", "changes:\n  - { add: LT-MW-F20, at: front }\n");
    assertThat(hang(build).value()).isCloseTo(85 + 20 / 0.96, within(1e-9));
  }

  /** The hang is a bound for joints and lines; what is left of the droop nobody can say. */
  @Test
  void whereNobodyHasLookedThePlateIsTakenAtItsWorstAndTheTravelStaysOpen() throws IOException {
    Build build = held(DAMPER_FIT);
    assertThat(hang(build).value()).isCloseTo(98 + 10 / 0.62, within(1e-9));
    assertThat(budget(build).end()).isEqualTo("nobody knows what");
    assertThat(budget(build).droopAfter().isKnown()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"60, 60", "105, 105", "150, 114.129032258"})
  void aStrapHoldsTheWheelWhateverElseMight(double strap, double hang) throws IOException {
    Build build = strapped(held(DAMPER_FIT), strap);
    assertThat(build.after(LEFT).one(PartKind.DROOP_STRAP, DroopStrap.class)).isPresent();
    assertThat(hang(build).value()).isCloseTo(hang, within(1e-6));
  }
}
