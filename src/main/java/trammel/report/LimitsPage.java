package trammel.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import trammel.build.Build;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.remedy.Limits.End;
import trammel.remedy.Limits.Range;

/** How far each wish of a build may go, as text. */
public final class LimitsPage {
  private final Page page = new Page();
  private final Judge judge;

  private LimitsPage(Judge judge) {
    this.judge = judge;
  }

  /** The ranges as text that ends with a line break. */
  public static String text(Build build, List<Range> ranges, Judge judge, LocalDate on) {
    LimitsPage page = new LimitsPage(judge);
    page.page.paragraph(
        "",
        "",
        build.title()
            + ": how far each wish may go on the "
            + build.vehicle().words()
            + ", the others as proposed, "
            + on);
    page.page.gap();
    page.page.paragraph(
        "",
        "",
        "Counted from what the sheet proposes. What already decides against the sheet does not "
            + "count here; check tells of that.");
    for (Range range : ranges) {
      page.page.heading(Sentences.upperFirst(range.wish().words()) + ":");
      page.end("less", range.less());
      page.end("more", range.more());
    }
    page.page.gap();
    page.page.paragraph(
        "", "", "Local law and a licensed mechanic or engineer have the last word.");
    return page.page.toString();
  }

  private void end(String way, End end) {
    double by = Math.abs(end.by());
    Finding stops = end.stops();
    String amount = by < 0.5 ? "none " + way : millimeters(by) + " " + way;
    page.paragraph(
        "  ",
        "    ",
        amount + ": " + (stops == null ? "nothing new as far as was tried" : said(stops)));
    if (stops != null) {
      page.right("[" + stops.identity() + "]");
    }
  }

  private String said(Finding finding) {
    Sentences sentences = new Sentences(finding, judge.rule(finding.rule()).orElseThrow());
    return "beyond, "
        + finding.fact().subject().words().toLowerCase(Locale.ROOT)
        + ": "
        + sentences.sentence();
  }

  private static String millimeters(double length) {
    return String.format(Locale.ROOT, "%.0f mm (%.1f in)", Math.floor(length), length / 25.4);
  }
}
