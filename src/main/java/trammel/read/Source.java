package trammel.read;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The text of one file, by line. */
final class Source {
  private static final String SAVE_AS = "Save the file as UTF-8.";
  private static final int ALSO = 5;

  private final String file;
  private final String text;
  private final List<String> lines;

  /** Only where some character takes two chars, so that indexes in code points differ. */
  private final int @Nullable [] points;

  private Source(String file, String text, List<String> lines) {
    this.file = file;
    this.text = text;
    this.lines = lines;
    boolean plain = text.codePointCount(0, text.length()) == text.length();
    this.points = plain ? null : text.codePoints().toArray();
  }

  String file() {
    return file;
  }

  String text() {
    return text;
  }

  /** Reads bytes as UTF-8, and refuses what a reader could not see. */
  static Optional<Source> of(String file, byte[] bytes, Problems problems) {
    String wide = wideEncoding(bytes);
    if (wide != null) {
      problems.add(Place.of(file), "this file is " + wide + "; expected UTF-8", SAVE_AS);
      return Optional.empty();
    }
    int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    boolean refused = decoder.decode(in, out, true).isError();
    Source source = split(file, out.flip().toString());
    if (refused) {
      source.refuseByte(bytes, in.position(), problems);
      return Optional.empty();
    }
    int before = problems.count();
    source.refuseHidden(problems);
    source.refuseTabs(problems);
    return problems.count() > before ? Optional.empty() : Optional.of(source);
  }

  private static Source split(String file, String text) {
    List<String> lines = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r') {
        lines.add(text.substring(start, i));
        if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
          i++;
        }
        start = i + 1;
      }
    }
    lines.add(text.substring(start));
    return new Source(file, text, lines);
  }

  private static @Nullable String wideEncoding(byte[] bytes) {
    if (startsWith(bytes, 0xFF, 0xFE, 0, 0) || startsWith(bytes, 0, 0, 0xFE, 0xFF)) {
      return "UTF-32";
    }
    if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
      return "UTF-16";
    }
    boolean begun = bytes.length >= 2;
    return begun && (bytes[0] == 0) != (bytes[1] == 0) ? "UTF-16 or UTF-32" : null;
  }

  private static boolean startsWith(byte[] bytes, int... first) {
    if (bytes.length < first.length) {
      return false;
    }
    for (int i = 0; i < first.length; i++) {
      if (bytes[i] != (byte) first[i]) {
        return false;
      }
    }
    return true;
  }

  private void refuseByte(byte[] bytes, int at, Problems problems) {
    String last = lines.get(lines.size() - 1);
    problems.add(
        new Place(file, lines.size(), last.codePointCount(0, last.length()) + 1),
        String.format(
            Locale.ROOT,
            "byte %d of the file, 0x%02X, is not UTF-8; expected UTF-8 text",
            at + 1,
            bytes[at]),
        SAVE_AS + " It may be Latin-1 or Windows-1252 now.");
  }

  private void refuseHidden(Problems problems) {
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      int column = 1;
      for (int at = 0; at < line.length(); column++) {
        int c = line.codePointAt(at);
        if (Characters.isHidden(c)) {
          refuseHidden(new Place(file, i + 1, column), c, problems);
        }
        at += Character.charCount(c);
      }
    }
  }

  static void refuseHidden(Place place, int c, Problems problems) {
    problems.add(
        place,
        "the hidden character " + Characters.named(c) + "; expected visible text",
        "Delete it; typing the line anew is the surest way.");
  }

  /** One problem for all lines, since one habit of one editor makes them all. */
  private void refuseTabs(Problems problems) {
    int[] tabbed = new int[lines.size()];
    int count = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (tabInIndentation(lines.get(i)) >= 0) {
        tabbed[count++] = i + 1;
      }
    }
    if (count == 0) {
      return;
    }
    String also = "";
    if (count > 1) {
      List<String> others =
          Arrays.stream(tabbed, 1, Math.min(count, ALSO + 1)).mapToObj(String::valueOf).toList();
      also = " (also in line " + String.join(", ", others) + (count > ALSO + 1 ? ", …)" : ")");
    }
    problems.add(
        new Place(file, tabbed[0], tabInIndentation(lines.get(tabbed[0] - 1)) + 1),
        "a tab in the indentation" + also + "; expected spaces",
        "Replace each tab by two spaces.");
  }

  private static int tabInIndentation(String line) {
    for (int i = 0; i < line.length(); i++) {
      if (line.charAt(i) == '\t') {
        return i;
      }
      if (line.charAt(i) != ' ') {
        return -1;
      }
    }
    return -1;
  }

  /** The character (code point) at an index counted in code points; 0 at the end. */
  int codePoint(long index) {
    if (points != null) {
      return index >= 0 && index < points.length ? points[(int) index] : 0;
    }
    return index >= 0 && index < text.length() ? text.charAt((int) index) : 0;
  }

  int lineCount() {
    return lines.size();
  }

  /** A line, or nothing past the end. */
  String line(int line) {
    return line < 1 || line > lines.size() ? "" : lines.get(line - 1);
  }
}
