package trammel.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every case spoils a file of the demo and has all that is said about it, word for word. In {@code
 * refused-surveys.txt} a case is a line {@code # name}, a line {@code in: file}, pairs of lines
 * {@code -} and {@code +} that replace text, and what is said behind {@code =}.
 *
 * <p>Lengths and angles in the expected words are worked out from the two points named; where a
 * travel ends is what the linkage's own solver says, which has its tests elsewhere.
 */
class RefusedSurveysTest {
  private static final Path CASES = Path.of("src/test/resources/catalog/refused-surveys.txt");

  private static final String SKERROW = "vehicles/skerrow.vehicle.yaml";

  @TempDir private Path folder;

  /** One case of the file. */
  record Case(String name, List<String> lines) {
    List<String> after(String mark) {
      return lines.stream()
          .filter(line -> line.startsWith(mark))
          .map(line -> line.substring(mark.length()))
          .toList();
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> cases() throws IOException {
    List<Case> cases = new ArrayList<>();
    for (String line : Files.readAllLines(CASES)) {
      if (line.startsWith("# ")) {
        cases.add(new Case(line.substring(2), new ArrayList<>()));
      } else if (!line.isEmpty()) {
        cases.get(cases.size() - 1).lines().add(line);
      }
    }
    return cases;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysWhereAndWhatAndTheLikelyMistake(Case given) throws IOException {
    SpoiledCatalog catalog = new SpoiledCatalog(folder);
    List<String> old = given.after("- ");
    List<String> wrong = given.after("+ ");
    assertThat(wrong).hasSameSizeAs(old).isNotEmpty();
    catalog.spoil(
        given.after("in: ").get(0),
        text -> {
          String spoiled = text;
          for (int i = 0; i < old.size(); i++) {
            spoiled =
                SpoiledCatalog.replaced(spoiled, old.get(i), wrong.get(i).replace("\\n", "\n"));
          }
          return spoiled;
        });
    assertThat(catalog.refusal()).isNotEmpty().isEqualTo(given.after("= "));
  }

  /** All numbers of the front hard points divided: those of another unit, with mm behind them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1000 | 0.4 mm is too small: no number of these hard points is greater than 0.8 mm;"
            + " expected lengths from the ground under the middle of the axle"
            + " | Was it measured in meters? Write the unit it was measured in: here 400 mm would"
            + " be meant.",
        "10 | 40 mm is too small: no number of these hard points is greater than 82 mm;"
            + " expected lengths from the ground under the middle of the axle"
            + " | Was it measured in centimeters? Write the unit it was measured in: here 400 mm"
            + " would be meant.",
        "25.4 | 15.748 mm is too small: no number of these hard points is greater than 32 mm;"
            + " expected lengths from the ground under the middle of the axle"
            + " | Was it measured in inches? Write the unit it was measured in: here 399.9992 mm"
            + " would be meant."
      })
  void aWholeLinkageInAnotherUnitIsToldOnce(double size, String what, String advice)
      throws IOException {
    SpoiledCatalog catalog = new SpoiledCatalog(folder);
    catalog.spoil(SKERROW, text -> divided(text, size));
    assertThat(catalog.refusal()).hasSize(2);
    assertThat(catalog.refusal().get(0))
        .startsWith(SKERROW + ":150:")
        .endsWith(": front.linkage.points.upper-front-pivot.out: " + what);
    assertThat(catalog.refusal().get(1)).isEqualTo("  " + advice);
  }

  private static String divided(String text, double size) {
    int from = text.indexOf("    points:");
    int to = text.indexOf("    steering:", from);
    String points =
        Pattern.compile("(-?[0-9.]+) mm")
            .matcher(text.substring(from, to))
            .replaceAll(
                number ->
                    new BigDecimal(number.group(1))
                            .divide(BigDecimal.valueOf(size), 4, RoundingMode.HALF_UP)
                            .stripTrailingZeros()
                            .toPlainString()
                        + " mm");
    return text.substring(0, from) + points + text.substring(to);
  }

  /** What is not known, or unusual, is no fault. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "      tie-rod-outer: { fore: -128 mm, out: 688 mm, up: 300 mm }",
        "      upper-rear-pivot: { fore: -205 mm, out: 400 mm, up: 517 mm }",
        "      wheel-center: { fore: 0 mm, out: 820 mm, up: 371 mm }",
        "      rack-travel: 76 mm ± 1 mm",
        "  droop-travel: 98 mm",
        "  track: 1640 mm"
      })
  void whatIsNotSurveyedIsNoFault(String line) throws IOException {
    SpoiledCatalog catalog = new SpoiledCatalog(folder);
    catalog.spoil(SKERROW, text -> SpoiledCatalog.replaced(text, line + "\n", "\n"));
    assertThat(catalog.refusal()).isEmpty();
  }

  @Test
  void aTieRodMayReachAcrossTheMiddle() throws IOException {
    SpoiledCatalog catalog = new SpoiledCatalog(folder);
    catalog.spoil(
        SKERROW,
        text ->
            SpoiledCatalog.replaced(
                text, "{ fore: -118 mm, out: 360 mm", "{ fore: -118 mm, out: -20 mm"));
    assertThat(catalog.refusal()).isEmpty();
  }

  @Test
  void theDemoIsRead() throws IOException {
    assertThat(new SpoiledCatalog(folder).read().vehicles()).hasSize(7);
  }
}
