package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.derive.WheelMap;
import trammel.derive.WheelMap.CurvePoint;
import trammel.fact.Alignment;
import trammel.fact.BumpSteer;
import trammel.fact.Fact;
import trammel.fact.JointSwing;
import trammel.fact.LinkageReach;
import trammel.quantity.Decision;
import trammel.read.UnreadableFile;
import trammel.report.AlignmentPage;

/** A surveyed strut front from its profile to facts and map (all of it invented). */
class StrutProfileTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path FIXTURE = Path.of("src/test/resources/strut");
  private static final int LIFT = 40;
  private static final double TOE = 0.05;

  private static final Map<HardPoint, Vector3D> POINTS =
      Map.of(
          HardPoint.STRUT_TOP, new Vector3D(-28, 588, 880),
          HardPoint.STRUT_FOOT, new Vector3D(-7, 673, 370),
          HardPoint.LOWER_FRONT_PIVOT, new Vector3D(10, 375, 200),
          HardPoint.LOWER_REAR_PIVOT, new Vector3D(-290, 385, 206),
          HardPoint.LOWER_BALL_JOINT, new Vector3D(5, 725, 188),
          HardPoint.TIE_ROD_INNER, new Vector3D(-150, 330, 258),
          HardPoint.TIE_ROD_OUTER, new Vector3D(-140, 690, 250),
          HardPoint.WHEEL_CENTER, new Vector3D(0, 782, 330));

  @TempDir private Path folder;

  private Path catalog(String from, String to) throws IOException {
    Path copy = folder.resolve("catalog");
    try (Stream<Path> files = Files.walk(FIXTURE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = copy.resolve(FIXTURE.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.writeString(target, Files.readString(file));
      }
    }
    Path profile = copy.resolve("vehicles/tilsom.vehicle.yaml");
    String text = Files.readString(profile);
    assertThat(text).contains(from);
    Files.writeString(profile, text.replace(from, to));
    return copy;
  }

  private Path sheet(Path catalog, String adjusters, String changes) throws IOException {
    return Files.writeString(
        folder.resolve("sheet.build.yaml"),
        "build: b\ncatalog: "
            + catalog.toAbsolutePath()
            + "\nvehicle: tilsom\nas-found:\n  adjusters: { front: "
            + adjusters
            + " }\nchanges:\n"
            + changes);
  }

  private Build build(Path catalog, String adjusters, String changes) throws IOException {
    return BuildFiles.read(sheet(catalog, adjusters, changes), CatalogFiles.read(catalog));
  }

  /** The springs of the fixture that lift so far. */
  private static String raised(int lift) {
    return "  - { add: WB-L" + lift + ", at: front }\n";
  }

  private static WheelMap.Drawing drawing(Build build, int wheel) {
    WheelMap.Drawing drawing = WheelMap.of(build, DAY).get(wheel).drawing();
    if (drawing == null) {
      throw new AssertionError("no map of wheel " + wheel);
    }
    return drawing;
  }

  private static <F extends Fact> List<F> facts(Build build, Class<F> kind) {
    return Derivation.facts(build, DAY).stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static StrutSolver solved(double travel, StrutSolver.Held held) {
    double lean = Math.toRadians(-0.5);
    double turn = Math.toRadians(TOE);
    return StrutSolver.solve(
        POINTS,
        new Vector3D(
            Math.sin(turn) * Math.cos(lean), Math.cos(turn) * Math.cos(lean), -Math.sin(lean)),
        Map.of(),
        travel,
        held);
  }

  /** Every height of the map against least squares of the distances alone (own derivation). */
  @Test
  void theMapIsWhatTheDistancesMakeOfIt() throws IOException {
    WheelMap.Drawing drawing = drawing(build(FIXTURE, "seized", raised(LIFT)), 0);
    assertThat(drawing.curve()).hasSizeGreaterThan(12);
    StrutSolver surveyed = solved(0, StrutSolver.toe(TOE));
    StrutSolver rest = solved(-LIFT, StrutSolver.toe(TOE));
    double shown = 2.75 - surveyed.caster();
    assertThat(drawing.best().camber()).isCloseTo(rest.camber(), within(1e-6));
    assertThat(drawing.best().caster() - shown).isCloseTo(rest.caster(), within(1e-6));
    StrutSolver.Held rod = StrutSolver.rod(rest.rod(), rest.inner());
    for (CurvePoint point : drawing.curve()) {
      StrutSolver there = solved(point.travel() - LIFT, rod);
      assertThat(point.camber()).isCloseTo(there.camber(), within(1e-6));
      assertThat(point.caster() - shown).isCloseTo(there.caster(), within(1e-6));
      assertThat(point.kingpinInclination()).isCloseTo(there.inclination(), within(1e-6));
      assertThat(point.toe()).isCloseTo(there.toe(), within(1e-6));
      StrutSolver up = solved(point.travel() - LIFT + 0.5, rod);
      StrutSolver down = solved(point.travel() - LIFT - 0.5, rod);
      assertThat(point.damper()).isCloseTo(down.length() - up.length(), within(1e-5));
      assertThat(point.spring()).isEqualTo(point.damper());
      assertThat(point.sensor()).isNull();
    }
  }

  @Test
  void bothSidesMirrorAndSoDoesASurveyOfTheRight() throws IOException {
    Build left = build(FIXTURE, "free", raised(LIFT));
    assertThat(drawing(left, 1).best()).isEqualTo(drawing(left, 0).best());
    assertThat(drawing(left, 1).curve()).isEqualTo(drawing(left, 0).curve());
    Path right =
        catalog("      lower-ball-joint: { fore", "      lower-ball-joint: { side: right, fore");
    assertThat(drawing(build(right, "free", raised(LIFT)), 0).curve())
        .isEqualTo(drawing(left, 0).curve());
  }

  @Test
  void withoutALiftNothingChanges() throws IOException {
    Build wheels = build(FIXTURE, "seized", "  - { add: WB-8, at: all }\n");
    assertThat(facts(wheels, Alignment.class)).isEmpty();
    WheelMap.Drawing drawing = drawing(wheels, 0);
    assertThat(drawing.best().camber()).isCloseTo(-0.5, within(1e-9));
    assertThat(drawing.best().caster()).isCloseTo(2.75, within(1e-9));
    assertThat(drawing.curve())
        .filteredOn(point -> point.travel() == 0)
        .singleElement()
        .satisfies(point -> assertThat(point.toe()).isCloseTo(TOE, within(1e-9)));
  }

  /** A plate is a lift of its thickness over the motion ratio, and alignment follows the travel. */
  @Test
  void aPlateAboveTheStrutIsALift() throws IOException {
    WheelMap.Drawing plate = drawing(build(FIXTURE, "seized", "  - { add: WB-9, at: front }\n"), 0);
    WheelMap.Drawing raise = drawing(build(FIXTURE, "seized", raised(25)), 0);
    assertThat(plate.best().camber()).isCloseTo(raise.best().camber(), within(1e-6));
    // The plate takes the damper's stroke along: it hangs lower.
    assertThat(plate.curve().get(0).travel()).isLessThan(raise.curve().get(0).travel());
  }

  @Test
  void whatIsAskedOfAStrutIsKnownAndWhatItHasNotIsNotAsked() throws IOException {
    Build build = build(FIXTURE, "free", raised(25));
    assertThat(facts(build, JointSwing.class))
        .allSatisfy(swing -> assertThat(swing.subject().where()).startsWith("rear"));
    assertThat(facts(build, Alignment.class))
        .filteredOn(wheel -> wheel.subject().where().startsWith("front"))
        .hasSize(2)
        .allSatisfy(
            wheel -> {
              assertThat(wheel.depth()).isEqualTo("surveyed");
              assertThat(wheel.camberReserve().value()).isPositive();
              assertThat(wheel.casterReserve().value()).isPositive();
              assertThat(wheel.setting()).contains("knuckle upper bolt", "strut top");
            });
    assertThat(facts(build, BumpSteer.class))
        .hasSize(2)
        .allSatisfy(steer -> assertThat(steer.after().isKnown()).isTrue());
    assertThat(facts(build, LinkageReach.class))
        .hasSize(2)
        .allSatisfy(reach -> assertThat(reach.reaches()).isEqualTo(Decision.MET));
  }

  @Test
  void theRestIsKnownByPrintoutsAndSaysSo() throws IOException {
    String words = "this suspension is known from two alignment printouts only";
    Build build = build(FIXTURE, "free", raised(25));
    assertThat(
            AlignmentPage.text(build, WheelMap.of(build, DAY), List.of(), DAY)
                .replaceAll("\\s+", " "))
        .contains("Rear left, known at tape depth", words);
    assertThat(facts(build, Alignment.class))
        .filteredOn(wheel -> wheel.subject().where().startsWith("rear"))
        .hasSize(2)
        .allSatisfy(
            wheel -> {
              assertThat(wheel.setting()).contains(words);
              assertThat(wheel.camberReserve().absence())
                  .isNotNull()
                  .satisfies(absence -> assertThat(absence.reason()).contains(words));
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "layout: strut | layout: double-wishbone | is of a strut, which this layout has not"
            + " | Is it a strut? Write layout: strut",
        "strut-foot: { | upper-ball-joint: { | is of an upper arm, which a strut corner has not"
            + " | Is it a double wishbone? Write layout: double-wishbone",
        "moves: strut-top | moves: upper-pivots | an adjuster moves the upper pivots, which a strut"
            + " corner has not | Is it a double wishbone?",
        "means: slot | means: length | found a length at the strut top | Write means: slot",
        "eccentricity: 4 mm | eccentricity: 4 mm, toward: 20° | 20° is a direction, which the"
            + " eccentric at the lower rear pivot has not | A slot or shims have one.",
        "steering: | 'upper-swing: { limit: 30° }\\n    steering:' | is a swing of an upper"
            + " ball joint, which a strut corner has not | Is it a double wishbone?",
        "out: 588 mm | out: 738 mm | 725 mm lies no farther out than the strut top, which is at"
            + " 738 mm | Are inner and outer swapped?",
        "out: 673 mm, up: 370 mm | out: 673 mm, up: 900 mm | 880 mm is no higher than the strut"
            + " foot, which is at 900 mm | Are top and foot swapped?",
        "out: 673 mm, up: 370 mm | out: 770 mm, up: 620 mm | leans the strut by"
            + " | Is it a bolt at the knuckle, and not on the strut's axis?",
        "out: 705 mm, up: 440 mm | out: 905 mm, up: 440 mm | aside of the strut's axis; expected"
            + " 150 mm at the most | Is it a bolt of another part?",
        "up: 380 mm | up: 425 mm | puts the bolts at the knuckle 17 mm apart | was one point copied",
        "caster: 2.75° | caster: -2.75° | is not the caster of the surveyed strut top and ball joint"
            + " | Is the sign swapped? Was 2.75° meant?",
        "bump-travel: 70 mm | bump-travel: 340 mm | is farther than the surveyed linkage goes up"
            + " | Measure the travel"
      })
  void whatCannotBeIsRefusedWithTheLikelyMistake(String from, String to, String what, String advice)
      throws IOException {
    Path spoiled = catalog(from, to.replace("\\n", "\n"));
    UnreadableFile refused =
        catchThrowableOfType(UnreadableFile.class, () -> CatalogFiles.read(spoiled));
    assertThat(refused).isNotNull();
    assertThat(refused.getMessage()).contains(what, advice);
  }

  /** Without bolts at the knuckle nobody knows what they do. */
  @Test
  void anAdjusterAtBoltsThatAreNotSurveyedIsRefused() throws IOException {
    Path spoiled =
        catalog("      knuckle-lower-bolt: { fore: -7 mm, out: 712 mm, up: 380 mm }\n", "");
    UnreadableFile refused =
        catchThrowableOfType(UnreadableFile.class, () -> CatalogFiles.read(spoiled));
    assertThat(refused).isNotNull();
    assertThat(refused.getMessage())
        .contains("turns the knuckle about its bolts, and nobody says where they are")
        .contains("Survey knuckle-upper-bolt and knuckle-lower-bolt");
  }
}
