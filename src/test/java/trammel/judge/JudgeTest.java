package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.PartKind;
import trammel.derive.Derivation;
import trammel.derive.Derivations;
import trammel.fact.Fact;

/** The judge keeps nothing between checks and does not mind in what order it is told. */
class JudgeTest {
  private static final Judge JUDGE = Judge.ofBaseBook();
  private static final List<RuleCase> CASES = CaseFile.all();
  private static final List<Fact> FACTS =
      CASES.stream().flatMap(one -> one.facts().stream()).toList();
  private static final int ROUNDS = 60;
  private static final int THREADS = 8;

  @AfterAll
  static void close() {
    JUDGE.close();
  }

  /** All that a report would show of a judgement; comparisons are made anew in each session. */
  private static List<String> shown(Judgement judgement) {
    return Stream.concat(
            judgement.findings().stream().map(JudgeTest::shown),
            judgement.precedents().stream().map(Object::toString))
        .toList();
  }

  private static String shown(Finding finding) {
    return finding.identity()
        + " "
        + finding.kind()
        + " "
        + finding.decision()
        + " "
        + finding.fact()
        + " "
        + (finding.comparison() == null ? "" : finding.comparison().margin())
        + " "
        + finding.need();
  }

  private static List<Fact> someFacts(Random random) {
    List<Fact> shuffled = new ArrayList<>(FACTS);
    Collections.shuffle(shuffled, random);
    return shuffled.subList(0, random.nextInt(60));
  }

  private static List<Fact> factsOf(String rule, String name) {
    return CASES.stream()
        .filter(one -> one.rule().equals(rule) && one.name().equals(name))
        .findFirst()
        .orElseThrow()
        .facts();
  }

  @Test
  void aSessionOfThePoolFindsWhatAFreshOneFinds() {
    Random random = new Random(1);
    int found = 0;
    for (int round = 0; round < ROUNDS; round++) {
      List<Fact> facts = someFacts(random);
      List<String> pooled = shown(JUDGE.judge(facts));
      assertThat(pooled).isEqualTo(shown(JUDGE.judgeFresh(facts)));
      found += pooled.size();
    }
    assertThat(found).as("findings over all rounds").isGreaterThan(ROUNDS);
  }

  @Test
  void aSessionOfThePoolRemembersNothing() {
    List<Fact> missing = factsOf("order.unmet-need", "no ring");
    List<Fact> supplied = factsOf("order.unmet-need", "a ring that suits");
    for (int round = 0; round < 5; round++) {
      assertThat(JUDGE.judge(missing).findings())
          .extracting(Finding::rule)
          .containsExactly("wheel.bore-loose");
      assertThat(JUDGE.judge(supplied).findings()).isEmpty();
      assertThat(JUDGE.judge(List.of())).isEqualTo(new Judgement(List.of(), List.of()));
    }
  }

  @Test
  void theOrderOfFactsChangesNothing() {
    Random random = new Random(2);
    for (int round = 0; round < ROUNDS; round++) {
      List<Fact> facts = new ArrayList<>(someFacts(random));
      List<String> first = shown(JUDGE.judge(facts));
      Collections.shuffle(facts, random);
      assertThat(shown(JUDGE.judge(facts))).isEqualTo(first);
    }
  }

  @Test
  void factsHeardInPortionsAreJudgedAsThoughHeardAtOnce() {
    Random random = new Random(4);
    for (int round = 0; round < ROUNDS; round++) {
      List<Fact> facts = someFacts(random);
      try (Hearing hearing = JUDGE.hearing()) {
        for (int from = 0, to; from < facts.size(); from = to) {
          to = from + 1 + random.nextInt(facts.size() - from);
          hearing.hear(facts.subList(from, to));
        }
        Judgement found = hearing.judgement(Judgement.NOTHING, match -> true);
        assertThat(shown(found)).containsExactlyInAnyOrderElementsOf(shown(JUDGE.judge(facts)));
      }
    }
  }

  @Test
  void aBuildIsJudgedAlikeWhileItIsDerivedAndAfter() throws IOException {
    Path demo = Path.of("catalog-demo");
    LocalDate day = LocalDate.of(2026, 11, 25);
    Catalog catalog = CatalogFiles.read(demo);
    try (Stream<Path> files = Files.list(demo.resolve("builds"))) {
      List<Path> sheets = files.filter(one -> one.toString().endsWith(".build.yaml")).toList();
      assertThat(sheets).hasSizeGreaterThan(20);
      for (Path sheet : sheets) {
        Build build = BuildFiles.read(sheet, catalog);
        assertThat(shown(JUDGE.judge(told -> new Derivations(day).facts(build, told))))
            .as(sheet.toString())
            .isEqualTo(shown(JUDGE.judge(Derivation.facts(build, day))));
      }
    }
  }

  @Test
  void gravestFindingsComeFirst() {
    assertThat(JUDGE.judge(FACTS).findings()).extracting(Finding::kind).isSorted();
  }

  @Test
  void severalThreadsFindWhatOneFinds() throws Exception {
    Random random = new Random(3);
    List<List<Fact>> sets = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      sets.add(List.copyOf(someFacts(random)));
    }
    List<List<String>> alone = sets.stream().map(facts -> shown(JUDGE.judgeFresh(facts))).toList();
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Callable<List<String>>> checks = new ArrayList<>();
      sets.forEach(facts -> checks.add(() -> shown(JUDGE.judge(facts))));
      List<List<String>> together = new ArrayList<>();
      for (Future<List<String>> check : threads.invokeAll(checks)) {
        together.add(check.get());
      }
      assertThat(together).isEqualTo(alone);
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void aNeedSaysWhatIsWantedAndWhere() {
    assertThat(JUDGE.judge(factsOf("order.unmet-need", "no ring")).findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.need()).isEqualTo(new Need(PartKind.CENTERING_RING, "front-left"));
              assertThat(finding.identity()).isEqualTo("wheel.bore-loose@front-left:wheel");
              assertThat(finding.decides()).isTrue();
            });
  }

  @Test
  void onlyASupplyThatCertainlySuitsSilencesANeed() {
    assertThat(JUDGE.judge(factsOf("order.unmet-need", "a ring that suits")).findings()).isEmpty();
    assertThat(JUDGE.judge(factsOf("order.unmet-need", "a ring that may suit")).findings())
        .extracting(Finding::rule)
        .containsExactly("wheel.bore-loose");
    assertThat(JUDGE.judge(factsOf("order.unmet-need", "a ring of unknown size")).findings())
        .extracting(Finding::rule)
        .containsExactly("wheel.bore-loose");
  }

  @Test
  void kindsOfPartThatSomeRuleJudgesAreKnown() {
    assertThat(JUDGE.judges(PartKind.TIRE)).isTrue();
    assertThat(JUDGE.judges(PartKind.CENTERING_RING)).isTrue();
    assertThat(JUDGE.judges(PartKind.BODY_LIFT_KIT)).isTrue();
  }
}
