package trammel.designation;

/**
 * The speed symbol of a tire, in order of speed: H stands between U and V, not after G.
 *
 * <p>F to V: French ministerial order of 24 October 1994 on tires, annex I; W and Y: tables of the
 * trade, common practice. The symbols below F are those of farm and plant tires and are left out,
 * so that a lone B, C, D or E can only be a load range.
 */
public enum SpeedSymbol {
  F(80),
  G(90),
  J(100),
  K(110),
  L(120),
  M(130),
  N(140),
  P(150),
  Q(160),
  R(170),
  S(180),
  T(190),
  U(200),
  H(210),
  V(240),
  W(270),
  Y(300);

  private final int kilometersPerHour;

  SpeedSymbol(int kilometersPerHour) {
    this.kilometersPerHour = kilometersPerHour;
  }

  /** Reads one letter. */
  public static SpeedSymbol parse(String text) {
    String plain = Lettering.plain(text);
    for (SpeedSymbol symbol : values()) {
      if (symbol.name().equals(plain)) {
        return symbol;
      }
    }
    throw Unreadable.found(
        Unreadable.quoted(text) + " as a speed symbol",
        "one of F G J K L M N P Q R S T U H V W Y",
        "Read the letter that stands after the load index; I, O, X and Z are none");
  }

  static boolean isOne(String letter) {
    for (SpeedSymbol symbol : values()) {
      if (symbol.name().equals(letter)) {
        return true;
      }
    }
    return false;
  }

  /** The highest speed it stands for (km/h). */
  public int kilometersPerHour() {
    return kilometersPerHour;
  }
}
