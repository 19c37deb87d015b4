package trammel.report;

import java.util.List;
import java.util.OptionalDouble;
import trammel.book.Book;
import trammel.book.Interpreter;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.book.Threshold;
import trammel.book.Tried;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;

/** What the cases of books leave unwatched, as text. */
public final class GapsPage {
  /** Moving a limit reads the whole table for every case, so that work grows with their square. */
  private static final int ROWS_MOVED = 200;

  private final Page page = new Page();

  private GapsPage() {}

  /** Rules that no case makes speak, rows that no case meets, and how far limits could move. */
  public static String text(List<Book> books) {
    GapsPage gaps = new GapsPage();
    gaps.page.paragraph(
        "",
        "",
        "How far each limit could be moved before one of its rule's cases came out otherwise. The"
            + " nearer a case stands to a limit, the less it can move unseen.");
    for (Book book : books) {
      book.rules().forEach(gaps::rule);
      book.tables().forEach(gaps::table);
    }
    return gaps.page.toString();
  }

  private void head(SheetRule rule, boolean speaks) {
    page.gap();
    page.paragraph("", "  ", rule.id() + ": " + rule.title());
    if (!speaks) {
      page.paragraph("  ", "    ", "No case makes it speak.");
    }
  }

  private void rule(SheetRule rule) {
    head(rule, Tried.speaks(Tried.all(rule)));
    List<Threshold> thresholds = Threshold.of(rule);
    thresholds.forEach(threshold -> page.paragraph("  ", "    ", words(threshold)));
    if (thresholds.isEmpty()) {
      page.paragraph("  ", "    ", "It holds nothing against a limit.");
    }
  }

  private static String words(Threshold threshold) {
    return Sentences.upperFirst(threshold.words())
        + ": "
        + way(threshold.lower(), "down", threshold.dimension())
        + "; "
        + way(threshold.higher(), "up", threshold.dimension())
        + ".";
  }

  private static String way(OptionalDouble by, String direction, Dimension dimension) {
    if (by.isEmpty()) {
      return direction + " as far as you like";
    }
    Quantity move = Quantity.exact(dimension, by.getAsDouble());
    String told = QuantityWriter.value(move);
    boolean nothing = told.equals(QuantityWriter.value(Quantity.exact(dimension, 0)));
    return direction + (nothing ? " not at all" : " by " + told);
  }

  private void table(Table table) {
    List<Tried> tried = Tried.all(table);
    head(table.rule(), Tried.speaks(tried));
    List<Table.Row> unmet =
        table.rows().stream()
            .filter(
                row ->
                    table.rule().cases().stream()
                        .flatMap(shown -> Interpreter.judge(table, shown.facts()).stream())
                        .noneMatch(ruling -> ruling.rows().contains(row)))
            .toList();
    page.paragraph(
        "  ",
        "    ",
        (table.rows().size() - unmet.size())
            + " of "
            + table.rows().size()
            + " rows are met by some case"
            + (unmet.isEmpty() ? "." : "; not those at:"));
    unmet.forEach(row -> page.paragraph("    ", "      ", row.place().toString()));
    if (table.rows().size() > ROWS_MOVED) {
      page.paragraph("  ", "    ", "Its rows are too many to move each limit of them.");
      return;
    }
    for (Table.Row row : table.rows()) {
      if (!unmet.contains(row)) {
        page.paragraph("  ", "    ", "The row at " + row.place() + ":");
        Threshold.of(table, row)
            .forEach(threshold -> page.paragraph("    ", "      ", words(threshold)));
      }
    }
  }
}
