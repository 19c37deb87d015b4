package trammel.report;

import java.util.ArrayList;
import java.util.List;
import trammel.book.Book;
import trammel.book.Case;
import trammel.book.SheetRule;
import trammel.book.Tried;

/** The cases of books, tried, as text: what spoke, what did not, and why not. */
public final class TryPage {
  private final Page page = new Page();
  private int held;
  private int knownGaps;
  private final List<String> otherwise = new ArrayList<>();

  private TryPage() {}

  /**
   * What came out.
   *
   * @param text what to print
   * @param otherwise how many cases do not come out as their sheet expects
   */
  public record Result(String text, int otherwise) {}

  /** Tries every case of some books. */
  public static Result of(List<Book> books) {
    TryPage page = new TryPage();
    books.forEach(page::book);
    page.total();
    return new Result(page.page.toString(), page.otherwise.size());
  }

  private void book(Book book) {
    page.gap();
    page.paragraph("", "", "Book " + book.name() + " " + book.manifest().version());
    book.rules().forEach(rule -> rule(rule, Tried.all(rule)));
    book.tables().forEach(table -> rule(table.rule(), Tried.all(table)));
  }

  private void rule(SheetRule rule, List<Tried> tried) {
    page.gap();
    page.paragraph("", "  ", rule.id() + ", " + rule.kind() + ": " + rule.title());
    tried.forEach(one -> one(rule, one));
  }

  private void one(SheetRule rule, Tried tried) {
    Case shown = tried.shown();
    String name = Sentences.upperFirst(shown.name());
    switch (tried.state()) {
      case AS_EXPECTED -> {
        held++;
        page.paragraph("  ", "    ", name + ": " + tried.was() + ".");
      }
      case OTHERWISE -> {
        otherwise.add(shown.place() + " " + rule.id());
        page.paragraph(
            "  ",
            "    ",
            name
                + ": "
                + tried.was()
                + ". The sheet expects "
                + shown.expects()
                + " ("
                + shown.place()
                + ").");
      }
      case KNOWN_GAP -> {
        knownGaps++;
        page.paragraph(
            "  ",
            "    ",
            name
                + ": "
                + tried.was()
                + ", should be "
                + shown.expects()
                + "; known: "
                + shown.knownGap());
      }
      case GAP_CLOSED -> {
        held++;
        page.paragraph(
            "  ", "    ", name + ": " + tried.was() + ". Remove known-gap: it is as it should be.");
      }
    }
    RuleReasons.print(RuleReasons.of(tried), "    ", page);
  }

  private void total() {
    page.gap();
    String cases = held + (held == 1 ? " case comes" : " cases come") + " out as expected";
    String gaps =
        knownGaps == 0
            ? ""
            : ", " + knownGaps + (knownGaps == 1 ? " is a known gap" : " are known gaps");
    String others =
        otherwise.isEmpty()
            ? ""
            : ", " + otherwise.size() + (otherwise.size() == 1 ? " does not:" : " do not:");
    page.paragraph("", "", cases + gaps + (others.isEmpty() ? "." : others));
    otherwise.forEach(line -> page.paragraph("  ", "    ", line));
  }
}
