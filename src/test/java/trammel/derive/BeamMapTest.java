package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.DAY;
import static trammel.derive.DemoSheet.DEMO;
import static trammel.derive.DemoSheet.demo;
import static trammel.derive.DemoSheet.facts;
import static trammel.derive.DemoSheet.raised;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.fact.Alignment;
import trammel.fact.AxleShift;
import trammel.fact.AxleTurn;
import trammel.fact.BumpSteer;
import trammel.fact.LinkMismatch;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/** Beam axles as found and as proposed, against formulas of their own and against the facts. */
class BeamMapTest {
  private static final Catalog CATALOG = CatalogFiles.read(DEMO);
  private static final String FRAME_END =
      "frame-end: { side: right, fore: -227 mm, out: 467 mm, up: 485 mm }";
  private static final String AXLE_END =
      "axle-end: { side: left, fore: -205 mm, out: 499 mm, up: 400 mm }";

  /** The Skerrow's rear bar: its span and rise; its frame end is on the right. */
  private static final double SPAN = 966;

  private static final double RISE = 85;
  private static final double FRAME_END_RIGHT = 467;
  private static final double AXLE_END_UP = 400;
  private static final double BUMP = 92;
  private static final double DROOP = 118;

  @TempDir private Path folder;

  private static BeamMap map(Build build, Axle axle) {
    return BeamMap.of(build, CATALOG, DAY).stream()
        .filter(map -> map.axle() == axle)
        .findFirst()
        .orElseThrow();
  }

  private static BarMap bar(Build build, Axle axle) {
    BarMap bar = map(build, axle).bar();
    assertThat(bar).isNotNull();
    return bar;
  }

  private Build skerrow(double lift, String more) throws IOException {
    return DemoSheet.of(folder, "skerrow", raised("", 0, lift, more));
  }

  private static double span(double rise) {
    double square = SPAN * SPAN + RISE * RISE;
    return Math.sqrt(square - rise * rise);
  }

  /** A page of the trade (two rows) and own computation, as the file says. */
  @ParameterizedTest(name = "{0} mm, {1} high, lifted {2}: {3}")
  @CsvFileSource(files = "shared/reference/panhard-shift.csv", useHeadersInDisplayName = true)
  void theAxleStandsAsWorkedExamplesHaveIt(
      double length,
      double rise,
      double lift,
      double moved,
      double tolerance,
      @Nullable Double longer)
      throws IOException {
    double out = Math.sqrt(length * length - rise * rise) - FRAME_END_RIGHT;
    Build build =
        DemoSheet.altered(
            folder,
            "skerrow",
            List.of(FRAME_END, AXLE_END),
            List.of(
                String.format(
                    Locale.ROOT,
                    "frame-end: { side: right, fore: -205 mm, out: 467 mm, up: %.1f mm }",
                    AXLE_END_UP + rise),
                String.format(
                    Locale.ROOT,
                    "axle-end: { side: left, fore: -205 mm, out: %.9f mm, up: 400 mm }",
                    out)),
            raised("", 0, lift, ""));
    BarMap bar = bar(build, Axle.REAR);
    assertThat(bar.proposed().shift().value())
        .isCloseTo(Math.abs(moved), within(Math.max(tolerance, 1e-6)));
    if (moved != 0) {
      assertThat(bar.proposed().toward()).isEqualTo(moved > 0 ? "right" : "left");
    }
    if (longer != null) {
      assertThat(bar.change().value()).isCloseTo(longer, within(tolerance));
      assertThat(bar.shorter()).isFalse();
    }
  }

