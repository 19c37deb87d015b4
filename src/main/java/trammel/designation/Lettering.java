package trammel.designation;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Text as it comes from keyboards and registers, brought to the plain capitals that the grammars
 * know; and numbers as they are stamped.
 */
final class Lettering {
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");

  /** Cyrillic and Greek capitals that look Latin: registers of several countries hold them. */
  private static final Map<Integer, String> LOOK_ALIKE = lookAlikes();

  private static final Map<Integer, String> SIGN =
      Map.ofEntries(
          Map.entry((int) '×', "X"),
          Map.entry((int) '✕', "X"),
          Map.entry((int) '‐', "-"),
          Map.entry((int) '‑', "-"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '−', "-"),
          Map.entry((int) '⁄', "/"),
          Map.entry((int) '″', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '½', ".5"),
          Map.entry((int) '¼', ".25"),
          Map.entry((int) '¾', ".75"));

  private Lettering() {}

  private static Map<Integer, String> lookAlikes() {
    String foreign = "АВЕКМНОРСТУХІЈЅΑΒΕΖΗΙΚΜΝΟΡΤΥΧ";
    String latin = "ABEKMHOPCTYXIJSABEZHIKMNOPTYX";
    Map<Integer, String> map = new java.util.HashMap<>();
    for (int i = 0; i < foreign.length(); i++) {
      map.put((int) foreign.charAt(i), latin.substring(i, i + 1));
    }
    return Map.copyOf(map);
  }

  /** Capitals, Latin letters, decimal points, single spaces. */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.toUpperCase(Locale.ROOT)
        .codePoints()
        .forEach(
            c -> {
              String sign = SIGN.getOrDefault(c, LOOK_ALIKE.get(c));
              if (sign == null) {
                plain.appendCodePoint(c);
              } else {
                plain.append(sign);
              }
            });
    String points = DECIMAL_COMMA.matcher(plain).replaceAll(".");
    return BLANKS.matcher(points).replaceAll(" ").strip();
  }

  /** The shortest decimal form, without exponent. */
  static String shortest(double value) {
    String text = BigDecimal.valueOf(value).toPlainString();
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** Two decimals, as inch widths are stamped. */
  static String twoDecimals(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
