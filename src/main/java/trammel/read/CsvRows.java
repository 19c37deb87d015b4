package trammel.read;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From comma-separated values (RFC 4180) to rows whose cells know their line. Every cell is text;
 * what looks like a spreadsheet's formula is refused, for the file may be opened with one.
 */
public final class CsvRows {
  private CsvRows() {}

  /**
   * Reads rows; the first is the heading.
   *
   * @param shownAs the file's name in messages
   * @param most how many rows are read, besides the heading
   * @param problems takes everything that is wrong
   * @return the rows with the heading; empty, and a problem told, if they cannot be followed
   */
  public static Optional<List<ListNode>> parse(
      String shownAs, byte[] bytes, int most, Problems problems) {
    return Source.of(shownAs, bytes, problems)
        .flatMap(source -> rows(shownAs, source.text(), most, problems));
  }

  private static Optional<List<ListNode>> rows(
      String shownAs, String text, int most, Problems problems) {
    List<ListNode> rows = new ArrayList<>();
    int before = problems.count();
    long line = 1;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .extraFieldStrategy(FieldMismatchStrategy.STRICT)
            .missingFieldStrategy(FieldMismatchStrategy.STRICT)
            .ofCsvRecord(text)) {
      for (CsvRecord row : reader) {
        line = row.getStartingLineNumber();
        if (rows.size() > most) {
          problems.add(
              new Place(shownAs, (int) line, 1),
              "more than " + most + " rows; expected fewer",
              "Split the table.");
          return Optional.empty();
        }
        rows.add(row(shownAs, row, rows.size(), problems));
      }
    } catch (CsvParseException | java.io.IOException e) {
      problems.add(
          new Place(shownAs, (int) line, 1),
          "the row in or after line " + line + " cannot be followed; expected values and commas",
          "Each row has as many values as the heading; a value with a comma stands in quotes.");
      return Optional.empty();
    }
    return problems.count() > before ? Optional.empty() : Optional.of(rows);
  }

  private static ListNode row(String shownAs, CsvRecord row, int index, Problems problems) {
    Place place = new Place(shownAs, (int) row.getStartingLineNumber(), 1);
    Trail trail = Trail.ROOT.key("row").item(index);
    List<Node> cells = new ArrayList<>();
    for (String field : row.getFields()) {
      String cell = field.strip();
      if (isFormula(cell)) {
        problems.add(
            place,
            Words.quoted(cell) + " is a formula to a spreadsheet; expected a plain value",
            "Write the value itself.");
      }
      cells.add(new TextNode(place, trail.item(cells.size()), cell, true));
    }
    return new ListNode(place, trail, cells);
  }

  /** A sign before a digit or a decimal point is a number's; alone, a hyphen is an empty cell. */
  private static boolean isFormula(String cell) {
    if (cell.isEmpty() || "=+-@".indexOf(cell.charAt(0)) < 0 || cell.equals("-")) {
      return false;
    }
    char next = cell.length() > 1 ? cell.charAt(1) : ' ';
    boolean number =
        (cell.charAt(0) == '-' || cell.charAt(0) == '+') && "0123456789.".indexOf(next) >= 0;
    return !number;
  }
}
