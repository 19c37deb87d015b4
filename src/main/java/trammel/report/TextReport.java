package trammel.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A report as plain text for the counter: the verdict first, 80 columns, no color. */
public final class TextReport {
  private final Report report;
  private final Page page = new Page();

  private TextReport(Report report) {
    this.report = report;
  }

  /** The report as text that ends with a line break. */
  public static String of(Report report) {
    return new TextReport(report).text();
  }

  private String text() {
    page.paragraph(report.headline().toUpperCase(Locale.ROOT) + ".  ", "", report.decidedBy());
    Law law = report.law();
    if (law != null) {
      page.paragraph(
          "",
          "",
          Sentences.upperFirst(law.words())
              + " (registered at "
              + law.place()
              + "). "
              + law.says());
    }
    report.notRead().stream()
        .filter(Report.NotRead::mayConcern)
        .forEach(book -> page.paragraph("", "  ", NotReadBooks.told(book)));
    page.gap();
    page.paragraph(
        "", "", report.build() + ": " + report.vehicle() + ", checked for " + report.date());
    page.paragraph("", "", "Sheet: " + report.sheet());
    page.gap();
    items(report.findings(), true);
    section("These may or may not hold:", report.possible());
    additions();
    holds();
    fitting();
    measuring();
    lines("Not checked:", report.notChecked());
    section("Open before the change too, and no worse for it:", report.background());
    precedents();
    lines("Waivers that do not count:", report.notices());
    parts();
    lines("Before any work:", report.cautions());
    Assumed.write(report.assumed(), page);
    books();
    return page.toString();
  }

  private void section(String heading, List<Report.Item> items) {
    if (!items.isEmpty()) {
      page.heading(heading).gap();
      items(items, false);
    }
  }

  private void items(List<Report.Item> items, boolean full) {
    Map<Integer, List<Report.Item>> byNumber = new LinkedHashMap<>();
    items.forEach(
        item -> byNumber.computeIfAbsent(item.number(), number -> new ArrayList<>()).add(item));
    byNumber.values().forEach(group -> item(group, full));
  }

  private void item(List<Report.Item> group, boolean full) {
    Report.Item item = group.get(0);
    String kind = item.kind() + (item.safetyCritical() ? ", safety-critical" : "");
    String head = full ? item.where() + " (" + kind + "): " : item.where() + ": ";
    String number = item.number() + ". ";
    String indent = " ".repeat(number.length());
    page.paragraph(number, indent, head + item.sentence());
    if (!item.figures().isEmpty()) {
      page.paragraph(indent, indent, Sentences.upperFirst(item.figures()) + ".");
    }
    if (item.waived() != null) {
      page.paragraph(
          indent,
          indent,
          "WAIVED by "
              + item.waived().by()
              + " until "
              + item.waived().until()
              + ": "
              + item.waived().reason());
    }
    page.paragraph(indent, indent, "Why: " + item.reason());
    if (item.authority() != null) {
      page.paragraph(
          indent, indent, "By: " + item.source() + ". To decide: " + item.authority() + ".");
    }
    if (full && !item.remedies().isEmpty()) {
      page.paragraph(
          indent, indent + indent, "To settle it: " + String.join("; or ", item.remedies()) + ".");
    }
    identities(group, indent);
    page.gap();
  }

  /** The identity in full, then the other places of the same rule. */
  private void identities(List<Report.Item> group, String indent) {
    String first = "[" + group.get(0).id();
    if (group.size() == 1) {
      page.right(first + "]");
      return;
    }
    String others =
        group.stream().skip(1).map(item -> "@" + item.subject()).collect(Collectors.joining(", "));
    page.paragraph(indent, indent, first + ", " + others + "]");
  }

  private void holds() {
    if (!report.holds().isEmpty()) {
      page.heading("Hold these lines, or leave them out:");
      for (Report.Item item : report.holds()) {
        page.paragraph(item.number() + ". ", "    ", item.sentence());
        page.paragraph("    ", "    ", item.reason());
        page.right("[" + item.id() + "]");
      }
    }
  }

  private void additions() {
    if (report.additions().isEmpty()) {
      return;
    }
    page.heading("Add to the order:");
    for (Report.Addition addition : report.additions()) {
      page.paragraph("[ ] ", "    ", addition.where() + ": " + addition.what());
      for (Report.NamedPart part : addition.candidates()) {
        page.paragraph("    - ", "      ", named(part));
      }
      if (!addition.note().isEmpty()) {
        page.paragraph("    ", "    ", "(" + addition.note() + ")");
      }
    }
  }

  private void fitting() {
    if (report.fitting().steps().isEmpty()) {
      return;
    }
    page.heading("Fitting sequence. " + report.fitting().begin());
    for (Report.Step step : report.fitting().steps()) {
      String number = step.number() + ". ";
      String indent = " ".repeat(number.length());
      page.paragraph(number, indent, step.where() + ": " + step.what());
      if (!step.takeOff().isEmpty()) {
        page.paragraph(indent, indent + "  ", "Off: " + String.join(", ", step.takeOff()));
      }
      if (!step.fit().isEmpty()) {
        page.paragraph(indent, indent + "  ", "On: " + String.join(", ", step.fit()));
      }
      page.paragraph(indent, indent + "  ", "State: " + step.state() + "; by " + step.by() + ".");
      if (!step.caution().isEmpty()) {
        page.paragraph(indent, indent + "  ", "CAUTION: " + step.caution());
      }
      step.notes().forEach(note -> page.paragraph(indent + "- ", indent + "  ", note));
    }
  }

  private void measuring() {
    if (report.measuring().isEmpty()) {
      return;
    }
    page.heading("To measure, most useful first:");
    for (Report.Tool tool : report.measuring()) {
      page.paragraph("  ", "  ", "With: " + tool.tool());
      for (Report.Measurement value : tool.measurements()) {
        int count = value.settles().size();
        page.paragraph(
            "  [ ] ",
            "      ",
            value.where()
                + ": "
                + value.what()
                + (value.how().isEmpty() ? "" : " (" + value.how() + ")")
                + "; helps to settle "
                + (count == 1 ? "1 finding" : count + " findings"));
      }
    }
  }

  private void precedents() {
    lines(
        "Taken as met, because the sheet says it is sound there as found:",
        report.precedents().stream()
            .map(met -> met.where() + ": " + met.title() + ". [" + met.rule() + "]")
            .toList());
  }

  private void parts() {
    lines("Parts named:", report.parts().stream().map(TextReport::named).toList());
  }

  private void books() {
    lines(
        "Judged by:",
        report.books().stream()
            .map(
                book ->
                    "book "
                        + book.name()
                        + " "
                        + book.version()
                        + ", "
                        + book.rules()
                        + (book.rules() == 1 ? " rule" : " rules"))
            .toList());
    lines(
        "Not read, and not for this vehicle and place:",
        report.notRead().stream()
            .filter(book -> !book.mayConcern())
            .map(book -> "book " + book.book() + ", " + book.folder())
            .toList());
  }

  private static String named(Report.NamedPart part) {
    return part.part() + "  " + part.name() + (part.price() == null ? "" : ", " + part.price());
  }

  private void lines(String heading, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    page.heading(heading);
    lines.forEach(line -> page.paragraph("  - ", "    ", line));
  }
}
