package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the program does. */
class ReadmeTest {
  private static final Pattern SHEET = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);
  private static final Pattern COMMAND =
      Pattern.compile("(?m)^    (?:mvn.*&& )?java -jar target/trammel.jar (.*)$");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  @Test
  void everySheetItShowsCanBeChecked(@TempDir Path folder) throws IOException {
    List<String> whole = new ArrayList<>();
    Matcher blocks = SHEET.matcher(Files.readString(Path.of("README.md")));
    while (blocks.find()) {
      String text = blocks.group(1);
      whole.add(text.startsWith("waivers:") ? whole.get(0) + text : text);
    }
    assertThat(whole).hasSize(5);
    for (String sheet : whole) {
      Path file = folder.resolve("s.yaml");
      Files.writeString(file, sheet);
      assertThat(run("check", "--catalog", "catalog-demo", file.toString()))
          .as("%s%s", sheet, err)
          .isIn(0, 3, 4, 5);
    }
  }

  @Test
  void everyCommandItShowsRuns() throws IOException {
    Matcher commands = COMMAND.matcher(Files.readString(Path.of("README.md")));
    int count = 0;
    while (commands.find()) {
      count++;
      assertThat(run(commands.group(1).strip().split(" +", -1)))
          .as(commands.group(1))
          .isIn(0, 3, 4, 5, 6);
    }
    assertThat(count).isGreaterThanOrEqualTo(7);
  }

  @Test
  void theWorkedExampleIsRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/cairnback-too-wide.build.yaml";
    shows("    DOES NOT FIT.", "\nThe name in brackets", "check", sheet);
  }

  @Test
  void theLawBesideTheVerdictIsRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-spacers-in-washington.build.yaml";
    shows("    FITS THE VEHICLE;", "\nEach finding says", "check", sheet);
  }

  @Test
  void theMapOfTheAlignmentIsRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-raised-to-the-stop.build.yaml";
    shows("      Best setting:", "\nThe box is", "align", sheet);
  }

  @Test
  void theHolesOfABracketAreRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-wrong-hole.build.yaml";
    shows("    Bracket LB-PK-SK", "\nThen comes the length", "align", sheet);
  }

  @Test
  void theLimitsAreRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-raised-to-the-stop.build.yaml";
    shows("    Tire diameter, now", "\nIt counts from", "limits", sheet);
  }

  @Test
  void theComparisonIsRealOutput() throws IOException {
    shows(
        "    DOES NOT AGREE.",
        "\nThe number at the end of a line",
        "compare",
        "catalog-demo/builds/skerrow-raised-mildly.build.yaml",
        "catalog-demo/measured/skerrow-spring-sagged.measured.yaml");
  }

  @Test
  void theOtherHoleIsRealOutput() throws IOException {
    String measured = "catalog-demo/measured/skerrow-wrong-hole.measured.yaml";
    shows(
        "    All of it agrees with the bar",
        "\nThe exit status is 0",
        "compare",
        "catalog-demo/builds/skerrow-wrong-hole.build.yaml",
        measured);
    shown("    axles:", "\n| value |", Files.readString(Path.of(measured)));
  }

  @Test
  void theLedgerOfHeightsIsRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-raised-to-the-stop.build.yaml";
    shows("      Spring and ram ", "\n`--csv`", "heights", sheet);
  }

  @Test
  void theTrialOfABookIsRealOutput() throws IOException {
    shows(
        "    height.arms-with-lift,",
        "\nIt ends with status 5",
        "rules",
        "try",
        "rules/shop-example");
  }

  @Test
  void theBooksThatJudgedAreRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-rub-at-lock.build.yaml";
    shows(
        "    Judged by:",
        "\nNothing is ever taken",
        "check",
        "--book",
        "rules/shop-example",
        sheet);
  }

  @Test
  void whyARuleSpeaksIsRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-rub-at-lock.build.yaml";
    shows(
        "    On Skerrow on wheels",
        "\n### What you take for known",
        "rules",
        "read",
        "--book",
        "rules/shop-example",
        "wheel.track-limit",
        sheet);
  }

  @Test
  void whatABookAssumesIsRealOutput() throws IOException {
    String sheet = "catalog-demo/builds/skerrow-raised-in-maine.build.yaml";
    shows(
        "    Assumed, since nobody",
        "\nA value that",
        "check",
        "--book",
        "rules/shop-example",
        sheet);
  }

  /** What the README has between the two is what the command prints, line for line. */
  private void shows(String begins, String ends, String... command) throws IOException {
    run(command);
    shown(begins, ends, out.toString());
  }

  /** What the README has between the two stands in a text, line for line. */
  private static void shown(String begins, String ends, String text) throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf(begins);
    assertThat(from).as(begins).isPositive();
    String shown = readme.substring(from, readme.indexOf(ends, from)).stripTrailing();
    for (String line : shown.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
      assertThat(text).contains(line);
    }
  }
}
