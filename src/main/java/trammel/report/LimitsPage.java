package trammel.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trammel.build.Build;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.quantity.Quantity;
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
      page.page.heading(
          Sentences.upperFirst(range.wish().words()) + ", now " + now(range.now()) + ":");
      page.end("less", range.less(), range.now());
      page.end("more", range.more(), range.now());
    }
    Assumed.write(Assumed.of(build), page.page);
    page.page.gap();
    page.page.paragraph(
        "", "", "Local law and a licensed mechanic or engineer have the last word.");
    return page.page.toString();
  }

  /** What is proposed: once where front and rear are alike. */
  private static String now(List<Quantity> values) {
    return values.stream()
        .map(value -> value.isKnown() ? millimeters(value.value()) : "not known")
        .distinct()
        .collect(Collectors.joining(" in front and ", "", ""))
        .replaceFirst("( in front and .*)$", "$1 at the rear");
  }

  private void end(String way, End end, List<Quantity> now) {
    double by = Math.abs(inward(end.by()));
    Finding stops = end.stops();
    String amount =
        by < 0.5
            ? "not at all " + way
            : "up to " + atMost(by) + " " + way + " (" + reached(now, end.by()) + ")";
    page.paragraph(
        "  ",
        "    ",
        amount + (stops == null ? ", as far as was tried: nothing new" : "; then, " + said(stops)));
    if (stops != null) {
      page.right("[" + stops.identity() + "]");
    }
  }

  /** The value at the end of a range. */
  private static String reached(List<Quantity> now, double by) {
    return now.stream()
        .filter(Quantity::isKnown)
        .map(value -> String.format(Locale.ROOT, "%.0f mm", value.value() + inward(by)))
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  /** Toward what is proposed, to a whole millimeter, so that no end is told too far out. */
  private static double inward(double by) {
    return by < 0 ? Math.ceil(by) : Math.floor(by);
  }

  private String said(Finding finding) {
    Sentences sentences = new Sentences(finding, judge.rule(finding.told().by()).orElseThrow());
    return finding.fact().subject().words().toLowerCase(Locale.ROOT) + ": " + sentences.sentence();
  }

  /** A limit in both units, told too far out in neither. */
  private static String atMost(double length) {
    double inches = Math.floor(length / 25.4 * 10) / 10;
    return String.format(Locale.ROOT, "%.0f mm (%.1f in)", length, inches);
  }

  private static String millimeters(double length) {
    return String.format(Locale.ROOT, "%.0f mm (%.1f in)", length, length / 25.4);
  }
}
