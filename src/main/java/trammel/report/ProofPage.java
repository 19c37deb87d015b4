package trammel.report;

import java.util.List;
import trammel.book.Book;
import trammel.book.Proof;
import trammel.read.Problem;

/** What is wrong and what is doubtful in books, as text. */
public final class ProofPage {
  private ProofPage() {}

  /**
   * The proof of some books.
   *
   * @param byCatalog whether they were held against the vehicles of a catalog
   */
  public static String text(List<Book> books, Proof proof, boolean byCatalog) {
    Page page = new Page();
    for (Book book : books) {
      page.paragraph(
          "", "  ", book.name() + " " + book.manifest().version() + ": " + held(book) + " read.");
    }
    section(page, "To be mended:", proof.wrong());
    section(page, "To be looked at:", proof.doubtful());
    if (proof.wrong().isEmpty() && proof.doubtful().isEmpty()) {
      page.gap();
      page.paragraph("", "", "Nothing wrong, and nothing doubtful.");
    }
    if (!byCatalog && books.stream().anyMatch(book -> !book.defaults().isEmpty())) {
      page.gap();
      page.paragraph(
          "",
          "",
          "Whether a vehicle wants a default, and can have it, was not looked at: name a catalog "
              + "with --catalog.");
    }
    return page.toString();
  }

  private static String held(Book book) {
    String tables = book.tables().isEmpty() ? "" : ", " + count(book.tables().size(), "table");
    String defaults =
        book.defaults().isEmpty() ? "" : ", " + count(book.defaults().size(), "default");
    return count(book.rules().size(), "rule") + tables + defaults;
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
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
