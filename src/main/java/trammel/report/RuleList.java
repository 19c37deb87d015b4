package trammel.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trammel.book.Book;
import trammel.book.Manifest;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.judge.Examples;
import trammel.judge.Rule;

/**
 * The rules in force, for printing, and what their books assume.
 *
 * @param groups by book, the base book first, then by group
 * @param defaults of each book that has some
 */
record RuleList(List<Group> groups, List<Defaults> defaults) {

  /**
   * The values that a book assumes.
   *
   * @param heading the book
   * @param when for which vehicles, and when they count, in sentences
   */
  record Defaults(String heading, String when, List<Assumed> values) {}

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
   * @param examples its cases and what they come to
   */
  record Entry(Rule rule, List<String> asks, List<String> examples) {}

  static RuleList of(Collection<Rule> rules, List<Book> books) {
    Examples examples = Examples.of(books);
    Map<String, List<String>> asks = new HashMap<>();
    for (Book book : books) {
      for (SheetRule rule : book.rules()) {
        asks.put(rule.id(), RuleWords.conditions(rule));
      }
      for (Table table : book.tables()) {
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
                        new Entry(
                            rule,
                            asks.getOrDefault(rule.id(), List.of()),
                            examples.of(rule.id()).stream()
                                .map(Examples.Example::toString)
                                .toList())));
    return new RuleList(
        groups.entrySet().stream()
            .map(group -> new Group(group.getKey(), List.copyOf(group.getValue())))
            .toList(),
        books.stream().filter(book -> !book.defaults().isEmpty()).map(RuleList::defaults).toList());
  }

  private static Defaults defaults(Book book) {
    Manifest manifest = book.manifest();
    String vehicles =
        manifest.vehicles().isEmpty() ? "every vehicle" : String.join(", ", manifest.vehicles());
    return new Defaults(
        book.name() + " " + manifest.version() + ", defaults",
        "For "
            + vehicles
            + (manifest.of() == null ? "" : ", registered at " + manifest.of())
            + ": assumed where neither the profile nor an overlay gives the value. No "
            + "safety-critical rule accepts it.",
        book.defaults().stream().map(Assumed::of).toList());
  }
}
