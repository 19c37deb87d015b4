package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.quantity.Constants.mm;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.CatalogFiles;
import trammel.catalog.Listing;
import trammel.catalog.Part;
import trammel.catalog.SuspensionPart;
import trammel.fact.BracketMatch;
import trammel.fact.BrakeValveRod;
import trammel.fact.CoilRoom;
import trammel.fact.DamperReach;
import trammel.fact.Fact;
import trammel.fact.LineReach;
import trammel.fact.Standing;
import trammel.fact.SwayLink;
import trammel.fact.TravelBudget;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;

/**
 * Travel against shared/reference/geometry.md, sections 4 and 6: its relations are own derivation
 * and common practice, as said there; lengths are the demo's, worked out by hand beside each check.
 */
class TravelFactsTest {
  private static final Position REAR = Position.REAR_LEFT;
  private static final Listing LISTING =
      CatalogFiles.read(DemoSheet.DEMO).part("LS-CB-R30").orElseThrow().listing();

  @TempDir private Path folder;

  private Build sheet(String vehicle, String changes) throws IOException {
    return DemoSheet.of(folder, vehicle, "changes:\n" + changes);
  }

  private static <F extends Fact> F at(Build build, Position position, Class<F> kind) {
    return DemoSheet.facts(build, kind).stream()
        .filter(fact -> fact.subject().where().equals(position.toString()))
        .findFirst()
        .orElseThrow();
  }

  /** The build with a part more at both wheels of the position's axle. */
  private static Build with(Build build, Position position, Part part) {
    Map<Position, Equipment> proposed = new EnumMap<>(build.proposed());
    for (Position wheel : Position.of(position.axle().orElseThrow())) {
      proposed.put(wheel, build.after(wheel).with(part));
    }
    return build.proposing(proposed);
  }

  private static Part bracket(double shift) {
    return new SuspensionPart.DamperBracket(LISTING, mm(shift));
  }

  @Test
  void aSeatSpacerTakesDroopAndGivesBumpAndShortensTheCoil() throws IOException {
    Build build = sheet("cairnback", "  - { add: LS-CB-R30, at: rear }\n");
    TravelBudget travel = at(build, REAR, TravelBudget.class);
    double lift = travel.lift().value();
    // Section 4, own derivation: t / motion ratio.
    assertThat(lift).isCloseTo(30 / 0.95, within(1e-9));
    assertThat(travel.droopAfter().value()).isCloseTo(115 - lift, within(1e-9));
    assertThat(travel.bumpAfter().value()).isCloseTo(90 + lift, within(1e-9));
    assertThat(travel.end()).isEqualTo("the damper");
    // Seat to seat 262.5, less 0.95 · (90 + 15), the spacer and the solid coil of 108.
    assertThat(at(build, REAR, CoilRoom.class).bindRoom().value())
        .isCloseTo(262.5 - 0.95 * 105 - 30 - 108, within(1e-9));
    DamperReach damper = at(build, REAR, DamperReach.class);
    assertThat(damper.standing()).isEqualTo(Standing.NO_WORSE);
    assertThat(damper.shortest().value()).isCloseTo(498 - 0.93 * 105, within(1e-9));
  }

  @Test
  void aPlateAboveAStrutKeepsItsDroopAndTakesFromTheDampersBump() throws IOException {
    Build build = sheet("millwren", "  - { add: LT-MW-F20, at: front }\n");
    TravelBudget travel = at(build, Position.FRONT_LEFT, TravelBudget.class);
    // Section 4: the whole stroke moves; the damper and the spring have one motion ratio here.
    assertThat(travel.droopAfter().value())
        .isCloseTo(travel.droopBefore().value(), within(1e-9))
        .isCloseTo(85, within(1e-9));
    DamperReach damper = at(build, Position.FRONT_LEFT, DamperReach.class);
    assertThat(damper.standing()).isEqualTo(Standing.WORSE_OR_NEW);
    assertThat(damper.closedRoom().value()).isCloseTo(446.4 - 0.96 * 82 - 20 - 352, within(1e-9));
  }

  @Test
  void aPlateGivesBackNoDroopThatAStopEnds() throws IOException {
    Build build = sheet("cairnback", "  - { add: LT-CB-F20, at: front }\n");
    TravelBudget travel = at(build, Position.FRONT_LEFT, TravelBudget.class);
    assertThat(travel.end()).isEqualTo("a stop");
    assertThat(travel.droopAfter().value()).isCloseTo(95 - travel.lift().value(), within(1e-9));
  }

