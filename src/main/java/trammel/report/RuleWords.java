package trammel.report;

import java.util.ArrayList;
import java.util.List;
import trammel.book.ConditionWords;
import trammel.book.Demand;
import trammel.book.SheetRule;
import trammel.read.Words;

/** What a rule of a sheet asks, in sentences. */
final class RuleWords {
  private RuleWords() {}

  /** What it judges, where it applies and what it demands, a sentence each. */
  static List<String> conditions(SheetRule rule) {
    List<String> lines = new ArrayList<>();
    lines.add("Judges each " + Words.spaced(rule.about().name()) + "; " + breaking(rule) + ".");
    if (rule.where() != null) {
      lines.add("Applies where " + ConditionWords.of(rule.where()) + ".");
    }
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

  private static String breaking(SheetRule rule) {
    return switch (rule.kind()) {
      case CONFLICT -> "where it is broken, it does not fit";
      case ALIGNMENT -> "where it is broken, it cannot be set or steers worse";
      case COMPANION -> "where it is broken, something more is needed";
      case LAW -> "where it is broken, the law stands against it";
      case CAUTION -> "where it is broken, someone must know";
    };
  }
}