  /** Own derivation: the bar of constant length in every pose of a fine grid. */
  @ParameterizedTest
  @CsvSource({"28, lower, 25", "28, upper, 50", "55, upper, 50", "-20, lower, 25"})
  void theSweepIsThatOfEveryPose(double lift, String hole, double raised) throws IOException {
    BarMap.State state =
        bar(skerrow(lift, "  - { add: LB-PK-SK, at: rear, hole: " + hole + " }\n"), Axle.REAR)
            .proposed();
    double left = 0;
    double right = 0;
    double rest = span(RISE + lift - raised);
    for (double at = -BUMP; at <= DROOP; at += 0.25) {
      double moved = span(RISE + at - raised) - rest;
      left = Math.max(left, moved);
      right = Math.min(right, moved);
    }
    assertThat(state.left().value()).isCloseTo(left, within(0.001));
    assertThat(state.right().value()).isCloseTo(-right, within(0.001));
    assertThat(state.left().expanded()).isBetween(0.01, 2.0);
  }

  /** Own computation: where the line through both moved ends crosses the center plane. */
  @ParameterizedTest
  @CsvSource({"28, lower, 25", "28, upper, 50", "55, lower, 25"})
  void theRollCenterIsWhereTheBarCrossesTheCenterPlane(double lift, String hole, double raised)
      throws IOException {
    Build build = skerrow(lift, "  - { add: LB-PK-SK, at: rear, hole: " + hole + " }\n");
    double rise = RISE + lift - raised;
    double axleEndLeft = span(rise) - FRAME_END_RIGHT;
    double expected = AXLE_END_UP + raised + rise * axleEndLeft / span(rise);
    assertThat(bar(build, Axle.REAR).proposed().rollCenter().value())
        .isCloseTo(expected, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"28, lower", "28, upper", "55, lower", "10, upper", "40, lower"})
  void theBestHoleIsTheOneOfTheFact(double lift, String hole) throws IOException {
    Build build = skerrow(lift, "  - { add: LB-PK-SK, at: rear, hole: " + hole + " }\n");
    AxleShift fact = facts(build, AxleShift.class).get(0);
    BarMap bar = bar(build, Axle.REAR);
    BarMap.Bracket bracket = bar.brackets().get(0);
    assertThat(bracket.fitted()).isTrue();
    assertThat(bracket.best().name()).isEqualTo(fact.bestHole());
    assertThat(bar.hole()).isEqualTo(fact.hole());
    same(bracket.best().state().shift(), fact.bestShift());
    same(bar.proposed().shift(), fact.shift());
    same(bar.proposed().slope(), fact.slope());
    same(bar.found().slope(), fact.slopeBefore());
    same(bar.recenters(), fact.recenters());
    // The catalog offers the same bracket to a sheet that has none.
    BarMap.Bracket offered = bar(skerrow(lift, ""), Axle.REAR).brackets().get(0);
    assertThat(offered.fitted()).isFalse();
    assertThat(offered.best().name()).isEqualTo(fact.bestHole());
    same(offered.best().state().shift(), fact.bestShift());
  }

  private static void same(Quantity one, Quantity other) {
    assertThat(one.value()).isCloseTo(other.value(), within(1e-9));
    assertThat(one.expanded()).isCloseTo(other.expanded(), within(1e-9));
  }

  @Test
  void turnCasterAndSteeringAreThoseOfTheFacts() {
    Build build = demo("stonecrop-raised");
    BeamMap front = map(build, Axle.FRONT);
    AxleTurn turn = facts(build, AxleTurn.class).get(0);
    same(front.proposed().noseUp(), turn.turn());
    same(front.proposed().forward(), turn.shift());
    assertThat(front.caster()).isNotNull();
    Alignment alignment = facts(build, Alignment.class).get(0);
    same(front.caster().proposed(), alignment.caster());
    same(front.caster().reserve(), alignment.casterReserve());
    assertThat(front.caster().found().value()).isCloseTo(5, within(1e-9));
    // On an axle in front, nose up is caster lost.
    assertThat(front.caster().proposed().value())
        .isCloseTo(5 - front.proposed().noseUp().value(), within(1e-9));
    assertThat(front.steering()).isNotNull();
    LinkMismatch links = facts(build, LinkMismatch.class).get(0);
    same(front.steering().linkProposed(), links.dragLink());
    same(front.steering().apartProposed(), links.difference());
    BumpSteer steer = facts(build, BumpSteer.class).get(0);
    same(front.steering().bumpSteerFound(), steer.before());
    same(front.steering().bumpSteerProposed(), steer.after());
  }

