package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** From a sheet and what was measured to the page, the data and the overlay. */
class CompareTest {
  private static final String SHEET = "catalog-demo/builds/skerrow-raised-mildly.build.yaml";
  private static final String AGREES = "catalog-demo/measured/skerrow-raised-mildly.measured.yaml";
  private static final String SAGGED = "catalog-demo/measured/skerrow-spring-sagged.measured.yaml";

  private static final String HOLE_SHEET = "catalog-demo/builds/skerrow-wrong-hole.build.yaml";
  private static final String HOLE = "catalog-demo/measured/skerrow-wrong-hole.measured.yaml";

  /** A plate above each front strut: 30 mm at a ratio of 0.58 should give 51.7. */
  private static final String PLATES =
      """
      build: plates
      vehicle: cairnback
      changes:
        - { add: LT-CB-F30, at: front }
      measurements:
        heights:
          - { at: front-left, height: 504 mm, state: as-found }
          - { at: front-right, height: 506 mm, state: as-found }
        alignment:
          - { at: front-left, height: 504 mm, camber: 0.1°, caster: 3°, state: as-found }
      """;

  private static final String PLATES_GAVE =
      """
      measured: plates fitted
      on: 2026-11-20
      heights:
        - { at: front-left, height: 534 mm ± 1 mm }
        - { at: front-right, height: 536 mm ± 1 mm }
      alignment:
        - { at: front-left, camber: 1.1°, caster: 2.2° }
        - { at: front-right, adjusted: yes, camber: 0.4°, caster: 2.8° }
      gaps:
        - { at: front-left:rear-mount, gap: 5 mm, steer: full-left, height: rest }
      """;

  @TempDir private Path folder = Path.of("");
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  private int compare(String... arguments) {
    return run(
        Stream.concat(Stream.of("compare", "--on", "2026-11-25"), Stream.of(arguments))
            .toArray(String[]::new));
  }

  private String write(String name, String text) throws IOException {
    String catalog = Path.of("catalog-demo").toAbsolutePath().toString();
    String placed = text.replace("vehicle: ", "catalog: " + catalog + "\nvehicle: ");
    return Files.writeString(folder.resolve(name), name.endsWith(".build.yaml") ? placed : text)
        .toString();
  }

  private String words() {
    return out.toString().replaceAll("\\s+", " ");
  }

  @Test
  void whatLiesWherePredictedAgrees() {
    assertThat(compare(SHEET, AGREES)).isZero();
    assertThat(words())
        .startsWith("AGREES. All 13 measured values lie where predicted")
        .contains(
            "E_n of ISO 13528", "Toe of one wheel", "Front left rear mount", "have the last word")
        .doesNotContain("would explain");
    assertThat(err.toString()).isEmpty();
  }

  /** A spring that has sagged on one side is on no sheet. */
  @Test
  void aSpringThatSagsIsNotOnTheSheet() {
    assertThat(compare(SHEET, SAGGED)).isEqualTo(4);
    assertThat(words())
        .startsWith("DOES NOT AGREE. 1 of 5")
        .contains("Front left, pressure: measured 8650", "No single value on the sheet")
        .contains("Look at the front left for something that is not on the sheet");
  }

  /** Both sides alike: what both rest on is named, with its file and line. */
  @Test
  void whatBothSidesRestOnIsNamed() throws IOException {
    String raised =
        write(
            "r.build.yaml",
            """
            build: r
            vehicle: skerrow
            changes:
              - { raise: 30 mm ± 12 mm, at: front }
            """);
    String higher =
        write(
            "h.measured.yaml",
            """
            measured: h
            on: 2026-11-20
            heights:
              - { at: front-left, height: 558 mm ± 2 mm }
              - { at: front-right, height: 558 mm ± 2 mm }
            """);
    assertThat(compare(raised, higher)).isEqualTo(4);
    assertThat(words())
        .contains("1. The suspension lift would have to be 46 mm instead of 30 mm (53 % higher)")
        .contains("r.build.yaml:5 changes[0].raise");
  }

