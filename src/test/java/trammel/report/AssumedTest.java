package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.AssumedValue;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.VehicleProfile;
import trammel.derive.Derivation;
import trammel.derive.Derivations;
import trammel.fact.Evidence;
import trammel.fact.Fact;
import trammel.fact.OrderLine;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Kind;
import trammel.quantity.Absence;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Nested;
import trammel.read.Place;
import trammel.read.RecordShape;
import trammel.read.TypeShape;
import trammel.remedy.BuildJudge;

/**
 * Every value of a profile in turn is taken out and assumed by a book instead. What must come of it
 * is known from plain judgements: of safety-critical rules what they find without the value, of all
 * others what they find with it.
 */
class AssumedTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path DEMO = Path.of("catalog-demo");

  private static Judge judge;
  private static Catalog catalog;

  @BeforeAll
  static void load() {
    judge = Judge.ofBaseBook();
    catalog = CatalogFiles.read(DEMO);
  }

  @AfterAll
  static void close() {
    judge.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"stonecrop-raised", "skerrow-raised-with-arms", "cairnback-larger-measured"})
  void safetyCriticalRulesJudgeAsIfNothingWereAssumed(String sheet) {
    Path file = DEMO.resolve("builds/" + sheet + ".build.yaml");
    VehicleProfile profile = BuildFiles.read(file, catalog).vehicle();
    int kept = 0;
    int taken = 0;
    for (List<String> keys : known(profile)) {
      Build less = BuildFiles.read(file, without(profile, keys));
      AssumedValue assumed = assumed(keys, Nested.at(profile, keys).orElseThrow());
      Build filled = less.assuming(List.of(assumed), catalog);
      Evidence evidence = Derivation.evidence(filled, DAY);
      Judgement bare = judge.judge(Derivation.facts(less, DAY));
      Judgement full = judge.judge(evidence.facts());
      Judgement found = judge.judge(evidence);
      Predicate<Finding> critical = finding -> judge.isCritical(finding.rule());
      Predicate<Finding> other = finding -> !critical.test(finding) && !holds(finding);
      assertThat(told(found, critical)).as(assumed.key()).isEqualTo(told(bare, critical));
      assertThat(told(found, other)).as(assumed.key()).isEqualTo(told(full, other));
      saysSo(assumed, found, told(full, critical), critical);
      holdsWhatIsOpen(evidence.facts(), found);
      kept += told(bare, critical).equals(told(full, critical)) ? 0 : 1;
      taken += told(bare, other).equals(told(full, other)) ? 0 : 1;
    }
    assertThat(kept).as("values that a safety-critical rule waits for").isGreaterThan(5);
    assertThat(taken).as("values that some other rule takes").isGreaterThan(5);
  }

  @Test
  void aBuildWithSomethingAssumedIsJudgedByAllItsEvidence() {
    Path file = DEMO.resolve("builds/stonecrop-raised.build.yaml");
    VehicleProfile profile = BuildFiles.read(file, catalog).vehicle();
    for (List<String> keys : known(profile).stream().limit(12).toList()) {
      Build less = BuildFiles.read(file, without(profile, keys));
      AssumedValue assumed = assumed(keys, Nested.at(profile, keys).orElseThrow());
      Build filled = less.assuming(List.of(assumed), catalog);
      Judgement found = new BuildJudge(judge, new Derivations(DAY)).judge(filled);
      assertThat(told(found, finding -> true))
          .as(assumed.key())
          .isEqualTo(told(judge.judge(Derivation.evidence(filled, DAY)), finding -> true));
    }
  }

  /** What is open for want of the value, and would not be with it, says that it was assumed. */
  private static void saysSo(
      AssumedValue assumed, Judgement found, Set<String> withIt, Predicate<Finding> critical) {
    for (Finding finding : found.findings()) {
      if (critical.test(finding)
          && finding.decision().isOpen()
          && !withIt.contains(told(finding))) {
        assertThat(new Sentences(finding, judge.rule(finding.rule()).orElseThrow()).sentence())
            .as("%s, %s", assumed.key(), finding.identity())
            .contains(assumed.whose() + ", which a safety-critical rule does not accept");
      }
    }
  }

  /** The rules that hold lines back meet every finding, by whatever facts it was found. */
  private static void holdsWhatIsOpen(List<Fact> facts, Judgement found) {
    for (Fact fact : facts) {
      if (fact instanceof OrderLine line && line.staysSold()) {
        List<Finding> about =
            found.findings().stream().filter(finding -> finding.about(line.part())).toList();
        boolean conflict = about.stream().anyMatch(one -> one.kind() == Kind.CONFLICT);
        boolean open = about.stream().anyMatch(one -> one.kind() == Kind.UNPROVEN && one.decides());
        assertThat(told(found, finding -> finding.rule().equals("order.hold-order")))
            .filteredOn(told -> told.contains(line.part() + " "))
            .hasSize(open && !conflict ? 1 : 0);
      }
    }
  }

  private static boolean holds(Finding finding) {
    return finding.rule().startsWith("order.hold-") || finding.rule().equals("order.leave-out");
  }

  private static Set<String> told(Judgement judgement, Predicate<Finding> which) {
    return judgement.findings().stream()
        .filter(which)
        .map(AssumedTest::told)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String told(Finding finding) {
    return finding.identity() + " " + finding.kind() + " " + finding.decision();
  }

  /** The value as a book might assume it: known to a tenth, and no better than it is given. */
  private static AssumedValue assumed(List<String> keys, Quantity given) {
    String key = String.join(".", keys);
    double expanded = Math.max(given.expanded(), 0.1 * Math.abs(given.value()));
    return new AssumedValue(
        Place.of("seen.rules.yaml"),
        key,
        Quantity.read(
            given.name(),
            given.dimension(),
            given.value(),
            Math.max(expanded, 0.1),
            new Input("seen.rules.yaml", key, 3, "seen", Instrument.GUESSED)),
        "hillside-shop",
        "1.2",
        "all of them have it",
        "seen");
  }

  private static Catalog without(VehicleProfile profile, List<String> keys) {
    Quantity given = Nested.at(profile, keys).orElseThrow();
    VehicleProfile less =
        Nested.with(
            profile,
            keys,
            Quantity.absent(
                given.dimension(),
                new Absence(given.name(), "not stated", Instrument.TAPE, "measure it")));
    Map<String, VehicleProfile> vehicles = new LinkedHashMap<>(catalog.vehicles());
    vehicles.put(profile.vehicle(), less);
    return new Catalog(catalog.name(), catalog.currency(), vehicles, catalog.parts());
  }

  /** The keys of every value that a profile gives and a default may stand for. */
  private static Collection<List<String>> known(VehicleProfile profile) {
    List<List<String>> known = new ArrayList<>();
    collect(profile, List.of(), known);
    return known;
  }

  private static void collect(Record record, List<String> before, List<List<String>> known) {
    List<RecordShape.Component> components = RecordShape.of(record.getClass()).components();
    RecordComponent[] declared = record.getClass().getRecordComponents();
    for (int i = 0; i < declared.length; i++) {
      List<String> keys = new ArrayList<>(before);
      keys.add(components.get(i).key());
      Object value;
      try {
        value = declared[i].getAccessor().invoke(record);
      } catch (ReflectiveOperationException e) {
        throw new LinkageError(e.getMessage(), e);
      }
      if (value instanceof Quantity quantity && quantity.isKnown()) {
        known.add(List.copyOf(keys));
      } else if (value instanceof Record inner
          && components.get(i).isWritten()
          && components.get(i).shape().kind() == TypeShape.Kind.RECORD) {
        collect(inner, keys, known);
      }
    }
  }
}
