package trammel.report;

import java.util.List;
import trammel.book.Book;
import trammel.book.Proof;
import trammel.read.Problem;

/** What is wrong and what is doubtful in books, as text. */
public final class ProofPage {
  private ProofPage() {}

  /** The proof of some books. */
  public static String text(List<Book> books, Proof proof) {
    Page page = new Page();
    for (Book book : books) {
      int rules = book.rules().size();
      int tables = book.tables().size();
      page.paragraph(
          "",
          "  ",
          book.name()
              + " "
              + book.manifest().version()
              + ": "
              + rules
              + (rules == 1 ? " rule" : " rules")
              + (tables == 0 ? "" : " and " + tables + (tables == 1 ? " table" : " tables"))
              + " read.");
    }
    section(page, "To be mended:", proof.wrong());
    section(page, "To be looked at:", proof.doubtful());
    if (proof.wrong().isEmpty() && proof.doubtful().isEmpty()) {
      page.gap();
      page.paragraph("", "", "Nothing wrong, and nothing doubtful.");
    }
    return page.toString();
  }

  private static void section(Page page, String heading, List<Problem> problems) {
    if (problems.isEmpty()) {
      return;
    }
    page.heading(heading);
    for (Problem problem : problems) {
      page.paragraph("  ", "    ", problem.place() + ": " + problem.what() + ".");
      page.paragraph("    ", "    ", problem.advice());
    }
  }
}
