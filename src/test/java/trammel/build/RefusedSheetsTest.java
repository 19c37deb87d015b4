package trammel.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.read.UnreadableFile;

/** What a sheet cannot mean is refused, at the place where it stands. */
class RefusedSheetsTest {
  private static Catalog catalog;

  @TempDir private Path folder;

  @BeforeAll
  static void load() {
    catalog = CatalogFiles.read(Path.of("catalog-demo"));
  }

  /** The sheet's lines are parted by bars. */
  private String refusal(String lines) throws IOException {
    Path sheet = folder.resolve("s.yaml");
    Files.writeString(sheet, lines.replace("|", "\n") + "\n");
    UnreadableFile refused =
        catchThrowableOfType(UnreadableFile.class, () -> BuildFiles.read(sheet, catalog));
    assertThat(refused).as(lines).isNotNull();
    return refused.getMessage();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "build: b|vehicle: cairnbak|changes:|  - { add: HR-2656517, at: all }; s.yaml:2:10: ; cairnback",
        "build: b|vehicle: cairnback|changes: []; s.yaml:1:1: ; nothing is proposed",
        "build: b|vehicle: cairnback|changes:|  - { add: LB-UA-CB-L, at: front-right }; s.yaml:4:5: ; the left side",
        "build: b|vehicle: cairnback|changes:|  - { add: HR-2656517, at: all }|  - { add: HR-2657017, at: front }; s.yaml:5:5: ; goes already",
        "build: b|vehicle: cairnback|changes:|  - { add: HR-2656517, remove: tire, at: all }; s.yaml:4:5: ; exactly one",
        "build: b|vehicle: cairnback|changes:|  - { add: HR-2656517 }; s.yaml:4:5: ; nothing says where it goes",
        "build: b|vehicle: cairnback|as-found:|  no-contact: [rear:liner]|changes:|  - { remove: tire }; s.yaml:4:15: ; has no station",
        "order: o|vehicle: cairnback|lines: []; s.yaml:1:1: ; without lines",
        "order: o|vehicle: cairnback|lines:|  - { part: HR-2656517, quantity: 3 }; s.yaml:4:5: ; do not say where they go"
      })
  void saysWhereAndWhat(String lines, String place, String what) throws IOException {
    assertThat(refusal(lines)).contains(place.strip()).contains(what);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "front-left:arch, gap: 20 mm, steer: straight, height: rest; front-left:arch, gap: 90 mm, steer: straight, height: bump-stop; comes closer",
        "front-left:arch, gap: 20 mm, steer: straight, height: rest; front-left:arch, gap: 60 mm, steer: straight, height: rest; measured as",
        "rear-left:rear-mount, gap: 38 mm, steer: straight, height: rest; front-left:arch, gap: 40 mm, steer: straight, height: rest; has no station",
        "rear-left:arch, gap: 38 mm, steer: full-left, height: rest; front-left:arch, gap: 40 mm, steer: straight, height: rest; does not steer",
        "rear:arch, gap: 38 mm, steer: straight, height: rest; front-left:arch, gap: 40 mm, steer: straight, height: rest; expected one wheel"
      })
  void measurementsThatCannotBothBeTrueAreRefused(String one, String other, String what)
      throws IOException {
    String sheet =
        "build: b|vehicle: cairnback|changes:|  - { add: HR-2656517, at: all }|measurements:|  gaps:|    - { at: "
            + one.strip()
            + ", state: as-found }|    - { at: "
            + other.strip()
            + ", state: as-found }";
    assertThat(refusal(sheet)).contains(what).containsPattern("s\\.yaml:[78]:");
  }

  @Test
  void touchingWhereNothingTouchesIsRefused() throws IOException {
    assertThat(
            refusal(
                "build: b|vehicle: cairnback|as-found:|  no-contact: all|changes:|  - { add: HR-2656517, at: all }|"
                    + "measurements:|  gaps:|    - { at: front-left:arch, gap: -20 mm, steer: straight, height: rest, state: as-found }"))
        .contains("s.yaml:9:")
        .contains("no contact");
  }
}
