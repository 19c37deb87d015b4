package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The ledger of heights, loads, pressures and travel from a sheet to text, table and data. */
class HeightsTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int heights(String sheet, String... more) {
    return Main.run(
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        Stream.of(
                Stream.of("heights", "--on", "2026-11-25"),
                Arrays.stream(more),
                Stream.of("catalog-demo/builds/" + sheet + ".build.yaml"))
            .flatMap(each -> each)
            .toArray(String[]::new));
  }

  private String words() {
    return out.toString().replaceAll("\\s+", " ");
  }

  private JsonNode value(String where, String what) {
    for (JsonNode value : JsonMapper.shared().readTree(out.toString()).get("values")) {
      if (value.get("where").asString().equals(where)
          && value.get("what").asString().equals(what)) {
        return value;
      }
    }
    throw new AssertionError("no " + what + " at " + where);
  }

  /**
   * Common practice: a height control set up on unchanged springs drives the pressure up and firms
   * the ride; spacers bring it back.
   */
  @Test
  void aHigherSettingDrivesThePressureUpAndSpacersBringItBack() {
    assertThat(heights("skerrow-raised-to-the-stop", "--format", "json")).isZero();
    JsonNode bare = value("front-left", "pressure");
    JsonNode ride = value("front-left", "ride frequency");
    assertThat(bare.get("proposed").asDouble()).isGreaterThan(1.3 * bare.get("today").asDouble());
    assertThat(ride.get("proposed").asDouble()).isGreaterThan(ride.get("today").asDouble());
    out.getBuffer().setLength(0);
    assertThat(heights("skerrow-raised-with-spacers", "--format", "json")).isZero();
    JsonNode packed = value("front-left", "pressure");
    assertThat(packed.get("proposed").asDouble())
        .isCloseTo(packed.get("today").asDouble(), within(0.15 * packed.get("today").asDouble()));
  }

  /** The figure proposed is the sum of what stands above it. */
  @ParameterizedTest
  @ValueSource(strings = {"stonecrop-raised", "cairnback-loaded", "skerrow-raised-mildly"})
  void theLedgerAddsUp(String sheet) {
    assertThat(heights(sheet, "--csv")).isZero();
    for (String corner : List.of("front-left", "rear-right")) {
      List<String[]> rows =
          out.toString()
              .lines()
              .filter(line -> !line.contains("\""))
              .map(line -> line.split(",", -1))
              .filter(cells -> cells[0].equals(corner) && cells[1].equals("height"))
              .toList();
      double sum = 0;
      for (String[] cells : rows) {
        boolean line =
            cells[4].isEmpty()
                && !cells[6].isEmpty()
                && Stream.of("raised by", "the sheet aims at", "\"beside it")
                    .noneMatch(cells[2]::startsWith);
        if (line) {
          sum += Double.parseDouble(cells[6]);
        }
        if (cells[2].equals("it stands at") && !cells[6].isEmpty()) {
          assertThat(Double.parseDouble(cells[6]))
              .isCloseTo(Double.parseDouble(cells[4]) + sum, within(1e-3));
        }
      }
      assertThat(rows).anyMatch(cells -> cells[2].equals("it stands at"));
    }
  }

  @Test
  void thePageDrawsTheTravelToScaleAndNamesWhatTheCatalogHas() {
    assertThat(heights("skerrow-raised-to-the-stop")).isZero();
    assertThat(words())
        .contains(
            "Both front wheels, height held by a sensor",
            "by the balance of forces",
            "spring spacer that would bring it home",
            "= droop left, | stands here, - bump left, # bump stop crushed",
            "LS-SK-F30, nearest to preferred",
            "approach angle",
            "a licensed mechanic has the last word");
    List<String> bars =
        out.toString()
            .lines()
            .filter(line -> line.matches("    (today|proposed) .*\\|.*"))
            .toList();
    assertThat(bars).hasSize(4);
    // Raised, a wheel stands nearer to the end of its droop.
    assertThat(bars.get(1).indexOf('|')).isLessThan(bars.get(0).indexOf('|'));
    assertThat(out.toString().lines())
        .allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void anUnknownFormatIsRefused() {
    assertThat(heights("skerrow-raised-mildly", "--format", "xml")).isEqualTo(2);
    assertThat(err.toString()).contains("text", "json");
  }
}
