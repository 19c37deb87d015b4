package trammel.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.read.UnreadableFile;

/**
 * A measured pressure in a mistaken unit is refused with the unit that was meant, word for word, on
 * a sheet and in a file of measured values alike. The demo's front rams are to hold 48 to 90 bar.
 * What a number is in the other unit is worked out by hand with 1 psi = 6.894757 kPa (NIST SP 811).
 */
class MistakenPressureTest {
  private static final Path CASES = Path.of("src/test/resources/build/refused-pressures.txt");

  private static Catalog catalog;

  @TempDir private Path folder;

  @BeforeAll
  static void load() {
    catalog = CatalogFiles.read(Path.of("catalog-demo"));
  }

  record Case(String name, List<String> lines) {
    String after(String key) {
      return lines.stream()
          .filter(line -> line.startsWith(key + ": "))
          .map(line -> line.substring(key.length() + 2))
          .findFirst()
          .orElseThrow();
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
  void onASheet(Case given) throws IOException {
    assertThat(sheet("pressures", "at: front-left, pressure: " + given.after("pressure")))
        .containsExactly(
            "s.yaml:7:35: measurements.pressures[0].pressure: " + given.after("says"),
            "  " + given.after("advises"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void inAFileOfMeasuredValues(Case given) throws IOException {
    assertThat(measured("at: front-left, pressure: " + given.after("pressure")))
        .containsExactly(
            "m.yaml:4:33: pressures[0].pressure: " + given.after("says"),
            "  " + given.after("advises"));
  }

  /** What is only too high or too low is judged, not refused. */
  @ParameterizedTest
  @ValueSource(strings = {"58 bar", "840 psi", "5.8 MPa", "130 bar", "30 bar", "100 bar", "20 bar"})
  void aStrangePressureIsNoMistakenUnit(String pressure) throws IOException {
    assertThat(sheet("pressures", "at: front-left, pressure: " + pressure)).isEmpty();
    assertThat(measured("at: front-left, pressure: " + pressure)).isEmpty();
  }

  /** A label of 220 kPa: tires are driven at 110 to 440 kPa. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "35 bar | \"35 bar\" is an impossible value for a pressure; expected 80 kPa to 900 kPa | Check the unit: was 35 psi meant?",
        "2.4 psi | \"2.4 psi\" is an impossible value for a pressure; expected 80 kPa to 900 kPa | Check the unit: was 2.4 bar meant?",
        "130 psi | 130 psi lies far above what tires of this axle are driven at, 16 psi to 63.8 psi | 130 kPa would be 19 psi: was kPa meant?"
      })
  void aTireInAMistakenUnit(String pressure, String what, String advice) throws IOException {
    List<String> said = tire(pressure);
    assertThat(said).hasSize(2);
    assertThat(said.get(0)).endsWith("gaps[0].pressure: " + what);
    assertThat(said.get(1)).isEqualTo("  " + advice);
  }

  @Test
  void aTireLetDownForSandIsNoMistake() throws IOException {
    assertThat(tire("0.9 bar")).isEmpty();
  }

  private List<String> tire(String pressure) throws IOException {
    return sheet(
        "gaps",
        "at: front-left:arch, gap: 80 mm, steer: straight, height: rest, pressure: " + pressure);
  }

  private List<String> sheet(String list, String measured) throws IOException {
    Path sheet = folder.resolve("s.yaml");
    Files.writeString(
        sheet,
        String.join(
            "\n",
            "build: b",
            "vehicle: skerrow",
            "changes:",
            "  - { raise: 20 mm, at: front }",
            "measurements:",
            "  " + list + ":",
            "    - { " + measured + ", state: as-found }",
            ""));
    return said(() -> BuildFiles.read(sheet, catalog));
  }

  private List<String> measured(String pressure) throws IOException {
    Path file = folder.resolve("m.yaml");
    Files.writeString(
        file,
        String.join(
            "\n", "measured: m", "on: 2026-11-20", "pressures:", "  - { " + pressure + " }", ""));
    return said(() -> MeasuredFiles.read(file, catalog.vehicle("skerrow").orElseThrow()));
  }

  private List<String> said(Runnable read) {
    UnreadableFile refused = catchThrowableOfType(UnreadableFile.class, read::run);
    return refused == null
        ? List.of()
        : refused.getMessage().replace(folder + "/", "").lines().toList();
  }
}
