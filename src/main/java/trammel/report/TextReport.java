package trammel.report;

import java.util.List;
import java.util.Locale;
import org.apache.commons.text.WordUtils;

/** A report as text for a counter: verdict first, numbered findings, 80 columns. */
public final class TextReport {
  private static final int WIDTH = 80;
  private static final String INDENT = "   ";

  private final StringBuilder out = new StringBuilder();

  private TextReport() {}

  /** The whole report as lines of at most 80 columns. */
  public static String of(Report report) {
    TextReport text = new TextReport();
    text.print(report);
    return text.out.toString();
  }

  private void print(Report report) {
    String verdict = report.verdict().toString().toUpperCase(Locale.ROOT);
    String first = report.findings().isEmpty() ? "" : report.findings().get(0).sentence();
    boolean says = report.verdict() != Verdict.FITS && !first.isEmpty();
    wrapped("", says ? verdict + ".  " + first : verdict + ".");
    report.place().ifPresent(place -> wrapped("", "Law not judged: " + place + "."));
    out.append('\n');
    wrapped("", report.build() + ", " + report.vehicle() + ", checked for " + report.on() + ".");
    int number = 1;
    for (Report.Item item : report.findings()) {
      item(number++, item);
    }
    section(
        "To measure",
        report.measuring().entrySet().stream()
            .flatMap(tool -> tool.getValue().stream().map(what -> tool.getKey() + ": " + what))
            .toList());
    section("Not checked (no rule judges these parts yet)", report.notChecked());
    section("Sound as found, and no worse", report.precedents());
    section("Waivers", report.notices());
    section(
        "Open, but not raised by this change",
        report.background().stream()
            .map(item -> String.join("; ", item.where()) + ": " + item.sentence())
            .toList());
    out.append('\n');
    wrapped(
        "",
        "Judged by "
            + report.rules()
            + " rules of the base book. Work under a raised vehicle only on stands. Tighten to the maker's torque. Local law and a licensed mechanic or engineer have the last word.");
  }

  private void item(int number, Report.Item item) {
    out.append('\n');
    String mark = item.kind().toString() + (item.waived() ? ", waived" : "");
    wrapped(
        "",
        number + ". " + String.join("; ", item.where()) + " (" + mark + "): " + item.sentence());
    if (!item.figures().isEmpty()) {
      wrapped(INDENT, item.figures() + ".");
    }
    wrapped(INDENT, "Why: " + item.reason());
    if (!item.settle().isEmpty()) {
      wrapped(INDENT, "To settle it: " + String.join("; or ", item.settle()) + ".");
    }
    wrapped(INDENT, "[" + String.join(", ", item.identities()) + "]");
  }

  private void section(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      out.append('\n').append(title).append(":\n");
      lines.forEach(line -> wrapped(INDENT, "- " + line));
    }
  }

  private void wrapped(String indent, String text) {
    String lines = WordUtils.wrap(text, WIDTH - indent.length(), "\n", true);
    lines.lines().forEach(line -> out.append(indent).append(line).append('\n'));
  }
}
