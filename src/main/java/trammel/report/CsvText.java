package trammel.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Rows as comma-separated values, quoted as RFC 4180 has it. */
final class CsvText {
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private CsvText() {}

  /** A head line and rows, each ended by a line break. */
  static String of(List<String> head, List<List<String>> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      writer.writeRecord(head);
      rows.forEach(writer::writeRecord);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /**
   * A text that a spreadsheet would take for a formula, led by an apostrophe; others as they are.
   */
  static String words(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
