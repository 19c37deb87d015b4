package trammel.designation;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The load range of a tire, or what is the same, its ply rating.
 *
 * <p>The letter does not fix the pressure: large flotation sizes of one letter are rated at a lower
 * one, so the sidewall decides and {@link #ltReferencePressure()} is a usual value. Letters, ply
 * ratings and pressures: tire makers' tables, common practice.
 */
public enum LoadRange {
  A(2, Double.NaN),
  B(4, 35),
  C(6, 50),
  D(8, 65),
  E(10, 80),
  F(12, 95),
  G(14, Double.NaN),
  H(16, Double.NaN),
  J(18, Double.NaN),
  L(20, Double.NaN),
  M(22, Double.NaN),
  N(24, Double.NaN);

  private static final Pattern TEXT =
      Pattern.compile("(?:LR|LOAD RANGE)? ?(?<letter>[A-Z])|(?<ply>\\d{1,2}) ?(?:PR|PLY)");

  /** NIST SP 811 (2008), appendix B: 1 psi in kPa. */
  private static final double KILOPASCALS_PER_PSI = 4.4482216152605 / (25.4 * 25.4) * 1000;

  private final int plyRating;
  private final double psi;

  LoadRange(int plyRating, double psi) {
    this.plyRating = plyRating;
    this.psi = psi;
  }

  /** Reads {@code E}, {@code LRE}, {@code Load Range E} or {@code 10PR}. */
  public static LoadRange parse(String text) {
    Matcher matcher = TEXT.matcher(Lettering.plain(text));
    if (matcher.matches()) {
      String ply = matcher.group("ply");
      for (LoadRange range : values()) {
        if (ply == null
            ? range.name().equals(matcher.group("letter"))
            : range.plyRating == Integer.parseInt(ply)) {
          return range;
        }
      }
    }
    throw Unreadable.found(
        Unreadable.quoted(text) + " as a load range",
        "one of A B C D E F G H J L M N, or an even ply rating from 2PR to 24PR",
        "Read it beside the size; I, K and O are no load ranges");
  }

  static boolean isOne(String letter) {
    for (LoadRange range : values()) {
      if (range.name().equals(letter)) {
        return true;
      }
    }
    return false;
  }

  /** The ply rating: a measure of strength, no count of plies. */
  public int plyRating() {
    return plyRating;
  }

  /**
   * The usual cold pressure (kPa) at which an LT tire of this range carries its rated load; empty
   * where no figure is at hand.
   */
  public OptionalDouble ltReferencePressure() {
    return Double.isNaN(psi)
        ? OptionalDouble.empty()
        : OptionalDouble.of(psi * KILOPASCALS_PER_PSI);
  }
}
