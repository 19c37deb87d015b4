package trammel.designation;

import java.util.regex.Pattern;

/** How the carcass is built, as the size says it. */
public enum Construction {
  RADIAL("R"),
  /** Radial, with the letter Z in the size: above 240 km/h. */
  RADIAL_Z("ZR"),
  RADIAL_RUN_FLAT("RF"),
  /** Diagonal: D, or a hyphen between inch sizes. */
  DIAGONAL("D"),
  BIAS_BELTED("B");

  /** With a speed letter before it, as sizes were stamped before the service description. */
  static final Pattern PATTERN =
      Pattern.compile("(?:(?<speed>[A-Z]) ?)?(?<construction>RF|R|D|B|-)(?= ?\\d)");

  private final String letters;

  Construction(String letters) {
    this.letters = letters;
  }

  /** Reads {@code R}, {@code ZR}, {@code RF}, {@code D}, {@code -} or {@code B}. */
  public static Construction parse(String text) {
    String plain = Lettering.plain(text);
    if (plain.equals("-")) {
      return DIAGONAL;
    }
    for (Construction construction : values()) {
      if (construction.letters.equals(plain)) {
        return construction;
      }
    }
    throw Unreadable.found(
        Unreadable.quoted(text) + " as a construction",
        "R, ZR, RF, D, B or a hyphen",
        "Read the letter before the rim code");
  }

  @Override
  public String toString() {
    return letters;
  }
}
