package trammel.read;

import java.util.Locale;

/** What may stand in a file: nothing that a reader cannot see. */
final class Characters {
  static final int BYTE_ORDER_MARK = 0xFEFF;

  private Characters() {}

  /**
   * Whether a character is invisible, changes the direction of the text, or breaks the line where a
   * reader would not expect it. Tab and the usual line ends are not.
   */
  static boolean isHidden(int c) {
    if (c < 0x7F) {
      return c < ' ' && c != '\t' && c != '\n' && c != '\r';
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> isBlankLetter(c) || (c & 0xFFFE) == 0xFFFE;
    };
  }

  /** Letters and marks of no width or no ink, by their Unicode names. */
  private static boolean isBlankLetter(int c) {
    return switch (c) {
      case 0x034F, // combining grapheme joiner
          0x115F, // Hangul choseong filler
          0x1160, // Hangul jungseong filler
          0x17B4, // Khmer vowel inherent aq
          0x17B5, // Khmer vowel inherent aa
          0x2800, // braille pattern blank
          0x3164, // Hangul filler
          0xFFA0 -> // halfwidth Hangul filler
          true;
      default -> false;
    };
  }

  /** {@code U+202E}. */
  static String code(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }

  /** {@code U+202E (right-to-left override)}. */
  static String named(int c) {
    String name = Character.getName(c);
    return name == null ? code(c) : code(c) + " (" + name.toLowerCase(Locale.ROOT) + ")";
  }
}
