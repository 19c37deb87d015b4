package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The law stands beside the verdict, and only where the sheet names a place. */
class LawTest {
  private static final Path DEMO = Path.of("catalog-demo/builds");

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();

  /** Checks a demo sheet as it would be at a place; blank for none. */
  private int check(String sheet, String place, String... options) throws IOException {
    out.getBuffer().setLength(0);
    String text = Files.readString(DEMO.resolve(sheet + ".build.yaml"));
    String registered = place.isBlank() ? "" : "\n  registered-at: " + place;
    text =
        text.contains("\nas-found:")
            ? text.replace("\nas-found:", "\nas-found:" + registered)
            : text + (place.isBlank() ? "" : "as-found:" + registered + "\n");
    Path copy =
        Files.writeString(
            folder.resolve("sheet.build.yaml"),
            text + "catalog: " + Path.of("catalog-demo").toAbsolutePath() + "\n");
    String[] arguments = new String[options.length + 4];
    arguments[0] = "check";
    arguments[1] = "--on";
    arguments[2] = "2026-11-25";
    System.arraycopy(options, 0, arguments, 3, options.length);
    arguments[arguments.length - 1] = copy.toString();
    return Main.run(new PrintWriter(out, true), new PrintWriter(new StringWriter()), arguments);
  }

  private String shown() {
    return out.toString().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource({
    "skerrow-raised-with-spacers, '', 0, 'FITS.'",
    "skerrow-raised-with-spacers, Washington, 6, 'FITS THE VEHICLE; NOT LAWFUL AT WASHINGTON.'",
    "skerrow-raised-with-spacers, Lower Fenwick, 0, 'FITS THE VEHICLE; LAW NOT JUDGED.'",
    "skerrow-raised-with-spacers, Queensland, 0, 'FITS THE VEHICLE; LAW NOT JUDGED.'",
    "skerrow-raised-mildly, California, 0, 'FITS.'",
    "skerrow-raised-mildly, us-nj, 0, 'FITS THE VEHICLE; NEEDS CERTIFICATION AT US-NJ.'",
    "skerrow-raised-mildly, Virginia, 0, 'FITS THE VEHICLE; LAW NOT JUDGED.'",
    "cairnback-same-size, California, 0, 'FITS THE VEHICLE; LAW NOT JUDGED.'",
    "skerrow-raised-to-the-stop, Iceland, 3, 'FITS WITH ADDITIONS; NEEDS CERTIFICATION AT'",
    "stonecrop-raised, Washington, 5, 'DOES NOT FIT; NOT LAWFUL AT WASHINGTON.'",
    "cairnback-spare-too-large, Lower Fenwick, 4, 'NOT PROVEN; LAW NOT JUDGED.'"
  })
  void theLawStandsBesideTheVerdict(String sheet, String place, int status, String verdict)
      throws IOException {
    assertThat(check(sheet, place)).isEqualTo(status);
    assertThat(shown()).startsWith(verdict);
    assertThat(out.toString().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void aFindingOfTheLawSaysClauseDayAndWhoDecides() throws IOException {
    check("skerrow-raised-with-spacers", "Washington");
    assertThat(shown())
        .contains("Not lawful at Washington (registered at Washington).")
        .contains("The local authority decides: the motor-vehicle authority of Washington.")
        .contains("By: Revised Code of Washington 46.37.375(5); read 2026-11-25.")
        .contains("To decide: the motor-vehicle authority of Washington.")
        .contains("[washington.coil-spacers@vehicle]")
        .contains("book washington 1.0");
  }

  /** Read at second hand, so a caution, which leaves verdict and standing as they are. */
  @Test
  void whereItsLawIsThatOfTheUnionTheLargestTireOfASizeIsAskedFor() throws IOException {
    assertThat(check("skerrow-rub-at-lock", "European Union")).isEqualTo(5);
    assertThat(shown())
        .startsWith("DOES NOT FIT; LAW NOT JUDGED.")
        .contains("A tire of HR-2757017's size may be", "(caution):")
        .contains("[european-union.tire-envelope@front-left:rear-mount, @front-right:rear-mount]")
        .contains("read at second hand");
    check("skerrow-rub-at-lock", "Germany");
    assertThat(shown()).contains("european-union.tire-envelope", "germany.permit");
    check("skerrow-rub-at-lock", "California");
    assertThat(shown()).doesNotContain("tire-envelope");
  }

  @Test
  void aPlaceWithoutABookIsSaidToHaveNone() throws IOException {
    check("skerrow-raised-mildly", "Lower Fenwick");
    assertThat(shown())
        .contains("No book at hand holds the law of Lower Fenwick; ask the local authority.");
  }

  @Test
  void aHeightThatNobodyHasMeasuredIsOnTheListOfWhatToMeasure() throws IOException {
    check("cairnback-same-size", "California");
    assertThat(shown())
        .contains("It is open whether the frame of a truck of 4,501 to 7,500 lb")
        .contains("ground to the frame's lowest place midway between the axles, unladen");
  }

  @Test
  void noLimitPassedIsNotCalledLawful() throws IOException {
    check("skerrow-raised-mildly", "California");
    assertThat(shown())
        .contains("No limit on file passed at California")
        .contains("never all of its law")
        .doesNotContain("awful");
  }

  @Test
  void dataSayTheSame() throws IOException {
    check("skerrow-raised-with-spacers", "Washington", "--format", "json");
    JsonNode law = new ObjectMapper().readTree(out.toString()).path("law");
    assertThat(law.path("standing").asString()).isEqualTo("not-lawful");
    assertThat(law.path("place").asString()).isEqualTo("Washington");
    assertThat(law.path("texts").get(0).path("read-on").asString()).isEqualTo("2026-11-25");
  }
}
