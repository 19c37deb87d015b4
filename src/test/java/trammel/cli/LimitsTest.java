package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.build.Trial;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.remedy.Limits;

/** How far each wish may go: every end is judged again on either side of it. */
class LimitsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  /** How close an end is found (mm), and a little. */
  private static final double BEYOND = 0.51;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"cairnback-same-size", "skerrow-raised-mildly", "stonecrop-unmarked-wheels"})
  void everyEndReallyStops(String sheet) {
    Build build =
        BuildFiles.read(
            Path.of("catalog-demo/builds/" + sheet + ".build.yaml"),
            CatalogFiles.read(Path.of("catalog-demo")));
    int stopped = 0;
    try (Judge judge = Judge.ofBaseBook()) {
      Set<String> already = deciding(judge, build, Trial.NONE);
      List<Limits.Range> ranges = Limits.of(build, judge, DAY);
      assertThat(ranges)
          .extracting(Limits.Range::wish)
          .contains(Limits.Wish.TIRE_DIAMETER, Limits.Wish.WHEEL_OFFSET, Limits.Wish.LIFT);
      for (Limits.Range range : ranges) {
        assertThat(range.less().by()).isNotPositive();
        assertThat(range.more().by()).isNotNegative();
        for (int way : new int[] {-1, 1}) {
          Limits.End end = way < 0 ? range.less() : range.more();
          Set<String> inside = deciding(judge, build, trial(range.wish(), end.by()));
          inside.removeAll(already);
          assertThat(inside).as("%s by %s", range.wish(), end.by()).isEmpty();
          Finding stops = end.stops();
          if (stops != null) {
            stopped++;
            double outside = end.by() + way * BEYOND;
            Set<String> beyond = deciding(judge, build, trial(range.wish(), outside));
            beyond.removeAll(already);
            assertThat(beyond).as("%s by %s", range.wish(), outside).contains(stops.identity());
          }
        }
      }
    }
    assertThat(stopped).isGreaterThan(3);
  }

  private static Set<String> deciding(Judge judge, Build build, Trial trial) {
    return judge.judge(Derivation.facts(build.trying(trial), DAY)).findings().stream()
        .filter(Finding::decides)
        .map(Finding::identity)
        .collect(Collectors.toSet());
  }

  private static Trial trial(Limits.Wish wish, double more) {
    return switch (wish) {
      case TIRE_DIAMETER -> new Trial(more, 0, 0, 0, 0, 0, 0);
      case TIRE_WIDTH -> new Trial(0, more, 0, 0, 0, 0, 0);
      case WHEEL_OFFSET -> new Trial(0, 0, more, 0, 0, 0, 0);
      case WHEEL_SPACER -> new Trial(0, 0, 0, more, 0, 0, 0);
      case SPRING_SPACER -> new Trial(0, 0, 0, 0, more, 0, 0);
      case FRONT_LIFT -> new Trial(0, 0, 0, 0, 0, more, 0);
      case REAR_LIFT -> new Trial(0, 0, 0, 0, 0, 0, more);
      case LIFT -> new Trial(0, 0, 0, 0, 0, more, more);
    };
  }

  @Test
  void everyWishIsToldBothWays() {
    assertThat(
            run(
                "limits",
                "--on",
                "2026-11-25",
                "catalog-demo/builds/cairnback-same-size.build.yaml"))
        .isZero();
    // Same tires and wheels: every wish but spacers, of which there are none.
    assertThat(out.toString().lines().filter(line -> line.contains(", now ")))
        .hasSize(Limits.Wish.values().length - 2);
    assertThat(out.toString().lines().filter(line -> line.matches("  (up to|not at all) .*less.*")))
        .hasSize(6);
    assertThat(out.toString().lines().filter(line -> line.matches("  (up to|not at all) .*more.*")))
        .hasSize(6);
    assertThat(out.toString()).contains("; then, ");
    assertThat(out.toString().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aSheetThatCannotBeReadHasNoLimits(@TempDir Path folder) throws IOException {
    Path sheet = folder.resolve("wrong.build.yaml");
    Files.writeString(sheet, "build: wrong\nvehicle: skerow\nchanges: []\n");
    assertThat(run("limits", "--catalog", "catalog-demo", sheet.toString())).isEqualTo(2);
    assertThat(run("limits", folder.resolve("none.build.yaml").toString())).isEqualTo(2);
    assertThat(run("limits")).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString())
        .contains("wrong.build.yaml:2:", "skerow", "none.build.yaml")
        .doesNotContain("\tat ", "Exception");
  }
}