  /** An adjustable link is set at the proposed height and keeps that length over the travel. */
  @ParameterizedTest
  @CsvSource({"''", "'  - { add: LB-AL-SC-RU, at: rear }\n'"})
  void theCurveRunsThroughTheProposedState(String more) throws IOException {
    Build build =
        DemoSheet.of(folder, "stonecrop", "changes:\n  - { add: LS-SC-R70, at: rear }\n" + more);
    BeamMap rear = map(build, Axle.REAR);
    BarMap.State state = rear.bar().proposed();
    BeamPoint rest = point(rear, 0);
    assertThat(rest.noseUp()).isCloseTo(rear.proposed().noseUp().value(), within(1e-6));
    assertThat(rest.forward()).isCloseTo(rear.proposed().forward().value(), within(1e-6));
    assertThat(Math.abs(rest.shift())).isCloseTo(state.shift().value(), within(1e-9));
    assertThat(rest.rollCenter()).isCloseTo(state.rollCenter().value(), within(1e-9));
    assertThat(rest.steer()).isNull();
    // A side view whose links are not parallel turns the axle by more than a degree over 100 mm.
    assertThat(Math.abs(point(rear, 100).noseUp() - rest.noseUp())).isGreaterThan(1);
  }

  private static BeamPoint point(BeamMap map, double travel) {
    return map.curve().stream().filter(point -> point.travel() == travel).findFirst().orElseThrow();
  }

  /** The tires' radius raises axle, bar and roll center alike. */
  @Test
  void tallerTiresRaiseTheRollCenter() throws IOException {
    Quantity before = bar(skerrow(28, ""), Axle.REAR).proposed().rollCenter();
    Build taller = skerrow(28, "  - { add: HR-2757017, at: rear }\n");
    Quantity after = bar(taller, Axle.REAR).proposed().rollCenter();
    Derivation derivation = new Derivation(taller, DAY);
    double lift = BarMap.tireLift(derivation, Axle.REAR).value();
    // 275/70R17 by its designation: 17 · 25.4 + 2 · 0.7 · 275 = 816.8.
    assertThat(lift).isBetween(5.0, 30.0);
    assertThat(after.value() - before.value()).isCloseTo(lift, within(1e-9));
    assertThat(after.expanded()).isGreaterThan(before.expanded());
  }

  @Test
  void whatNobodyMeasuredSaysWhatToMeasure() {
    BeamMap rear = map(demo("cairnback-same-size"), Axle.REAR);
    assertThat(rear.bar()).isNotNull();
    assertThat(rear.bar().proposed().isKnown()).isFalse();
    assertThat(rear.bar().proposed().left().absence()).isNotNull();
    assertThat(rear.bar().proposed().left().absence().how()).startsWith("tape: ");
    assertThat(rear.proposed().noseUp().absence().how()).contains("lower and an upper link");
    assertThat(rear.curve()).isEmpty();
  }

  /** Leaf springs hold an axle sideways: there is no bar to ask for. */
  @Test
  void aLeafSprungAxleAsksForNoBar() {
    for (BeamMap map : BeamMap.of(demo("gimmer-raised"), CATALOG, DAY)) {
      assertThat(map.bar()).isNull();
      assertThat(map.steering()).isNull();
    }
  }

  /** Which hole a bracket that is there already uses, the sheet cannot say. */
  @Test
  void aBracketAsFoundLeavesOpenHowTheAxleStandsToday() throws IOException {
    Build build =
        DemoSheet.of(
            folder,
            "skerrow",
            """
            as-found:
              fitted:
                - { part: LB-PK-SK, at: rear }
            changes:
              - { raise: 28 mm, at: rear }
            """);
    BarMap bar = bar(build, Axle.REAR);
    assertThat(bar.found().isKnown()).isFalse();
    assertThat(bar.found().shift().absence().how()).contains("which hole");
    assertThat(bar.proposed().isKnown()).isTrue();
    assertThat(bar.holeNamed()).isFalse();
  }
}