  /** Own derivation: shift = motion ratio · lift brings the damper back to its place. */
  @Test
  void aBracketOfMotionRatioTimesLiftLeavesTheDamperWhereItWas() throws IOException {
    Random random = new Random(7);
    Build raised = sheet("cairnback", "  - { add: LS-CB-R30, at: rear }\n");
    for (int i = 0; i < 20; i++) {
      SuspensionPart.SpringSpacer spacer = spacer(5 + 60 * random.nextDouble());
      Build build = with(raised, REAR, spacer);
      double lift = at(build, REAR, TravelBudget.class).lift().value();
      Build matched = with(build, REAR, bracket(0.93 * lift));
      TravelBudget travel = at(matched, REAR, TravelBudget.class);
      assertThat(travel.droopAfter().value()).isCloseTo(travel.droopBefore().value(), within(1e-9));
      assertThat(at(matched, REAR, BracketMatch.class).off().value()).isCloseTo(0, within(1e-9));
      double atRest = 498 + 0.93 * lift - 0.93 * lift;
      assertThat(at(matched, REAR, DamperReach.class).open().value() - atRest)
          .isCloseTo(605 - 498, within(1e-9));
    }
  }

  private static SuspensionPart.SpringSpacer spacer(double thickness) {
    return new SuspensionPart.SpringSpacer(
        LISTING, mm(thickness), mm(61.5), mm(139), mm(102), null, true, false, null);
  }

  /** Common practice: an adapter of 45 to 50 mm goes with a spring spacer of 50 mm. */
  @ParameterizedTest
  @CsvSource({"45, MET", "48, MET", "50, MET", "30, NOT_MET", "70, NOT_MET"})
  void anAdapterOf45To50GoesWithASpacerOf50(double shift, Decision matched) throws IOException {
    Build build =
        with(sheet("cairnback", "  - { add: LS-CB-R50, at: rear }\n"), REAR, bracket(shift));
    assertThat(at(build, REAR, BracketMatch.class).off().atMost(mm(10)).decision())
        .isEqualTo(matched);
  }

  @Test
  void aDamperThatEndsBeforeTheStopHangsTheAxle() throws IOException {
    Build build = sheet("skerrow", "  - { raise: 30 mm, at: rear }\n");
    SuspensionPart.Damper shorter = new SuspensionPart.Damper(LISTING, mm(600), mm(390));
    Build fitted = with(build, REAR, shorter);
    DamperReach damper = at(fitted, REAR, DamperReach.class);
    // 512 + 0.9 · 118 = 618.2 with the wheel hanging on its stop.
    assertThat(damper.openRoom().value()).isCloseTo(600 - 618.2, within(1e-9));
    TravelBudget travel = at(fitted, REAR, TravelBudget.class);
    assertThat(travel.end()).isEqualTo("the damper");
    assertThat(travel.droopAfter().value()).isCloseTo((600 - 512) / 0.9 - 30, within(1e-9));
    Build strapped = with(fitted, REAR, new SuspensionPart.DroopStrap(LISTING, mm(90)));
    assertThat(at(strapped, REAR, TravelBudget.class).end()).isEqualTo("a strap");
    assertThat(at(strapped, REAR, DamperReach.class).openRoom().value())
        .isCloseTo(600 - (512 + 0.9 * 90), within(1e-9));
  }

  @Test
  void aLineSpansAtMostTheAddedDroopMore() throws IOException {
    Build build =
        with(sheet("cairnback", "  - { add: LS-CB-R50, at: rear }\n"), REAR, bracket(46.5));
    LineReach hose = at(build, REAR, LineReach.class);
    assertThat(hose.brakes()).isTrue();
    assertThat(hose.slack().value()).isCloseTo(330 - 291 - 46.5 / 0.93, within(1e-9));
    assertThat(hose.standing()).isEqualTo(Standing.WORSE_OR_NEW);
    Build longer = sheet("cairnback", "  - { add: VN-CB-R, at: rear }\n");
    assertThat(at(longer, REAR, LineReach.class).free().value()).isEqualTo(405);
  }

