package trammel.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Collection;
import java.util.List;
import trammel.book.Book;
import trammel.judge.Rule;

/** Every rule in force, and what books assume, as one page that needs nothing but itself. */
public final class RulesHtml {
  private static final String STYLE =
      """

      body { font: 11pt/1.4 serif; color: #1b1b1b; background: #fff; max-width: 42em;
        margin: 2em auto; padding: 0 1em; }
      h1 { font-size: 1.3em; font-weight: normal; border-bottom: 1px solid #1b1b1b; }
      h2 { font-size: 1em; font-weight: normal; letter-spacing: 0.08em; margin-top: 2em; }
      section { break-inside: avoid; margin: 1em 0 1em 2.5em; }
      h3 { font-size: 1em; margin: 0 0 0 -2.5em; }
      p, ul { margin: 0.1em 0; }
      ul { padding-left: 1.2em; list-style: "\\2013  "; }
      .id { font-family: monospace; font-size: 0.9em; text-align: right; }
      """;

  private final StringBuilder html = new StringBuilder();

  private RulesHtml() {}

  /** The page. */
  public static String of(Collection<Rule> rules, List<Book> books) {
    RulesHtml page = new RulesHtml();
    page.head();
    RuleList list = RuleList.of(rules, books);
    for (RuleList.Group group : list.groups()) {
      page.element("h2", "Book " + group.heading());
      group.entries().forEach(page::entry);
    }
    for (RuleList.Defaults defaults : list.defaults()) {
      page.element("h2", "Book " + defaults.heading());
      page.element("p", defaults.when());
      defaults.values().forEach(page::assumed);
    }
    page.html.append("</body>\n</html>\n");
    return page.html.toString();
  }

  private void head() {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ")
        .append("style-src 'sha256-")
        .append(hash())
        .append("'; base-uri 'none'; form-action 'none'\">\n")
        .append("<title>Rules in force</title>\n<style>")
        .append(STYLE)
        .append("</style>\n</head>\n<body>\n<h1>Rules in force</h1>\n");
    element("p", "Local law and a licensed mechanic or engineer have the last word.");
  }

  private static String hash() {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(STYLE.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private void entry(RuleList.Entry entry) {
    Rule rule = entry.rule();
    html.append("<section>\n");
    element("h3", rule.title() + (rule.safetyCritical() ? " (safety-critical)" : ""));
    element("p", Sentences.upperFirst(rule.kind().toString()) + ". " + rule.reason());
    entry.asks().forEach(line -> element("p", line));
    if (!rule.settle().isEmpty()) {
      element("p", "To settle it: " + String.join("; or ", rule.settle()) + ".");
    }
    element("p", "By: " + rule.source() + "; since " + rule.since());
    if (!entry.examples().isEmpty()) {
      html.append("<ul>\n");
      entry.examples().forEach(line -> element("li", line));
      html.append("</ul>\n");
    }
    html.append("<p class=\"id\">").append(escaped(rule.id())).append("</p>\n</section>\n");
  }

  private void assumed(Assumed value) {
    html.append("<section>\n");
    element("h3", Sentences.upperFirst(value.what()) + " " + value.is());
    element("p", "Because: " + value.because());
    element("p", "By: " + value.source());
    html.append("<p class=\"id\">").append(escaped(value.key())).append("</p>\n</section>\n");
  }

  private void element(String name, String text) {
    html.append('<').append(name).append('>').append(escaped(text));
    html.append("</").append(name).append(">\n");
  }

  /** A text of a book, which may hold anything, as plain text of the page. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(c);
      }
    }
    return safe.toString();
  }
}
