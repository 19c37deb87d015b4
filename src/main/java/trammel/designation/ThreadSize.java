package trammel.designation;

import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A thread by nominal diameter and pitch.
 *
 * @param series whether it is named in millimeters or in inches; equal numbers of different series
 *     are different threads
 * @param diameterMillimeters nominal diameter (mm)
 * @param pitchMillimeters advance of one turn (mm)
 */
public record ThreadSize(Series series, double diameterMillimeters, double pitchMillimeters) {
  private static final Pattern METRIC =
      Pattern.compile("M ?(?<diameter>\\d{1,2}(?:\\.\\d)?) ?X ?(?<pitch>\\d(?:\\.\\d{1,2})?)");
  private static final Pattern INCH =
      Pattern.compile(
          "(?<top>\\d{1,2}) ?/ ?(?<bottom>\\d{1,2})(?: ?IN| ?\")? ?- ?(?<turns>\\d{1,2})(?: ?UNF| ?UNC)?");
  private static final int SIXTY_FOURTHS = 64;

  /** The two ways of naming a thread. */
  public enum Series {
    METRIC,
    INCH
  }

  /** Throws {@link IllegalArgumentException} for a thread no stud has. */
  public ThreadSize {
    if (!(diameterMillimeters >= 4 && diameterMillimeters <= 50)) {
      throw refused("a diameter of " + Lettering.shortest(diameterMillimeters) + " mm");
    }
    if (!(pitchMillimeters >= 0.5 && pitchMillimeters < diameterMillimeters / 2)) {
      throw refused("a pitch of " + Lettering.shortest(pitchMillimeters) + " mm");
    }
    if (series == Series.INCH) {
      // Kept to the exact fraction, so that one thread is one value.
      diameterMillimeters =
          Inch.toMillimeters(sixtyFourths(diameterMillimeters) / (double) SIXTY_FOURTHS);
      pitchMillimeters = Inch.toMillimeters(1) / turnsPerInch(pitchMillimeters);
    }
  }

  /** Reads {@code M12x1.5}, {@code M14 x 1.5}, {@code 1/2-20} or {@code 9/16-18 UNF}. */
  public static ThreadSize parse(String text) {
    String plain = Lettering.plain(text);
    Matcher metric = METRIC.matcher(plain);
    if (metric.matches()) {
      return new ThreadSize(
          Series.METRIC,
          Double.parseDouble(metric.group("diameter")),
          Double.parseDouble(metric.group("pitch")));
    }
    Matcher inch = INCH.matcher(plain);
    if (inch.matches()) {
      return inch(
          Integer.parseInt(inch.group("top")),
          Integer.parseInt(inch.group("bottom")),
          Integer.parseInt(inch.group("turns")));
    }
    throw refused(Unreadable.quoted(text));
  }

  private static ThreadSize inch(int top, int bottom, int turns) {
    if (bottom == 0 || SIXTY_FOURTHS % bottom != 0 || turns == 0) {
      throw refused(Unreadable.quoted(top + "/" + bottom + "-" + turns));
    }
    return new ThreadSize(
        Series.INCH, Inch.toMillimeters((double) top / bottom), Inch.toMillimeters(1) / turns);
  }

  private static IllegalArgumentException refused(String found) {
    return Unreadable.found(
        found + " as a thread",
        "diameter and pitch, for example M14x1.5 or 1/2-20",
        "Measure the pitch too: threads of one diameter with different pitch do not hold");
  }

  private static long sixtyFourths(double millimeters) {
    return Math.round(Inch.fromMillimeters(millimeters) * SIXTY_FOURTHS);
  }

  private static long turnsPerInch(double pitch) {
    return Math.round(Inch.toMillimeters(1) / pitch);
  }

  @Override
  public String toString() {
    if (series == Series.METRIC) {
      return "M"
          + Lettering.shortest(diameterMillimeters)
          + "x"
          + Lettering.shortest(pitchMillimeters);
    }
    long top = sixtyFourths(diameterMillimeters);
    long common = BigInteger.valueOf(top).gcd(BigInteger.valueOf(SIXTY_FOURTHS)).longValueExact();
    return top / common + "/" + SIXTY_FOURTHS / common + "-" + turnsPerInch(pitchMillimeters);
  }
}
