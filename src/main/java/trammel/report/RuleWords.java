package trammel.report;

import java.util.ArrayList;
import java.util.List;
import trammel.book.ConditionWords;
import trammel.book.Demand;
import trammel.book.RuleKind;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.read.Words;

/** What a rule of a sheet asks, in sentences. */
final class RuleWords {
  private RuleWords() {}

  /** What a table looks at, where it applies and how long it is, a sentence each. */
  static List<String> conditions(Table table) {
    List<String> lines = new ArrayList<>(head(table.rule()));
    int rows = table.rows().size();
    lines.add("A table of " + rows + (rows == 1 ? " row." : " rows."));
    return lines;
  }

  private static List<String> head(SheetRule rule) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Looks at each "
            + Words.spaced(rule.about().name())
            + "; what it finds is of kind "
            + rule.kind()
            + ": "
            + meaning(rule.kind())
            + ".");
    if (rule.where() != null) {
      lines.add("Applies where " + ConditionWords.of(rule.where()) + ".");
    }
    return lines;
  }

  /** What it looks at, where it applies and what it demands, a sentence each. */
  static List<String> conditions(SheetRule rule) {
    List<String> lines = new ArrayList<>(head(rule));
    Demand demand = rule.demand();
    switch (demand.form()) {
      case TELLS -> lines.add("Only tells; nothing is demanded.");
      case DEMANDS -> lines.add("Demands " + ConditionWords.of(demand.condition()) + ".");
      case NEEDS -> lines.add("Needs: " + ConditionWords.of(demand.condition()) + ".");
      case EXCLUDES -> lines.add("Excludes: " + ConditionWords.of(demand.condition()) + ".");
    }
    if (rule.stricterThan() != null) {
      lines.add("Stricter than " + rule.stricterThan() + ", and reported as one with it.");
    }
    if (!rule.replaces().isEmpty()) {
      lines.add("Takes the place of " + String.join(", ", rule.replaces()) + ".");
    }
    return lines;
  }

  private static String meaning(RuleKind kind) {
    return switch (kind) {
      case CONFLICT -> "it does not fit";
      case ALIGNMENT -> "it cannot be set, or steers worse";
      case COMPANION -> "something more is needed";
      case LAW -> "the law stands against it";
      case CAUTION -> "it fits, and someone must know";
    };
  }
}
