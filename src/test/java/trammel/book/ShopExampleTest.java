package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import trammel.judge.Judge;

/** The shop's example book shows every form of rule, and all it shows is so. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShopExampleTest {
  private List<Book> books = List.of();

  @BeforeAll
  void read() {
    books = Books.read(List.of(new DiskFolder(Path.of("rules/shop-example"))), Judge.knownRules());
  }

  private Stream<SheetRule> rules() {
    return books.stream().flatMap(book -> book.rules().stream());
  }

  @Test
  void everyCaseComesOutAsItSays() {
    List<Tried> tried =
        Stream.concat(
                rules().flatMap(rule -> Tried.all(rule).stream()),
                books.get(0).tables().stream().flatMap(table -> Tried.all(table).stream()))
            .toList();
    assertThat(tried).hasSizeGreaterThanOrEqualTo(80);
    assertThat(tried)
        .allSatisfy(
            one -> assertThat(one.was()).as(one.shown().name()).isEqualTo(one.shown().expects()));
  }

  @Test
  void nothingInItIsDoubtful() {
    Proof proof = Proof.of(books, LocalDate.of(2026, 11, 25));
    assertThat(proof.wrong()).isEmpty();
    assertThat(proof.doubtful()).isEmpty();
  }

  @Test
  void itHasSixteenRulesOfEveryFormAndATable() {
    assertThat(rules()).hasSize(16);
    assertThat(books.get(0).tables()).hasSize(1);
    assertThat(rules())
        .allSatisfy(
            rule -> {
              List<String> expected = rule.cases().stream().map(Case::expects).toList();
              assertThat(expected).as(rule.id()).contains(Case.NOTHING);
              assertThat(expected).as(rule.id()).contains(rule.kind().toString());
              // Whether heights are changed is always known.
              assertThat(expected.stream().distinct().count() >= 3)
                  .as("%s is shown undecided or absent", rule.id())
                  .isEqualTo(!rule.id().equals("steering.tell-of-second-visit"));
            });
    Set<Demand.Form> forms = rules().map(rule -> rule.demand().form()).collect(Collectors.toSet());
    assertThat(forms).containsExactlyInAnyOrder(Demand.Form.values());
    assertThat(rules().filter(rule -> rule.stricterThan() != null).count()).isPositive();
    assertThat(rules().filter(rule -> !rule.replaces().isEmpty()).count()).isPositive();
  }

  @Test
  void everyRuleSpeaksInSomeCaseAndNoLimitMovesUnseen() {
    assertThat(rules())
        .allSatisfy(
            rule -> {
              assertThat(Tried.speaks(Tried.all(rule))).as(rule.id()).isTrue();
              assertThat(Threshold.of(rule))
                  .as(rule.id())
                  .allSatisfy(
                      threshold -> {
                        assertThat(threshold.lower()).isPresent();
                        assertThat(threshold.higher()).isPresent();
                      });
            });
  }
}
