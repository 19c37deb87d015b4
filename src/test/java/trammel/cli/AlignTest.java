package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The alignment map from a sheet to text and curves. */
class AlignTest {
  private static final int COLUMNS = 19;
  private static final int OF_WHEELS = 13;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  private int align(String sheet, String... more) {
    return run(
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of("align", "--on", "2026-11-25"),
                java.util.stream.Stream.concat(
                    java.util.Arrays.stream(more),
                    java.util.stream.Stream.of("catalog-demo/builds/" + sheet + ".build.yaml")))
            .toArray(String[]::new));
  }

  @Test
  void theMapTellsSettingWindowAndWhereTheArmsEnd() {
    assertThat(align("skerrow-raised-mildly")).isZero();
    assertThat(words())
        .contains(
            "Front left and front right alike, known at surveyed depth",
            "Best setting:",
            "cam turned",
            "Reach into the windows:",
            "camber -0.75° to 0.75°, preferred 0.00°",
            "caster 2.50° to 4.00°, preferred 3.25°",
            ". within reach +--+ window o nothing turned x best setting",
            "have the last word");
    assertThat(lastLift()).isBetween(32, 54);
    assertThat(err.toString()).isEmpty();
  }

  /** Arms made for it end later than the maker's. */
  @Test
  void otherArmsEndAtAnotherLift() {
    align("skerrow-raised-mildly");
    int stock = lastLift();
    out.getBuffer().setLength(0);
    align("skerrow-raised-with-arms");
    assertThat(lastLift()).isGreaterThan(stock).isGreaterThanOrEqualTo(55);
  }

  /** What was printed, without its line breaks. */
  private String words() {
    return out.toString().replaceAll("\\s+", " ");
  }

  private int lastLift() {
    java.util.regex.Matcher matcher =
        java.util.regex.Pattern.compile("at lifts from -?\\d+ to (\\d+) mm").matcher(words());
    assertThat(matcher.find()).isTrue();
    return Integer.parseInt(matcher.group(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cairnback-same-size", "stonecrop-steep-shaft", "drayling-highway"})
  void noLineIsWiderThanAScreenOfOld(String sheet) {
    assertThat(align(sheet)).isZero();
    assertThat(out.toString().lines())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(err.toString()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"skerrow-raised-mildly", "skerrow-raised-with-arms", "stonecrop-raised"})
  void noLineOfAMapIsWiderThanAScreenOfOld(String sheet) {
    noLineIsWiderThanAScreenOfOld(sheet);
  }

  /** Unsurveyed corners and beams draw no map; they say what to measure. */
  @ParameterizedTest
  @CsvSource({
    "cairnback-same-size, Camber and caster cannot be foretold",
    "cairnback-same-size, Not known: panhard bar of the rear axle (nobody has measured its ends)",
    "cairnback-same-size, 'Tape: both ends of a lower and an upper link.'"
  })
  void withoutHardPointsThereIsNoMap(String sheet, String said) {
    assertThat(align(sheet)).isZero();
    assertThat(words()).contains(said).doesNotContain("ver travel");
    out.getBuffer().setLength(0);
    assertThat(align(sheet, "--curves")).isZero();
    assertThat(out.toString().lines()).hasSize(1);
  }

  @Test
  void theCurvesAreCommaSeparatedNumbers() {
    assertThat(align("skerrow-raised-mildly", "--curves")).isZero();
    List<String[]> rows = out.toString().lines().map(line -> line.split(",", -1)).toList();
    assertThat(rows).hasSizeGreaterThan(20).allSatisfy(row -> assertThat(row).hasSize(COLUMNS));
    assertThat(rows.get(0)).startsWith("wheel", "travel", "camber", "caster");
    double before = Double.NEGATIVE_INFINITY;
    String wheel = "";
    for (String[] row : rows.subList(1, rows.size())) {
      assertThat(row[0]).isIn("front-left", "front-right", "rear");
      if (row[0].equals("rear")) {
        continue;
      }
      double travel = number(row[1]);
      assertThat(travel).isGreaterThan(row[0].equals(wheel) ? before : Double.NEGATIVE_INFINITY);
      before = travel;
      wheel = row[0];
      for (int i = 2; i < OF_WHEELS; i++) {
        assertThat(Double.isFinite(number(row[i]))).isTrue();
      }
      // Ratios of spring, damper and sensor on the lower arm, inboard of the wheel.
      assertThat(number(row[10])).isBetween(0.4, 0.9);
      assertThat(number(row[11])).isBetween(0.4, 0.9);
      assertThat(Math.abs(number(row[12]))).isBetween(0.1, 0.6);
    }
    assertThat(wheel).isEqualTo("front-right");
  }

  /** From 98 mm of droop to 82 of bump, 30 raised: at rest the angles are those of the map. */
  @Test
  void theCurvesRunFromDroopToBumpThroughTheBestSetting() {
    align("skerrow-raised-mildly", "--curves");
    List<String[]> left =
        out.toString()
            .lines()
            .filter(line -> line.startsWith("front-left,"))
            .map(line -> line.split(",", -1))
            .toList();
    assertThat(number(left.get(0)[1])).isBetween(-68.0, -58.0);
    assertThat(number(left.get(left.size() - 1)[1])).isBetween(102.0, 112.0);
    String[] rest = left.stream().filter(row -> number(row[1]) == 0).findFirst().orElseThrow();
    assertThat(number(rest[4]) > 10 && number(rest[4]) < 16).isTrue();
    assertThat(Math.abs(number(rest[5]) - 0.08)).isLessThan(1e-4);
    assertThat(Math.abs(number(rest[8]))).isLessThan(1e-3);
    out.getBuffer().setLength(0);
    align("skerrow-raised-mildly");
    assertThat(words())
        .containsPattern("There: camber " + shown(rest[2]) + " .*, caster " + shown(rest[3]) + " ");
  }

  /** One table: a beam's rows leave empty what belongs to wheels, and the other way about. */
  @Test
  void theCurvesHaveRowsOfBeamAxles() {
    assertThat(align("stonecrop-raised", "--curves")).isZero();
    List<String[]> rows = out.toString().lines().map(line -> line.split(",", -1)).toList();
    assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(COLUMNS));
    List<String> head = List.of(rows.get(0));
    assertThat(head.subList(OF_WHEELS, COLUMNS))
        .containsExactly("axle-shift", "bar-slope", "nose-up", "forward", "steer", "assumed");
    List<String[]> front = rows.stream().filter(row -> row[0].equals("front")).toList();
    List<String[]> rear = rows.stream().filter(row -> row[0].equals("rear")).toList();
    // Travels of 95 up and 120 down, 44 raised; of 100 and 130, 43 raised.
    assertThat(front).hasSize(21);
    assertThat(rear).hasSize(23);
    for (String[] row : front) {
      assertThat(row[2]).isEmpty();
      for (int i : new int[] {3, 9, 13, 14, 15, 16, 17}) {
        assertThat(Double.isFinite(number(row[i]))).isTrue();
      }
    }
    assertThat(rear).allSatisfy(row -> assertThat(row[3] + row[17]).isEmpty());
    String[] rest = front.stream().filter(row -> number(row[1]) == 0).findFirst().orElseThrow();
    assertThat(number(rest[17])).isZero();
  }

  @Test
  void aBeamAxleStandsAsFoundBesideAsProposed() {
    assertThat(align("stonecrop-raised")).isZero();
    assertThat(words())
        .contains(
            "Front beam axle as found as proposed",
            "frame raised over it by 0 mm 44.4 ± 0.2 mm (1.75 in)",
            "axle off the middle 0 mm",
            "moves left over travel",
            "roll center over ground",
            "wheels moved forward 0 mm -7.1",
            "caster 5.00 ± 0.25° 4.39",
            "Window: caster 4.00° to 6.00°, preferred 5.00°; nothing can be set on a beam.",
            "drag link and bar apart",
            "bump steer over 25 mm",
            "Bracket LB-PK-SCF (Stonecrop front bracket, frame end), in the catalog",
            "frame end raised, mm – -20.0 ± 0.2 -40.0 ± 0.2",
            "LB-PB-SC-F (Stonecrop front bar, adjustable, in the catalog)",
            "it can be set to that",
            "Rear beam axle as found as proposed")
        .doesNotContain("Not known");
    assertThat(err.toString()).isEmpty();
  }

  /** What the map calls best is what the check tells to do. */
  @Test
  void theBestHoleIsTheOneThatTheCheckNames() {
    align("skerrow-wrong-hole");
    java.util.regex.Matcher best =
        java.util.regex.Pattern.compile(
                "Best: the (\\w+) hole, which leaves the axle (\\S+ ± \\S+) mm")
            .matcher(words());
    assertThat(best.find()).isTrue();
    assertThat(words()).contains("The sheet names the upper hole.");
    out.getBuffer().setLength(0);
    run("check", "--on", "2026-11-25", "catalog-demo/builds/skerrow-wrong-hole.build.yaml");
    assertThat(words())
        .contains(
            "To settle it: put the bar in the " + best.group(1) + " hole.",
            "in the " + best.group(1) + " hole it would be " + best.group(2) + " mm");
  }

  private static String shown(String number) {
    double value = number(number);
    return String.format(java.util.Locale.ROOT, "%.2f", value).replace(".", "\\.");
  }

  private static double number(String cell) {
    return Double.parseDouble(cell);
  }

  @Test
  void aSheetThatCannotBeReadIsNotMapped(@TempDir Path folder) throws IOException {
    Path sheet = folder.resolve("wrong.build.yaml");
    Files.writeString(sheet, "build: wrong\nvehicle: skerow\nchanges: []\n");
    assertThat(run("align", "--catalog", "catalog-demo", sheet.toString())).isEqualTo(2);
    assertThat(run("align", folder.resolve("none.build.yaml").toString())).isEqualTo(2);
    assertThat(run("align")).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString())
        .contains("wrong.build.yaml:2:", "skerow", "none.build.yaml")
        .doesNotContain("\tat ", "Exception");
  }
}
