package trammel.report;

import java.util.ArrayList;
import java.util.List;

/** A page of text that is never wider than a narrow printer or an old terminal. */
final class Page {
  /** Columns of a printed slip and of a plain terminal. */
  static final int WIDTH = 80;

  private final StringBuilder text = new StringBuilder();

  /** Adds an empty line, except at the top and after another. */
  Page gap() {
    if (!text.isEmpty() && !text.toString().endsWith("\n\n")) {
      text.append('\n');
    }
    return this;
  }

  /** Adds a heading after an empty line. */
  Page heading(String words) {
    gap();
    return paragraph("", "", words);
  }

  /**
   * Adds a paragraph, broken between words.
   *
   * @param first what the first line begins with
   * @param others what every other line begins with
   */
  Page paragraph(String first, String others, String words) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : pieces(words, WIDTH - Math.max(columns(first), columns(others)))) {
      if (!empty && columns(line) + 1 + columns(word) > WIDTH) {
        end(line);
        line = new StringBuilder(others);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    end(line);
    return this;
  }

  /** Adds a line as it is: a row of a table or a chart. */
  Page line(String line) {
    end(new StringBuilder(line));
    return this;
  }

  /** Adds words at the right margin. */
  Page right(String words) {
    if (columns(words) > WIDTH) {
      return paragraph("    ", "    ", words);
    }
    end(new StringBuilder(" ".repeat(WIDTH - columns(words))).append(words));
    return this;
  }

  private void end(StringBuilder line) {
    text.append(line.toString().stripTrailing()).append('\n');
  }

  /** The words, with those cut that are wider than a line. */
  private static List<String> pieces(String words, int width) {
    List<String> pieces = new ArrayList<>();
    for (String word : words.strip().split("\\s+", -1)) {
      String rest = word;
      while (columns(rest) > width) {
        int cut = rest.offsetByCodePoints(0, width);
        pieces.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      pieces.add(rest);
    }
    return pieces;
  }

  private static int columns(CharSequence words) {
    return (int) words.codePoints().count();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
