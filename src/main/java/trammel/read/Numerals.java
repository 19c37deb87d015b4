package trammel.read;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Steps through a text that holds numbers and units.
 *
 * <p>Typographic variants are folded first: no-break and thin spaces, the minus sign, the fraction
 * slash and the one-character fractions.
 */
final class Numerals {
  private static final Map<Character, String> FRACTIONS =
      Map.of('½', "1/2", '¼', "1/4", '¾', "3/4", '⅛', "1/8", '⅜', "3/8", '⅝', "5/8", '⅞', "7/8");

  private static final Pattern SPACES = Pattern.compile(" +");

  private final String text;
  private int at;

  Numerals(String text) {
    this.text = text;
  }

  /** The text with one way to write each thing. */
  static String fold(String text) {
    StringBuilder folded = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      String fraction = FRACTIONS.get(c);
      if (fraction != null) {
        boolean mixed = i > 0 && isDigit(text.charAt(i - 1));
        boolean followed = i + 1 < text.length() && isDigit(text.charAt(i + 1));
        // Apart from a digit that follows, or ½1 would read as 1/21.
        folded.append(mixed ? " " : "").append(fraction).append(followed ? " " : "");
      } else if (Character.isSpaceChar(c) || c == '\n') {
        folded.append(' ');
      } else if (c == '−') {
        folded.append('-');
      } else {
        folded.append(c == '⁄' ? '/' : c);
      }
    }
    return folded.toString().replace("+/-", "±").replace("+-", "±").strip();
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  boolean atEnd() {
    skipSpaces();
    return at == text.length();
  }

  /** Whether a number begins here, whatever follows it. */
  boolean atNumber() {
    skipSpaces();
    return isDigit(peek(0)) || (peek(0) == '.' && isDigit(peek(1)));
  }

  private char peek(int ahead) {
    return at + ahead < text.length() ? text.charAt(at + ahead) : 0;
  }

  private void skipSpaces() {
    while (peek(0) == ' ') {
      at++;
    }
  }

  /** Reads a sign, if there is one: −1 or 1. */
  int sign() {
    skipSpaces();
    char c = peek(0);
    if (c == '-' || c == '+') {
      at++;
      return c == '-' ? -1 : 1;
    }
    return 1;
  }

  /**
   * Reads a number without sign: {@code 12}, {@code 12.5}, {@code .5}, {@code 1/2}, {@code 2 1/2}.
   *
   * @throws Refusal for a comma, for thousands set apart, and for anything else
   */
  double number() {
    int start = at;
    String digits = digits();
    if (peek(0) == '.' && isDigit(peek(1))) {
      at++;
      digits();
      refuseSeparators(start);
      return Double.parseDouble("0" + text.substring(start, at));
    }
    refuseSeparators(start);
    if (peek(0) == '/' && isDigit(peek(1))) {
      return fraction(Double.parseDouble(digits));
    }
    double whole = Double.parseDouble(digits);
    int end = at;
    skipSpaces();
    if (at > end && isDigit(peek(0))) {
      String above = digits();
      if (peek(0) == '/' && isDigit(peek(1))) {
        return whole + fraction(Double.parseDouble(above));
      }
      throw separated(text.substring(start, at));
    }
    at = end;
    return whole;
  }

  private double fraction(double above) {
    at++;
    double below = Double.parseDouble(digits());
    if (below == 0) {
      throw new Refusal(
          Words.quoted(text) + " divides by zero; expected a fraction such as 1/2",
          "Correct the fraction.");
    }
    return above / below;
  }

  private String digits() {
    int start = at;
    while (isDigit(peek(0))) {
      at++;
    }
    return text.substring(start, at);
  }

  private void refuseSeparators(int start) {
    char c = peek(0);
    if (c == ',' && isDigit(peek(1))) {
      throw comma(start);
    }
    boolean apostrophe = (c == '\'' || c == '’') && digitsAfter() == 3;
    boolean secondPoint = c == '.' && isDigit(peek(1));
    if (isDigit(peek(1)) && (c == '_' || apostrophe || secondPoint)) {
      at++;
      digits();
      throw separated(text.substring(start, at));
    }
  }

  private int digitsAfter() {
    int count = 0;
    while (isDigit(peek(1 + count))) {
      count++;
    }
    return count;
  }

  private Refusal comma(int start) {
    String before = text.substring(start, at);
    boolean thousands = digitsAfter() == 3;
    at++;
    String after = digits();
    String advice =
        thousands
            ? "Write "
                + before
                + after
                + " if thousands are meant, "
                + before
                + "."
                + after
                + " if not."
            : "Write " + before + "." + after + ".";
    return new Refusal(
        Words.quoted(text) + " has a comma in a number; expected a decimal point", advice);
  }

  private Refusal separated(String number) {
    return new Refusal(
        Words.quoted(text) + " has a number in groups; expected digits without separators",
        "Write " + number.replaceAll("[^0-9]", "") + " for " + number + ".");
  }

  /** Reads what stands before the next number or the end: the name of a unit, perhaps empty. */
  String unit() {
    skipSpaces();
    int start = at;
    while (at < text.length() && !isDigit(peek(0)) && !(peek(0) == '.' && isDigit(peek(1)))) {
      at++;
    }
    return SPACES.matcher(text.substring(start, at).strip()).replaceAll(" ");
  }
}
