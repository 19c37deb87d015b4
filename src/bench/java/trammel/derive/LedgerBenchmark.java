package trammel.derive;

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

  @Setup
  public void read() {
    Catalog catalog = CatalogFiles.read(Path.of("catalog-demo"));
    passive =
        BuildFiles.read(Path.of("catalog-demo/builds/cairnback-loaded.build.yaml"), catalog);
    held =
        BuildFiles.read(
            Path.of("catalog-demo/builds/skerrow-raised-with-spacers.build.yaml"), catalog);
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

  private static double whole(Build build) {
    Ledgers ledgers = Ledgers.of(build, DAY);
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
