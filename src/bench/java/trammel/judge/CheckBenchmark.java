package trammel.judge;

import static trammel.quantity.Constants.mm;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.build.Trial;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.derive.Derivations;
import trammel.fact.Clearance;
import trammel.fact.Fact;
import trammel.fact.Seating;
import trammel.fact.TireCapacity;
import trammel.fact.WheelRating;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;
import trammel.remedy.BuildJudge;
import trammel.report.Reporter;
import trammel.subject.Station;

/** A warm check of a demo sheet, its parts, and ten rules judged by hand beside the engine. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CheckBenchmark {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Set<String> TEN =
      Set.of(
          "wheel.bolt-circle", "wheel.bore-too-small", "wheel.wheel-load", "tire.axle-load", "clearance.rear-mount",
          "clearance.arch", "clearance.liner", "clearance.bumper-end", "clearance.frame-rail", "clearance.spring-side");

  private Catalog catalog;
  private Build build;
  private Build surveyed;
  private List<Fact> facts;
  private Judge judge;
  private Judge ten;
  private Derivations derivations;
  private int next;

  @Setup
  public void read() {
    Path sheet = Path.of("catalog-demo/builds/cairnback-too-wide.build.yaml");
    catalog = CatalogFiles.read(Path.of("catalog-demo"));
    build = BuildFiles.read(sheet, catalog);
    surveyed =
        BuildFiles.read(Path.of("catalog-demo/builds/skerrow-raised-with-arms.build.yaml"), catalog);
    facts = Derivation.facts(build, DAY);
    derivations = new Derivations(DAY);
    judge = Judge.ofBaseBook();
    ten = Judge.ofRules(TEN);
    if (ten.judge(facts).findings().size() != byHand().size()) {
      throw new IllegalStateException("ten rules by engine and by hand differ");
    }
  }

  @TearDown
  public void close() {
    judge.close();
    ten.close();
  }

  @Benchmark
  public Judgement check() {
    return judge.judge(Derivation.facts(build, DAY));
  }

  /** Everything on: both front corners from hard points, swept, aligned; beam, shafts, rear bar. */
  @Benchmark
  public Judgement surveyedCheck() {
    return new BuildJudge(judge, new Derivations(DAY)).judge(surveyed);
  }

  /** The next sheet of a vehicle that was checked before: tires of another diameter each time. */
  @Benchmark
  public Judgement nextSurveyedCheck() {
    next = next % 1000 + 1;
    return new BuildJudge(judge, derivations)
        .judge(surveyed.trying(new Trial(next / 100.0, 0, 0, 0, 0, 0, 0)));
  }

  @Benchmark
  public List<Fact> derive() {
    return Derivation.facts(build, DAY);
  }

  @Benchmark
  public Judgement judge() {
    return judge.judge(facts);
  }

  @Benchmark
  public Judgement tenRules() {
    return ten.judge(facts);
  }

  @Benchmark
  public List<Finding> tenRulesByHand() {
    return byHand();
  }

  /** Texts, remedies tried on the build, measuring list: what {@code check} leaves to the report. */
  @Benchmark
  public Object report() {
    return Reporter.report(build, judge.judge(facts), judge, List.of(), catalog, DAY);
  }

  private List<Finding> byHand() {
    List<Finding> found = new ArrayList<>();
    for (Fact fact : facts) {
      if (fact instanceof Seating seating) {
        if (!seating.nearMiss() && seating.patternAgrees() != Decision.MET) {
          found.add(new Finding("wheel.bolt-circle", Kind.CONFLICT, fact, null, seating.patternAgrees(), null));
        }
        add(found, "wheel.bore-too-small", fact, seating.boreRoom().atLeast(mm(0)));
      } else if (fact instanceof WheelRating rating) {
        add(found, "wheel.wheel-load", fact, rating.rating().atLeast(rating.share()));
      } else if (fact instanceof TireCapacity capacity) {
        add(found, "tire.axle-load", fact, capacity.capacity().atLeast(capacity.axleRating()));
      } else if (fact instanceof Clearance clearance && clearance.station() != Station.INNER_SIDE) {
        add(found, "clearance." + clearance.station(), fact, clearance.gap().atLeast(mm(0)));
      }
    }
    return found;
  }

  private static void add(List<Finding> found, String rule, Fact fact, Comparison comparison) {
    if (comparison.isPossiblyViolated()) {
      Kind kind = comparison.isBroken() ? Kind.CONFLICT : Kind.UNPROVEN;
      found.add(new Finding(rule, kind, fact, comparison, comparison.decision(), null));
    }
  }
}
