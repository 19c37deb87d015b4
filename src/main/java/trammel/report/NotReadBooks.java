package trammel.report;

import java.util.List;
import trammel.book.Unread;
import trammel.build.Build;
import trammel.read.Problem;

/** The user's books that could not be read, as reports tell of them. */
final class NotReadBooks {
  /** More than one report should list of one book. */
  private static final int SHOWN = 5;

  private NotReadBooks() {}

  static List<Report.NotRead> of(List<Unread> unread, Build build) {
    String place = build.found().registeredAt();
    String vehicle = build.vehicle().vehicle();
    return unread.stream()
        .map(book -> of(book, book.mayJudge(vehicle, place == null ? "" : place)))
        .toList();
  }

  private static Report.NotRead of(Unread book, boolean mayConcern) {
    return new Report.NotRead(
        book.name(),
        book.folder(),
        mayConcern,
        book.problems().stream().limit(SHOWN).map(Problem::toString).toList(),
        Math.max(0, book.problems().size() - SHOWN));
  }

  /** Why the verdict is no better than it is. */
  static String decides(Report.NotRead book) {
    return "Book " + book.book() + " was not read: what its rules demand is not judged.";
  }

  /** What was not read and why, in one paragraph. */
  static String told(Report.NotRead book) {
    int others = book.problems().size() - 1 + book.more();
    return "Not read, so that none of its rules judged: book "
        + book.book()
        + ". "
        + book.problems().get(0).replaceAll("\\s*\n\\s*", ". ")
        + (others == 0 ? "" : " Besides, " + others + (others == 1 ? " problem." : " problems."))
        + (others == 0 ? "" : " rules proofread shows all.");
  }
}