  /** Section 6: extend by lift · link travel over wheel travel to keep the bar's arm angle. */
  @Test
  void theRightLinkPutsTheBarBack() throws IOException {
    Build build = sheet("cairnback", "  - { add: LS-CB-R50, at: rear }\n");
    SwayLink link = at(build, REAR, SwayLink.class);
    double plain = 192 + 0.86 * at(build, REAR, TravelBudget.class).lift().value();
    assertThat(link.rightLength().value()).isCloseTo(plain, within(0.1));
    Build right =
        with(build, REAR, new SuspensionPart.SwayBarLink(LISTING, mm(link.rightLength().value())));
    assertThat(link.armChange().value()).isGreaterThan(0.3);
    assertThat(at(right, REAR, SwayLink.class).armChange().value()).isCloseTo(0, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cairnback-same-size", "millwren-all-terrain", "skerrow-cast-wheels"})
  void whatTouchesNoTravelSaysNothingOfIt(String name) {
    Build build = DemoSheet.demo(name);
    assertThat(DemoSheet.facts(build, TravelBudget.class)).isEmpty();
    assertThat(DemoSheet.facts(build, LineReach.class)).isEmpty();
    for (TravelLedger ledger : Ledgers.of(build, DemoSheet.DAY).travel()) {
      for (int i = 0; i < ledger.before().size(); i++) {
        Quantity before = ledger.before().get(i).rise();
        Quantity after = ledger.after().get(i).rise();
        assertThat(after.isKnown()).isEqualTo(before.isKnown());
        assertThat(!after.isKnown() || after.value() == before.value()).isTrue();
      }
    }
  }

  @Test
  void anUnknownDamperIsAbsentAndSaysWhatToMeasure() throws IOException {
    Absence none = new Absence("open length", "not stated", Instrument.TAPE, "measure it");
    Build build =
        with(
            sheet("skerrow", "  - { raise: 30 mm, at: rear }\n"),
            REAR,
            new SuspensionPart.Damper(LISTING, Quantity.absent(Dimension.LENGTH, none), mm(390)));
    assertThat(at(build, REAR, DamperReach.class).openRoom().isKnown()).isFalse();
    assertThat(at(build, REAR, TravelBudget.class).droopAfter().isKnown()).isFalse();
  }

  @Test
  void aLoadSensingValveWantsABracketMadeForTheLift() throws IOException {
    Build raised = sheet("drayling", "  - { add: CM-DR-R40, at: rear }\n");
    assertThat(DemoSheet.facts(raised, BrakeValveRod.class))
        .singleElement()
        .satisfies(rod -> assertThat(rod.follows()).isEqualTo(Decision.NOT_MET));
    Build bracketed =
        with(raised, REAR, new SuspensionPart.BrakeValveBracket(LISTING, mm(20), mm(60)));
    assertThat(DemoSheet.facts(bracketed, BrakeValveRod.class).get(0).follows())
        .isEqualTo(Decision.MET);
    Build sensed = sheet("cairnback", "  - { add: LS-CB-R50, at: rear }\n");
    assertThat(DemoSheet.facts(sensed, BrakeValveRod.class)).isEmpty();
  }

  /** Two sides are worked out as one only where they have the same parts. */
  @Test
  void aSideWithPartsOfItsOwnHasAWayOfItsOwn() throws IOException {
    String spacers = "  - { add: LS-CB-R50, at: rear }\n";
    String bracket = "  - { add: HM-BR-CB-R48, at: %s }\n";
    Build without = sheet("cairnback", spacers);
    Build onBoth = sheet("cairnback", spacers + bracket.formatted("rear"));
    for (Position mended : Position.of(Axle.REAR)) {
      Build onOne = sheet("cairnback", spacers + bracket.formatted(mended));
      for (Position position : Position.of(Axle.REAR)) {
        assertThat(rises(onOne, position))
            .as("%s with a bracket at %s", position, mended)
            .isEqualTo(rises(position == mended ? onBoth : without, position))
            .isNotEqualTo(rises(position == mended ? without : onBoth, position));
      }
    }
  }

  private static List<Double> rises(Build build, Position position) {
    return Ledgers.of(build, DemoSheet.DAY).travel().stream()
        .filter(ledger -> ledger.position() == position)
        .flatMap(ledger -> ledger.after().stream())
        .map(mark -> mark.rise().value())
        .toList();
  }

  @Test
  void theLedgerStacksTheMarksInTheOrderOfASoundCorner() {
    TravelLedger ledger =
        Ledgers.of(DemoSheet.demo("cairnback-thick-spacers"), DemoSheet.DAY).travel().stream()
            .filter(one -> one.position() == REAR)
            .findFirst()
            .orElseThrow();
    assertThat(ledger.after())
        .extracting(TravelLedger.Mark::what)
        .containsExactly(TravelLedger.Point.values());
    Map<TravelLedger.Point, Double> rises = new EnumMap<>(TravelLedger.Point.class);
    ledger.after().forEach(mark -> rises.put(mark.what(), mark.rise().value()));
    assertThat(rises.get(TravelLedger.Point.RIDE)).isCloseTo(-50 / 0.95, within(1e-9));
    assertThat(rises.get(TravelLedger.Point.DROOP)).isCloseTo(-115, within(1e-9));
    assertThat(rises.get(TravelLedger.Point.STOP_FLAT)).isCloseTo(105, within(1e-9));
    assertThat(rises.get(TravelLedger.Point.DAMPER_CLOSED))
        .isCloseTo((498 - 358) / 0.93, within(1e-9));
    assertThat(rises.get(TravelLedger.Point.COIL_SOLID))
        .isCloseTo((262.5 - 50 - 108) / 0.95, within(1e-9));
  }
}
