package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.fact.Fact;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;

/** What every rule of the base book must have. */
class RuleBookTest {
  private static final Judge JUDGE = Judge.ofBaseBook();
  private static final Map<String, List<RuleCase>> CASES =
      CaseFile.all().stream().collect(Collectors.groupingBy(RuleCase::rule));

  private static final Examples EXAMPLES = Examples.of(List.of());

  /** Words in braces that a finding fills in itself, besides its fact's components. */
  private static final Set<String> OF_THE_FINDING = Set.of("short", "value", "limit");

  private static final Pattern ID =
      Pattern.compile(
          "(wheel|tire|clearance|height|steering|driveline|order)\\.[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}%]*)%?}");
  private static final Pattern RULE = Pattern.compile("(?m)^rule \"([^\"]*)\"");
  private static final Pattern ANNOTATION = Pattern.compile("@([A-Za-z]+)(?:\\(\"([^\"]*)\"\\))?");

  /** A document has a number, a section or a page of the references; practice says so in words. */
  private static final Pattern SOURCE =
      Pattern.compile(
          "(?i)common practice|definition|SAE |UN R\\d|\\d+ CFR |ISO \\d|GOST |NHTSA|TRA |"
              + "shared/reference/|the vehicle's own book");

  /** What would hold a bare number, without its uncertainty, against something. */
  private static final Pattern BARE_NUMBER =
      Pattern.compile("\\.value\\b|\\braw\\b|\\bexpanded\\b");

  /** A condition that may come out undecided or absent. */
  private static final Pattern DECIDES =
      Pattern.compile("\\.(atLeast|atMost|above|below)\\(|Agrees\\.");

  /** Made last, because it reads with the patterns above. */
  private static final Map<String, String> TEXTS = texts();

