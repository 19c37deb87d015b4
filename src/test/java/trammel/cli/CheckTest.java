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
import tools.jackson.databind.ObjectMapper;

/** The command from a file to a verdict and an exit status. */
class CheckTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  private String shown() {
    return out.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "cairnback-same-size, 0, FITS.",
    "cairnback-too-wide, 5, DOES NOT FIT.",
    "stonecrop-unmarked-wheels, 4, NOT PROVEN.",
    "millwren-all-terrain, 0, FITS.",
    "cairnback-wheels-without-rings, 3, FITS WITH ADDITIONS."
  })
  void demoSheetsReachEveryVerdict(String sheet, int status, String verdict) {
    assertThat(run("check", "--on", "2026-11-25", "catalog-demo/builds/" + sheet + ".build.yaml"))
        .isEqualTo(status);
    assertThat(shown()).startsWith(verdict);
    assertThat(shown().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  /** The rear axle may carry 1650 kg and carries 1080: 600 kg over it are 30 kg too much. */
  @Test
  void aPayloadAboveTheAxleRatingIsSaidPlainly(@TempDir Path folder) throws IOException {
    Path sheet = folder.resolve("heavy.build.yaml");
    Files.writeString(
        sheet,
        """
        build: heavy
        catalog: %s
        vehicle: cairnback
        as-found: { weighed: { front: 1130 kg ± 5 kg, rear: 1080 kg ± 5 kg } }
        changes:
          - { add: CM-CB-R40H, at: rear }
        aims:
          payload:
            - { carries: sand, mass: 600 kg ± 5 kg, fore: -2790 mm, out: 0 mm }
        """
            .formatted(Path.of("catalog-demo").toAbsolutePath()));
    assertThat(run("check", "--on", "2026-11-25", sheet.toString())).isEqualTo(5);
    assertThat(shown().replaceAll("\\s+", " "))
        .contains("The rear axle carries 1680", "and may carry 1650 kg", "too much. No spring kit");
  }

  /** Thirty millimeters under the book, and leaves that go by their maker's claim. */
  @ParameterizedTest
  @CsvSource({
    "CM-GM-F50, height.claim-off-book@front:CM-GM-F50",
    "CM-GM-F40U, height.claim-without-load@front:CM-GM-F40U"
  })
  void aClaimWithoutLoadOrFromAnUnexplainedHeightIsNotProven(
      String part, String finding, @TempDir Path folder) throws IOException {
    Path sheet = folder.resolve("claim.build.yaml");
    Files.writeString(
        sheet,
        """
        build: claim
        catalog: %s
        vehicle: gimmer
        changes:
          - { add: %s, at: front }
        measurements:
          heights:
            - { at: front-left, height: 415 mm, state: as-found }
            - { at: front-right, height: 415 mm, state: as-found }
        """
            .formatted(Path.of("catalog-demo").toAbsolutePath(), part));
    assertThat(run("check", "--on", "2026-11-25", sheet.toString())).isEqualTo(4);
    assertThat(shown()).startsWith("NOT PROVEN.").contains(finding);
  }

  @Test
  void theWorstOfSeveralFilesDecidesTheStatus() {
    int status =
        run(
            "check",
            "--on",
            "2026-11-25",
            "catalog-demo/builds/cairnback-same-size.build.yaml",
            "catalog-demo/builds/cairnback-too-wide.build.yaml");
    assertThat(status).isEqualTo(5);
    assertThat(shown()).contains("FITS.", "DOES NOT FIT.");
  }

  @Test
  void jsonNamesTheVerdictAtItsTop() {
    run(
        "check",
        "--format",
        "json",
        "--on",
        "2026-11-25",
        "catalog-demo/builds/cairnback-same-size.build.yaml");
    assertThat(new ObjectMapper().readTree(shown()).path("verdict").asString()).isEqualTo("fits");
  }

  @Test
  void aWorkingNamesItsInputsWithTheirPlace() {
    run(
        "working",
        "catalog-demo/builds/cairnback-too-wide.build.yaml",
        "clearance.bumper-end@front-left:bumper-end");
    assertThat(shown()).contains("cairnback.vehicle.yaml:", "gap");
  }

  @Test
  void anUnknownPartIsALocatedProblemAndNeverAVerdict(@TempDir Path folder) throws IOException {
    Path sheet = folder.resolve("wrong.build.yaml");
    Files.writeString(
        sheet, "build: wrong\nvehicle: cairnback\nchanges:\n  - { add: HR-2656571, at: all }\n");
    assertThat(run("check", "--catalog", "catalog-demo", sheet.toString())).isEqualTo(2);
    assertThat(shown()).isEmpty();
    assertThat(err.toString())
        .contains("wrong.build.yaml:4:", "HR-2656571", "Did you mean HR-2656517?")
        .doesNotContain("\tat ");
  }
}
