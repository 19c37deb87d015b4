package trammel.judge;

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
import org.openjdk.jmh.annotations.TearDown;
import trammel.book.Book;
import trammel.book.TestBook;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.fact.Fact;

/** A book of a thousand rules: how long it takes to load, and what it costs other vehicles. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BookBenchmark {
  private TestBook written;
  private List<Book> books;
  private List<Fact> facts;
  private Judge alone;
  private Judges judges;
  private Judge others;
  private Judge own;

  @Setup
  public void read() {
    written =
        TestBook.shop("thousand", ThousandRules.sheet(0))
            .manifest("vocabulary", "vehicles: [elsewhere]\nvocabulary");
    books = TestBook.read(written);
    Build build =
        BuildFiles.read(
            Path.of("catalog-demo/builds/cairnback-too-wide.build.yaml"),
            CatalogFiles.read(Path.of("catalog-demo")));
    facts = Derivation.facts(build, LocalDate.of(2026, 11, 25));
    alone = Judge.ofBaseBook();
    judges = Judges.of(books);
    others = judges.over("cairnback", "");
    own = judges.over("elsewhere", "");
  }

  @TearDown
  public void close() {
    alone.close();
    judges.close();
  }

  /** From text to checked records. */
  @Benchmark
  public List<Book> readThousandRules() {
    return TestBook.read(written);
  }

  /** From records to a knowledge base, with the base book in it. */
  @Benchmark
  public Judge buildThousandRules() {
    Judge judge = Judge.of(books);
    judge.close();
    return judge;
  }

  @Benchmark
  public Judgement baseAlone() {
    return alone.judge(facts);
  }

  /** With a thousand rules at hand that are for another vehicle. */
  @Benchmark
  public Judgement besideThousandOfOthers() {
    return others.judge(facts);
  }

  /** With a thousand rules that all concern this vehicle. */
  @Benchmark
  public Judgement amongThousandOfItsOwn() {
    return own.judge(facts);
  }
}