  @AfterAll
  static void close() {
    JUDGE.close();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void showsItsCasesToReaders(Rule rule) {
    assertThat(EXAMPLES.of(rule.id()))
        .extracting(Examples.Example::toString)
        .containsExactlyElementsOf(
            CASES.get(rule.id()).stream()
                .map(shown -> shown.name() + ": " + shown.expects())
                .toList());
  }

  static Stream<Rule> rules() {
    return JUDGE.rules().stream();
  }

  /** The text of each rule, by the id in its heading; a repeated id is kept as such. */
  private static Map<String, String> texts() {
    Map<String, String> texts = new TreeMap<>();
    for (String book : books()) {
      Matcher heading = RULE.matcher(book);
      List<Integer> starts = new ArrayList<>();
      while (heading.find()) {
        starts.add(heading.start());
      }
      for (int i = 0; i < starts.size(); i++) {
        int end = i + 1 < starts.size() ? starts.get(i + 1) : book.length();
        String text = book.substring(starts.get(i), end);
        String id = text.substring(text.indexOf('"') + 1, text.indexOf('"', 6));
        if (texts.put(id, text) != null) {
          throw new AssertionError("two rules are called " + id);
        }
      }
    }
    return texts;
  }

  private static List<String> books() {
    try (Stream<Path> files = Files.list(CaseFile.BOOK)) {
      List<String> books = new ArrayList<>();
      for (Path file :
          files
              .filter(f -> f.toString().endsWith(".drl"))
              .sorted(Comparator.naturalOrder())
              .toList()) {
        books.add(Files.readString(file));
      }
      return books;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyRuleWrittenIsInForceUnderItsOwnId() {
    assertThat(JUDGE.rules())
        .extracting(Rule::id)
        .containsExactlyInAnyOrderElementsOf(TEXTS.keySet());
  }

  @Test
  void casesAreOfRulesThatExist() {
    assertThat(TEXTS.keySet()).containsAll(CASES.keySet());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void idIsGroupAndName(Rule rule) {
    assertThat(rule.id()).matches(ID);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyAnnotationIsThereAndSaysSomething(Rule rule) {
    Matcher annotation = ANNOTATION.matcher(TEXTS.getOrDefault(rule.id(), ""));
    Set<String> found = new TreeSet<>();
    while (annotation.find()) {
      found.add(annotation.group(1));
      assertThat(annotation.group(1).equals("safetyCritical") ? "said" : annotation.group(2))
          .as("@%s of %s", annotation.group(1), rule.id())
          .isNotBlank();
    }
    assertThat(found).contains("title", "says", "reason", "source", "kind", "since");
    assertThat(found)
        .isSubsetOf(
            "title",
            "says",
            "open",
            "reason",
            "source",
            "kind",
            "since",
            "settle",
            "tries",
            "safetyCritical");
    assertThat(rule.safetyCritical()).isEqualTo(found.contains("safetyCritical"));
    assertThat(rule.kind() != Kind.CONFLICT || !rule.settle().isEmpty())
        .as("%s is a conflict and says what would settle it", rule.id())
        .isTrue();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void sourceNamesADocumentOrSaysWhatItIs(Rule rule) {
    assertThat(rule.source()).containsPattern(SOURCE);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void sentencesSpeakOfWhatTheirFactsHold(Rule rule) {
    Set<String> known = new TreeSet<>(OF_THE_FINDING);
    for (Class<?> fact : rule.facts()) {
      for (RecordComponent component : fact.getRecordComponents()) {
        known.add(FactMaker.kebab(component.getName()));
      }
    }
    if (TEXTS.getOrDefault(rule.id(), "").contains("$need : Need()")) {
      known.add("need");
    }
    Matcher placeholder =
        PLACEHOLDER.matcher(rule.says() + " " + rule.title() + String.join("; ", rule.settle()));
    while (placeholder.find()) {
      assertThat(known)
          .as("{%s} of %s", placeholder.group(1), rule.id())
          .contains(placeholder.group(1));
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void fourCasesShowWhereItFiresAndWhereNot(Rule rule) {
    List<RuleCase> cases = CASES.getOrDefault(rule.id(), List.of());
    assertThat(cases).as("cases of %s", rule.id()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(cases).as("%s fires", rule.id()).anyMatch(RuleCase::fires);
    assertThat(cases)
        .as("%s is silent", rule.id())
        .anyMatch(one -> one.expects().equals(RuleCase.NOTHING));
    assertThat(cases)
        .extracting(RuleCase::name)
        .as("names of %s", rule.id())
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void whatIsDecidedIsAlsoShownUndecidedAndAbsent(Rule rule) {
    if (!DECIDES.matcher(TEXTS.getOrDefault(rule.id(), "")).find()) {
      return;
    }
    List<RuleCase> cases = CASES.getOrDefault(rule.id(), List.of());
    assertThat(cases).as("%s with a value absent", rule.id()).anyMatch(RuleBookTest::lacksAValue);
    if (rule.kind() == Kind.CONFLICT) {
      assertThat(cases)
          .as("%s with a margin inside what is known of it", rule.id())
          .anyMatch(one -> one.expects().equals("unproven") && !lacksAValue(one));
    }
  }

  private static boolean lacksAValue(RuleCase one) {
    return one.facts().stream()
        .flatMap(fact -> Stream.of(fact.getClass().getRecordComponents()).map(c -> value(c, fact)))
        .anyMatch(
            value ->
                value == Decision.ABSENT
                    || (value instanceof Quantity quantity && !quantity.isKnown()));
  }

  private static Object value(RecordComponent component, Fact fact) {
    try {
      return component.getAccessor().invoke(fact);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component + " cannot be read", e);
    }
  }

  @Test
  void noRuleComparesABareNumber() {
    TEXTS.forEach(
        (id, text) ->
            assertThat(ANNOTATION.matcher(text).replaceAll(""))
                .as("rule %s", id)
                .doesNotContainPattern(BARE_NUMBER));
  }

  @Test
  void aBareNumberWouldBeFound() {
    assertThat("$gap.value() > 8").containsPattern(BARE_NUMBER);
    assertThat("gap.value > 8").containsPattern(BARE_NUMBER);
    assertThat("gap.expanded < 2").containsPattern(BARE_NUMBER);
    assertThat("$room : gap.atLeast(mm(8)), $room.possiblyViolated")
        .doesNotContainPattern(BARE_NUMBER);
  }
}
