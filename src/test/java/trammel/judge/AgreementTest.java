package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drools.model.codegen.ExecutableModelProject;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import trammel.book.Book;
import trammel.book.Interpreter;
import trammel.book.SheetRule;
import trammel.book.TestBook;
import trammel.fact.Fact;

/**
 * Five hundred random sheets, judged three ways over random facts: by the engine from the sheet, by
 * the plain interpreter, and by the engine from the same rule written in its own language and
 * compiled by its own compiler. The three agree on every rule and every fact.
 */
class AgreementTest {
  private static final int RULES = 500;
  private static final int BOOKS = 5;
  private static final int ROUNDS = 60;
  private static final long SEED = 2026;

  private static List<Book> books = List.of();
  private static Judge judge = Judge.ofBaseBook();
  private static List<RandomRule> rules = List.of();

  @BeforeAll
  static void read() {
    judge.close();
    rules = RandomRule.some(RULES, SEED);
    TestBook[] written = new TestBook[BOOKS];
    for (int i = 0; i < BOOKS; i++) {
      written[i] = TestBook.shop("random-" + i, rules.get(i).sheet());
    }
    for (int i = BOOKS; i < RULES; i++) {
      written[i % BOOKS].with("sheet-" + i + ".rules.yaml", rules.get(i).sheet());
    }
    books = TestBook.read(written);
    judge = Judge.of(books);
  }

  @AfterAll
  static void close() {
    judge.close();
  }

  @Test
  void theEngineFindsWhatTheInterpreterFinds() {
    Random random = new Random(SEED + 1);
    Map<String, Integer> met = new TreeMap<>();
    for (int round = 0; round < ROUNDS; round++) {
      List<Fact> facts = RandomFacts.some(random);
      List<String> interpreted = interpreted(facts, met);
      assertThat(ofRandomRules(judge.judge(facts))).isEqualTo(interpreted);
      assertThat(ofRandomRules(judge.judgeFresh(facts))).isEqualTo(interpreted);
    }
    assertThat(met.keySet())
        .as("outcomes that were met")
        .contains(
            "nothing",
            "conflict",
            "alignment",
            "companion",
            "caution",
            "unproven",
            "precedent",
            "possibly caution");
  }

  @Test
  void theEngineFindsTheSameFromItsOwnLanguage() {
    KieBase compiled = compiled();
    Random random = new Random(SEED + 2);
    for (int round = 0; round < ROUNDS; round++) {
      List<Fact> facts = RandomFacts.some(random);
      assertThat(ofRandomRules(judge.judge(facts)))
          .isEqualTo(ofRandomRules(judged(compiled, facts)));
    }
  }

  private static Judgement judged(KieBase base, List<Fact> facts) {
    Set<Class<?>> read = facts.stream().map(Fact::getClass).collect(Collectors.toSet());
    try (Hearing hearing = new Hearing(base.newKieSession(), read)) {
      hearing.hear(facts);
      return hearing.judgement(Judgement.NOTHING, match -> true);
    }
  }

  private static KieBase compiled() {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    for (RandomRule rule : rules) {
      String name = rule.id().replace('.', '/');
      files.write("src/main/resources/" + name + ".drl", rule.drl());
    }
    KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
    assertThat(builder.getResults().getMessages(Message.Level.ERROR)).isEmpty();
    return services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase();
  }

  private static List<String> interpreted(List<Fact> facts, Map<String, Integer> met) {
    TreeSet<String> all = new TreeSet<>();
    for (Book book : books) {
      for (SheetRule rule : book.rules()) {
        Interpreter.judge(rule, facts)
            .forEach(
                ruling -> {
                  met.merge(ruling.result(), 1, Integer::sum);
                  if (!ruling.result().equals("nothing")) {
                    String decision =
                        ruling.result().equals("precedent") ? "" : " " + ruling.decision();
                    all.add(
                        rule.id() + "@" + key(ruling.fact()) + " " + ruling.result() + decision);
                  }
                });
      }
    }
    return List.copyOf(all);
  }

  private static List<String> ofRandomRules(Judgement judgement) {
    TreeSet<String> all = new TreeSet<>();
    for (Finding finding : judgement.findings()) {
      if (finding.rule().startsWith("random.")) {
        String kind = (finding.possibly() ? "possibly " : "") + finding.kind();
        all.add(finding.rule() + "@" + key(finding.fact()) + " " + kind + " " + finding.decision());
      }
    }
    for (Precedent precedent : judgement.precedents()) {
      if (precedent.rule().startsWith("random.")) {
        all.add(precedent.rule() + "@" + key(precedent.fact()) + " precedent");
      }
    }
    return List.copyOf(all);
  }

  /** Facts made at random differ in the second part of their subject. */
  private static String key(Fact fact) {
    return fact.getClass().getSimpleName() + " " + fact.subject();
  }
}
