package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.CatalogFiles;
import trammel.fact.ChainRoom;
import trammel.fact.Clearance;
import trammel.subject.Station;

/** Posed gaps carried over to other tires and wheels. */
class ClearanceFactsTest {
  private static final Path DEMO = Path.of("catalog-demo");

  @TempDir private Path folder;

  /**
   * A brute-force sweep of a 407.5 × 275 mm tire about an inclined axis (own computation; no
   * published example is at hand) took these from a sill corner's gap, for the change of edge and
   * of radius.
   */
  @ParameterizedTest
  @CsvSource({"25, 0, 12.35", "5, 11.5, 12.50", "30, 11.5, 24.78"})
  void lockStationsCostWhatASweepCosts(double edge, double radius, double taken) {
    StationModel model = StationModel.of(Station.REAR_MOUNT);
    assertThat(model.perEdge() * edge + model.perRadius() * radius).isCloseTo(taken, within(0.15));
  }

  @Test
  void aGapOfTheProfileCountsFromTheTireItWasMeasuredWith() throws IOException {
    Path vehicle = copyOfTheDemo().resolve("vehicles/cairnback.vehicle.yaml");
    String text = Files.readString(vehicle);
    String pose = "height: %s, pressure: 220 kPa }";
    String named = text;
    for (String height : new String[] {"rest", "bump-stop"}) {
      String posed = "steer: full-left, " + pose.formatted(height);
      assertThat(named).contains(posed);
      named = named.replace(posed, posed.replace(" }", ", tire: HR-2857017 }"));
    }
    Files.writeString(vehicle, named);
    Clearance carried = rearMount(DEMO, "{ add: HR-2857017, at: all }");
    Clearance measured = rearMount(folder, "{ add: HR-2857017, at: all }");
    assertThat(measured.gap().value()).isCloseTo(36, within(1e-9));
    assertThat(carried.gap().value()).isLessThan(25);
  }

  @Test
  void whatIsKeptIsNotReplacedFromAKit() throws IOException {
    Build whole = build(DEMO, "{ add: CM-CB-R40, at: rear }");
    Build keeping = build(DEMO, "{ add: CM-CB-R40, at: rear }\n  - { keep: bump-stop }");
    assertThat(parts(whole)).contains("LB-BS-R25");
    assertThat(parts(keeping)).contains("CM-CB-R40").doesNotContain("LB-BS-R25");
  }

  /** shared/reference/chain-classes.csv, side-wall column. */
  @Test
  void chainsNeedWhatTheirClassSays() throws IOException {
    for (String row : Files.readAllLines(Path.of("shared/reference/chain-classes.csv"))) {
      if (row.matches("[SUW],.*")) {
        String[] cells = row.split(",", -1);
        Build build =
            build(
                DEMO,
                "{ add: HR-2656517, at: all }\naims: { chains: "
                    + cells[0].toLowerCase(java.util.Locale.ROOT)
                    + " }");
        ChainRoom room =
            Derivation.facts(build, LocalDate.of(2026, 11, 25)).stream()
                .filter(ChainRoom.class::isInstance)
                .map(ChainRoom.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(room.needed().value()).isEqualTo(Double.parseDouble(cells[2]));
      }
    }
  }

  private Clearance rearMount(Path catalog, String change) throws IOException {
    return Derivation.facts(build(catalog, change), LocalDate.of(2026, 11, 25)).stream()
        .filter(Clearance.class::isInstance)
        .map(Clearance.class::cast)
        .filter(fact -> fact.subject().toString().equals("front-left:rear-mount"))
        .findFirst()
        .orElseThrow();
  }

  private Build build(Path catalog, String changes) throws IOException {
    Path sheet = folder.resolve("sheet.build.yaml");
    Files.writeString(sheet, "build: b\nvehicle: cairnback\nchanges:\n  - " + changes + "\n");
    return BuildFiles.read(sheet, CatalogFiles.read(catalog));
  }

  private static Stream<String> parts(Build build) {
    return build.proposed().values().stream()
        .flatMap(equipment -> equipment.everything().stream())
        .map(trammel.catalog.Part::number);
  }

  private Path copyOfTheDemo() throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(DEMO.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    return folder;
  }
}
