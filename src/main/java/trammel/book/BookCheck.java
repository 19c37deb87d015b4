package trammel.book;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;

/** What books must not do to each other. */
final class BookCheck {
  private final Map<String, KnownRule> rules = new HashMap<>();
  private final Map<String, Place> places = new HashMap<>();
  private final Map<String, SheetRule> sheetRules = new HashMap<>();
  private final Problems problems;

  BookCheck(Collection<KnownRule> known, Problems problems) {
    this.problems = problems;
    known.forEach(rule -> rules.put(rule.id(), rule));
  }

  void check(List<Book> books) {
    Set<String> names = new HashSet<>();
    for (Book book : books) {
      if (!names.add(book.name())) {
        problems.add(
            book.manifest().place(),
            "a second book called " + book.name() + "; expected each book once",
            "Rename one, or leave one out.");
      }
      book.rules().forEach(this::declare);
      book.tables().forEach(table -> declare(table.rule()));
    }
    for (Book book : books) {
      book.rules().forEach(this::relations);
      book.tables().forEach(table -> relations(table.rule()));
    }
  }

  private void declare(SheetRule rule) {
    if (rules.containsKey(rule.id())) {
      Place first = places.get(rule.id());
      problems.add(
          rule.place(),
          "a second rule called "
              + rule.id()
              + (first == null ? "; the base book has it" : "; the first is at " + first),
          "Give it a name of its own; to tighten a rule, write stricter-than.");
      return;
    }
    places.put(rule.id(), rule.place());
    sheetRules.put(rule.id(), rule);
    rules.put(
        rule.id(), new KnownRule(rule.id(), Set.of(rule.about().type()), rule.safetyCritical()));
  }

  private void relations(SheetRule rule) {
    for (String old : rule.replaces()) {
      if (rules.containsKey(old)) {
        problems.add(
            rule.place(),
            "replaces " + old + ", which is in force",
            "A sheet cannot take a rule away; remove replaces, or the old rule.");
      }
    }
    String base = rule.stricterThan();
    if (base == null || circular(rule)) {
      return;
    }
    KnownRule tightened = rules.get(base);
    if (tightened == null) {
      problems.add(
          rule.place(),
          "stricter than " + Words.quoted(base) + ", which is no rule in force",
          Words.didYouMean(base, rules.keySet(), "List the rules for their ids."));
    } else if (!tightened.facts().contains(rule.about().type())) {
      problems.add(
          rule.place(),
          "stricter than "
              + base
              + ", which is not about "
              + rule.about().name()
              + "; expected a rule about the same fact",
          "Remove stricter-than, or judge what that rule judges.");
    } else if (rule.safetyCritical() && !tightened.safetyCritical()) {
      problems.add(
          rule.place(),
          "safety-critical and stricter than " + base + ", which is not",
          "What is stricter bears the safety flag of the rule it tightens: remove one of both.");
    }
  }

  private boolean circular(SheetRule rule) {
    Set<String> met = new HashSet<>();
    SheetRule at = rule;
    while (at != null && at.stricterThan() != null) {
      if (!met.add(at.id())) {
        problems.add(
            rule.place(),
            "stricter than itself, by way of " + at.stricterThan(),
            "Let the strictest name the next, and the last name none of them.");
        return true;
      }
      at = sheetRules.get(at.stricterThan());
    }
    return false;
  }
}
