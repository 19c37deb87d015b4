package trammel.derive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.build.Trial;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;

/** Height ledger, load share and travel budget of both axles. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LedgerBenchmark {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private Build passive;
  private Build held;
  private Build heldByRatio;
  private Build heldMeasured;
  private Derivations derivations;
  private int next;

  @Setup
  public void read() throws IOException {
    Catalog catalog = CatalogFiles.read(Path.of("catalog-demo"));
    passive =
        BuildFiles.read(Path.of("catalog-demo/builds/cairnback-loaded.build.yaml"), catalog);
    held =
        BuildFiles.read(
            Path.of("catalog-demo/builds/skerrow-raised-with-spacers.build.yaml"), catalog);
    heldByRatio = withoutSpringSurvey();
    heldMeasured = measured(catalog);
    derivations = new Derivations(DAY);
  }

  /** The same with a height measured at each wheel, so that no two are alike. */
  private static Build measured(Catalog catalog) throws IOException {
    Path sheet = Path.of("catalog-demo/builds/skerrow-raised-with-spacers.build.yaml");
    Path copy = Files.createTempDirectory("trammel-bench").resolve("measured.build.yaml");
    String text = "catalog: " + Path.of("catalog-demo").toAbsolutePath() + "\n";
    String heights =
        """
          heights:
            - { at: front-left, height: 512 mm, state: as-found }
            - { at: front-right, height: 509 mm, state: as-found }
            - { at: rear-left, height: 548 mm, state: as-found }
            - { at: rear-right, height: 546 mm, state: as-found }
        """;
    Files.writeString(copy, text + Files.readString(sheet) + heights);
    return BuildFiles.read(copy, catalog);
  }

  /** The same where nobody has surveyed the spring, so that it goes by its motion ratio. */
  private static Build withoutSpringSurvey() throws IOException {
    Path folder = Files.createTempDirectory("trammel-bench");
    Path sheet = Path.of("catalog-demo/builds/skerrow-raised-with-spacers.build.yaml");
    String changes = Files.readString(sheet).split("vehicle: skerrow\n")[1];
    return DemoSheet.altered(
        folder,
        "skerrow",
        List.of(
            """
                spring:
                  on: lower-arm
                  body: { fore: 0 mm, out: 500 mm, up: 490 mm }
                  moving: { fore: 2 mm, out: 618 mm, up: 240 mm }
            """),
        List.of(""),
        changes);
  }

  @Benchmark
  public HeightLedger passiveHeights() {
    return Ledgers.of(passive, DAY).heights();
  }

  @Benchmark
  public List<TravelLedger> passiveTravel() {
    return Ledgers.of(passive, DAY).travel();
  }

  /**
   * Heights, loads, pressures and travel of both axles with every uncertainty told, as {@code
   * heights} asks for them.
   */
  @Benchmark
  public double passiveLedgers() {
    return whole(passive);
  }

  /** The same for surveyed corners, with fluid beside the springs. */
  @Benchmark
  public double heldLedgers() {
    return whole(held);
  }

  /** The next sheet of a vehicle that was asked about before: another lift each time. */
  @Benchmark
  public double nextHeldLedgers() {
    next = next % 1000 + 1;
    return whole(
        derivations.ledgers(held.trying(new Trial(0, 0, 0, 0, next / 100.0, next / 100.0, 0))));
  }

  /** Surveyed corners no two of which stand alike, each with a height of its own. */
  @Benchmark
  public double heldMeasuredLedgers() {
    return whole(heldMeasured);
  }

  /** Fluid beside springs that go by their motion ratio. */
  @Benchmark
  public double heldByRatioLedgers() {
    return whole(heldByRatio);
  }

  private static double whole(Build build) {
    return whole(Ledgers.of(build, DAY));
  }

  private static double whole(Ledgers ledgers) {
    return ToldUncertainty.of(ledgers.heights()) + ToldUncertainty.of(ledgers.travel());
  }

  /** Surveyed corners: spring paths from hard points, and fluid beside the springs. */
  @Benchmark
  public HeightLedger heldHeights() {
    return Ledgers.of(held, DAY).heights();
  }

  @Benchmark
  public List<TravelLedger> heldTravel() {
    return Ledgers.of(held, DAY).travel();
  }
}