  /** A bar that was bolted into another hole than the sheet has. */
  @Test
  void theHoleThatTheBarIsInIsNamed() {
    assertThat(compare(HOLE_SHEET, HOLE)).isEqualTo(4);
    assertThat(words())
        .startsWith("DOES NOT AGREE. 1 of 9")
        .contains("Rear, bar slope: measured 5.3 ± 0.5° where 3.72")
        .contains("All of it agrees with the bar in another hole:")
        .contains("in the hole \"lower\" of the bracket LB-PK-SK instead of \"upper\"")
        .contains("skerrow-wrong-hole.build.yaml:8")
        .doesNotContain("No single value");
    assertThat(out.toString().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(compare("--format", "json", HOLE_SHEET, HOLE)).isEqualTo(4);
    JsonNode hole = new ObjectMapper().readTree(out.toString()).path("holes").get(0);
    assertThat(hole.path("wanted").asString()).isEqualTo("lower");
    assertThat(hole.path("stated").asString()).isEqualTo("upper");
    assertThat(hole.path("line").asInt()).isEqualTo(8);
  }

  /** What a rack shows of a beam follows its links: an overlay has no printout of it. */
  @Test
  void aBeamsPrintoutIsComparedAndNotKept() throws IOException {
    String sheet =
        write(
            "b.build.yaml",
            "build: b\nvehicle: stonecrop\nchanges:\n  - { add: LS-SC-F40P, at: front }\n");
    String measured =
        write(
            "b.measured.yaml",
            """
            measured: b
            on: 2026-11-20
            heights:
              - { at: front-left, height: 562 mm }
            alignment:
              - { at: front-left, camber: -0.2°, caster: 4.5°, toe: 0.1° }
            """);
    Path overlay = folder.resolve("b.overlay.yaml");
    compare("--write-overlay", overlay.toString(), sheet, measured);
    assertThat(words())
        .contains("Caster, axis top rearward positive")
        .doesNotContain("not predicted");
    assertThat(overlay).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({AGREES, SAGGED})
  void noLineIsWiderThanAScreenOfOld(String measured) {
    compare(SHEET, measured);
    assertThat(out.toString().lines())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void theSameAsData() {
    assertThat(compare("--format", "json", SHEET, SAGGED)).isEqualTo(4);
    JsonNode data = new ObjectMapper().readTree(out.toString());
    assertThat(data.path("agrees").asBoolean()).isFalse();
    JsonNode left = data.path("values").get(2);
    assertThat(left.path("kind").asString()).isEqualTo("pressure");
    assertThat(left.path("measured").asDouble()).isEqualTo(8650);
    double score =
        (8650 - left.path("predicted").asDouble())
            / Math.hypot(
                left.path("measured-expanded").asDouble(),
                left.path("predicted-expanded").asDouble());
    assertThat(left.path("score").asDouble())
        .isCloseTo(score, org.assertj.core.api.Assertions.within(1e-5));
    assertThat(compare("--csv", SHEET, SAGGED)).isEqualTo(4);
    List<String> rows = out.toString().lines().toList();
    assertThat(rows).hasSize(6).allSatisfy(row -> assertThat(row.split(",", -1)).hasSize(12));
    assertThat(rows.get(3)).startsWith("pressure,front-left,,kPa,8650.0000,").endsWith(",no,,");
  }

  /** A vehicle with neither a printout nor hard points: its camber is not foretold. */
  @Test
  void whatNothingForetellsStandsInTheTableWithTheReason() throws IOException {
    String measured =
        write(
            "m.measured.yaml",
            """
            measured: after
            on: 2026-11-20
            source: the shop's own sheet
            alignment:
              - { at: front-left, camber: 0.75° }
            """);
    assertThat(compare("--csv", "catalog-demo/builds/cairnback-same-size.build.yaml", measured))
        .isEqualTo(4);
    assertThat(out.toString().lines().skip(1))
        .containsExactly(
            "camber,front-left,nothing turned,°,0.7500,0.1000,,,,,no printout of this wheel,");
  }

  @Test
  void theOverlayIsUsedInPlaceOfTheProfile() throws IOException {
    String sheet = write("s.build.yaml", PLATES);
    String measured = write("m.measured.yaml", PLATES_GAVE);
    Path overlay = folder.resolve("mine.overlay.yaml");
    assertThat(compare("--write-overlay", overlay.toString(), sheet, measured)).isEqualTo(4);
    assertThat(Files.readString(overlay))
        .contains("at: front\n    motion-ratio: { value: 1 ±", "at: front-left\n    height:")
        .contains("with: [", "lifted:", "plates fitted, 2026-11-20 (")
        .doesNotContain("at: front-right");
    String again =
        write("t.build.yaml", PLATES.replace("changes:", "overlay: mine.overlay.yaml\nchanges:"));
    assertThat(compare("--csv", again, measured)).isZero();
    assertThat(out.toString())
        .contains("height,front-left,,mm,534.0000,1.0000,534.0000,")
        .contains("camber,front-left,nothing turned,°,1.1000,0.1000,1.1000,")
        .contains("gap,front-left:rear-mount,\"full left, rest\",mm,5.0000,5.0000,5.0000,");
    run("check", "--on", "2026-11-25", again);
    assertThat(words()).contains("rear-mount@front-left");
    String finding =
        out.toString()
            .replaceAll("(?s).*?\\[?(clearance\\.rear-mount\\S*@front-left:rear-mount).*", "$1");
    run("working", "--on", "2026-11-25", again, finding.replace("]", ""));
    assertThat(words()).contains("mine.overlay.yaml:", "plates fitted, 2026-11-20");
  }

  @Test
  void anOverlayOfAnotherVehicleIsRefusedAtItsPlace() throws IOException {
    write("other.overlay.yaml", "overlay: o\nvehicle: gimmer\non: 2026-11-20\n");
    String sheet =
        write("s.build.yaml", PLATES.replace("changes:", "overlay: other.overlay.yaml\nchanges:"));
    assertThat(run("check", sheet)).isEqualTo(2);
    assertThat(err.toString())
        .contains("s.build.yaml:4:", "of the vehicle \"gimmer\"", "this sheet is of \"cairnback\"");
  }

  @Test
  void nothingButAnOverlayOfThisVehicleIsWrittenOver() throws IOException {
    String sheet = write("s.build.yaml", PLATES);
    String measured = write("m.measured.yaml", PLATES_GAVE);
    String profile = write("p.vehicle.yaml", "vehicle: p\n");
    String disguised = write("p.overlay.yaml", "vehicle: cairnback\nmaker: none\n");
    String other = write("o.overlay.yaml", "overlay: o\nvehicle: gimmer\non: 2026-11-20\n");
    for (String file : List.of(sheet, measured, profile, disguised, other)) {
      String before = Files.readString(Path.of(file));
      assertThat(compare("--write-overlay", file, sheet, measured)).as(file).isEqualTo(2);
      assertThat(err.toString()).contains(file);
      assertThat(Files.readString(Path.of(file))).isEqualTo(before);
    }
    String mine = folder.resolve("none/mine.overlay.yaml").toString();
    assertThat(compare("--write-overlay", mine, sheet, measured)).isEqualTo(2);
    assertThat(err.toString()).contains("cannot be written").doesNotContain("\tat ");
  }

  /** Written whole: an older one is replaced in one step and nothing is left beside it. */
  @Test
  void anOlderOverlayIsReplacedWhole() throws IOException {
    String sheet = write("s.build.yaml", PLATES);
    String measured = write("m.measured.yaml", PLATES_GAVE);
    Path mine =
        Path.of(
            write(
                "mine.overlay.yaml",
                "overlay: old\nvehicle: cairnback\non: 2020-01-01\n" + "# long\n".repeat(500)));
    Path link = folder.resolve("older");
    Files.createLink(link, mine);
    assertThat(compare("--write-overlay", mine.toString(), sheet, measured)).isEqualTo(4);
    assertThat(Files.readString(mine)).contains("plates fitted").doesNotContain("# long");
    // Another name of the old file still has all of it: it was replaced, not written into.
    assertThat(Files.readString(link)).startsWith("overlay: old").endsWith("# long\n");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "s.build.yaml", "m.measured.yaml", "mine.overlay.yaml", "older");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "heights: []| nothing is measured",
        "heights: [{ at: spare, height: 540 mm }]| stands on no ground",
        "heights: [{ at: front-left, height: 540 mm }, { at: front-left, height: 541 mm }]| a second",
        "heights: [{ at: front-left, height: 540 mm ± 0 mm }]| ± 0",
        "gaps: [{ at: rear-left:arch, gap: 9 mm, steer: full-left, height: rest }]| does not steer",
        "gaps: [{ at: front-left:roof, gap: 9 mm, steer: straight, height: rest }]| the station",
        "axles: [{ at: front, bar-slope: 5° }]| the front axle is no beam",
        "axles: [{ at: rear }]| nothing is measured here",
        "axles: [{ at: rear, shift: 3 mm ± 0 mm }]| ± 0",
        "axles: [{ at: rear, turn: 1° }, { at: rear, bar-slope: 5° }]| a second entry of the rear",
        "shafts: [{ shaft: rear shart, pinion-slope: 3° }]| Did you mean rear shaft?",
        "shafts: [{ shaft: rear shaft }]| nothing is measured here",
        "shafts: [{ shaft: rear shaft, axle-joint: -2° }]| axle-joint"
      })
  void aSenselessMeasuredFileIsRefusedAtItsPlace(String line, String said) throws IOException {
    String measured = write("m.measured.yaml", "measured: m\non: 2026-11-20\n" + line + "\n");
    assertThat(compare(SHEET, measured)).isEqualTo(2);
    assertThat(err.toString()).contains("m.measured.yaml:", said);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aWrongCommandLineIsTwo() {
    assertThat(compare(SHEET)).isEqualTo(2);
    assertThat(compare(SHEET, "none.measured.yaml")).isEqualTo(2);
  }
}
