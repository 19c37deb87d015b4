package trammel.report;

import java.util.List;

/**
 * The reports of several sheets.
 *
 * @param verdict the worst of them, or {@code unreadable} where any sheet gave none
 */
public record Batch(String verdict, List<Report> reports, List<Refused> unreadable) {

  /** A file that gave no verdict, and why. */
  public record Refused(String file, List<String> problems) {}

  /** The reports of several sheets under one verdict. */
  public static Batch of(List<Report> reports, List<Refused> unreadable) {
    String verdict =
        unreadable.isEmpty()
            ? Verdict.worst(reports.stream().map(Report::verdict).toList()).toString()
            : "unreadable";
    return new Batch(verdict, List.copyOf(reports), List.copyOf(unreadable));
  }
}
