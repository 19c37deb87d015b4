package trammel.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import trammel.book.Book;
import trammel.book.Case;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.judge.Rule;

/**
 * The rules in force, for printing.
 *
 * @param groups by book, the base book first, then by group
 */
record RuleList(List<Group> groups) {

  /**
   * Rules of one group.
   *
   * @param heading book and group
   */
  record Group(String heading, List<Entry> entries) {}

  /**
   * One rule.
   *
   * @param asks what it asks, in sentences; empty for a rule that is no sheet's
   * @param examples its cases and what they come to; empty likewise
   */
  record Entry(Rule rule, List<String> asks, List<String> examples) {}

  static RuleList of(Collection<Rule> rules, List<Book> books) {
    Map<String, SheetRule> sheets = new HashMap<>();
    Map<String, List<String>> asks = new HashMap<>();
    for (Book book : books) {
      for (SheetRule rule : book.rules()) {
        sheets.put(rule.id(), rule);
        asks.put(rule.id(), RuleWords.conditions(rule));
      }
      for (Table table : book.tables()) {
        sheets.put(table.rule().id(), table.rule());
        asks.put(table.rule().id(), RuleWords.conditions(table));
      }
    }
    Comparator<String> baseFirst =
        Comparator.comparing((String heading) -> !heading.startsWith("base, "))
            .thenComparing(Comparator.naturalOrder());
    Map<String, List<Entry>> groups = new TreeMap<>(baseFirst);
    rules.stream()
        .sorted(Comparator.comparing(Rule::id))
        .forEach(
            rule ->
                groups
                    .computeIfAbsent(rule.book() + ", " + rule.group(), key -> new ArrayList<>())
                    .add(
                        entry(
                            rule, sheets.get(rule.id()), asks.getOrDefault(rule.id(), List.of()))));
    return new RuleList(
        groups.entrySet().stream()
            .map(group -> new Group(group.getKey(), List.copyOf(group.getValue())))
            .toList());
  }

  private static Entry entry(Rule rule, @Nullable SheetRule sheet, List<String> asks) {
    List<String> examples =
        sheet == null ? List.of() : sheet.cases().stream().map(RuleList::example).toList();
    return new Entry(rule, asks, examples);
  }

  private static String example(Case shown) {
    return shown.name() + ": " + shown.expects();
  }
}
