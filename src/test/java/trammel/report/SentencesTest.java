package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.judge.Rule;
import trammel.read.Words;

/** The names that rules put in braces. */
class SentencesTest {
  private static final Pattern NAME = Pattern.compile("\\{([^}%]*)%?}");

  static Stream<Rule> rules() {
    return Sheet.JUDGE.rules().stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyNameInBracesIsKnown(Rule rule) {
    Set<String> known = new HashSet<>(List.of("short", "value", "limit", "need"));
    for (Class<?> fact : rule.facts()) {
      for (RecordComponent component : fact.getRecordComponents()) {
        known.add(Words.kebab(component.getName()));
      }
    }
    String texts = rule.says() + " " + String.join(" ", rule.settle());
    assertThat(NAME.matcher(texts).results().map(found -> found.group(1))).isSubsetOf(known);
  }
}
