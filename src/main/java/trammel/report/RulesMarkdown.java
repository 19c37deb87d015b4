package trammel.report;

import java.util.Collection;
import java.util.List;
import trammel.book.Book;
import trammel.judge.Rule;

/** Every rule in force, and what books assume, as Markdown. */
public final class RulesMarkdown {
  /** What Markdown would take for a mark of its own. */
  private static final String MARKS = "\\`*_{}[]<>#+!|~";

  private final StringBuilder text = new StringBuilder();

  private RulesMarkdown() {}

  /** The page. */
  public static String of(Collection<Rule> rules, List<Book> books) {
    RulesMarkdown page = new RulesMarkdown();
    page.text.append("# Rules in force\n\n");
    page.text.append("Local law and a licensed mechanic or engineer have the last word.\n");
    RuleList list = RuleList.of(rules, books);
    for (RuleList.Group group : list.groups()) {
      page.text.append("\n## Book ").append(plain(group.heading())).append("\n");
      group.entries().forEach(page::entry);
    }
    for (RuleList.Defaults defaults : list.defaults()) {
      page.text.append("\n## Book ").append(plain(defaults.heading())).append("\n\n");
      page.text.append(plain(defaults.when())).append("\n");
      defaults.values().forEach(page::assumed);
    }
    return page.text.toString();
  }

  private void entry(RuleList.Entry entry) {
    Rule rule = entry.rule();
    String safety = rule.safetyCritical() ? " (safety-critical)" : "";
    text.append("\n### ").append(plain(rule.title() + safety)).append("\n\n");
    line(Sentences.upperFirst(rule.kind().toString()) + ". " + rule.reason());
    entry.asks().forEach(this::line);
    if (!rule.settle().isEmpty()) {
      line("To settle it: " + String.join("; or ", rule.settle()) + ".");
    }
    line("By: " + rule.source() + "; since " + rule.since());
    line(rule.id());
    if (!entry.examples().isEmpty()) {
      text.append('\n');
      entry.examples().forEach(example -> text.append("* ").append(plain(example)).append('\n'));
    }
  }

  private void assumed(Assumed value) {
    String heading = Sentences.upperFirst(value.what()) + " " + value.is();
    text.append("\n### ").append(plain(heading)).append("\n\n");
    line("Because: " + value.because());
    line("By: " + value.source());
    line(value.key());
  }

  /** A line that stands alone: two spaces end it. */
  private void line(String line) {
    text.append(plain(line)).append("  \n");
  }

  /** A text of a book, which may hold anything, as plain text. */
  static String plain(String text) {
    StringBuilder safe = new StringBuilder();
    text.strip()
        .codePoints()
        .forEach(
            c -> {
              if (c == '&') {
                safe.append("&amp;");
              } else if (c == '<') {
                safe.append("&lt;");
              } else if (c == '\n' || c == '\r') {
                safe.append(' ');
              } else {
                boolean mark = c < 128 && MARKS.indexOf(c) >= 0;
                safe.append(mark ? "\\" : "").appendCodePoint(c);
              }
            });
    return safe.toString();
  }
}
