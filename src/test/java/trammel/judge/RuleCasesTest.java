package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import trammel.fact.Fact;
import trammel.quantity.Comparison;

/** Every rule does in each of its cases what the case expects. */
class RuleCasesTest {
  private static final Pattern OF_A_COMPARISON = Pattern.compile("\\{(short|value|limit)}");

  /** A margin is a difference of two decimal numbers; this is far below any last digit written. */
  private static final double ROUNDING = 1e-9;

  private static final Judge JUDGE = Judge.ofBaseBook();

  @AfterAll
  static void close() {
    JUDGE.close();
  }

  @TestFactory
  Stream<DynamicTest> cases() {
    return CaseFile.all().stream()
        .map(
            rule ->
                DynamicTest.dynamicTest(rule.rule() + ": " + rule.name(), () -> doesAsSaid(rule)));
  }

  private static void doesAsSaid(RuleCase rule) {
    Judgement judgement = JUDGE.judge(rule.facts());
    List<Finding> findings =
        judgement.findings().stream().filter(f -> f.rule().equals(rule.reportedAs())).toList();
    assertThat(findings.stream().map(RuleCasesTest::kind))
        .as("%s at %s", rule.name(), rule.place())
        .isEqualTo(rule.fires() ? List.of(rule.expects()) : List.of());
    assertThat(judgement.precedents())
        .as("precedents")
        .filteredOn(precedent -> precedent.rule().equals(rule.reportedAs()))
        .hasSize(rule.expects().equals(RuleCase.PRECEDENT) ? 1 : 0);
    for (Finding finding : findings) {
      holdsMargin(rule, finding);
    }
  }

  private static String kind(Finding finding) {
    return (finding.possibly() ? "possibly " : "") + finding.kind();
  }

  private static void holdsMargin(RuleCase rule, Finding finding) {
    Comparison comparison = finding.comparison();
    Rule stated = JUDGE.rule(finding.rule()).orElseThrow();
    if (comparison == null) {
      assertThat(speaksOfAComparison(stated, finding.fact()))
          .as("%s speaks of a comparison and makes none", stated.id())
          .isFalse();
    }
    if (comparison == null || !comparison.margin().isKnown()) {
      assertThat(rule.margin()).as("margin of %s at %s", rule.name(), rule.place()).isEmpty();
    } else {
      assertThat(rule.margin()).as("margin of %s at %s", rule.name(), rule.place()).isPresent();
      assertThat(comparison.margin().value())
          .as("margin of %s at %s", rule.name(), rule.place())
          .isCloseTo(rule.margin().getAsDouble(), within(ROUNDING));
    }
  }

  /** A fact's own component of that name is no comparison's. */
  private static boolean speaksOfAComparison(Rule rule, Fact fact) {
    Set<String> own =
        Stream.of(fact.getClass().getRecordComponents())
            .map(component -> FactMaker.kebab(component.getName()))
            .collect(Collectors.toSet());
    return OF_A_COMPARISON
        .matcher(rule.says() + rule.settle())
        .results()
        .anyMatch(found -> !own.contains(found.group(1)));
  }
}
