package trammel.designation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Number of studs and diameter of the circle they stand on.
 *
 * @param count number of studs, 3 to 10
 * @param circleMillimeters diameter of the bolt circle (mm), kept to 0.01 mm, 60 to 400
 */
public record BoltPattern(int count, double circleMillimeters) {
  private static final Pattern TEXT =
      Pattern.compile(
          "(?<count>\\d{1,2}) ?X ?(?<circle>\\d{1,3}(?:\\.\\d{1,3})?) ?(?<unit>MM|IN|\")?");
  private static final String EXPECTED =
      "number of studs x bolt circle, for example 6x139.7 or 5 x 4.5 in";

  /** Differences up to this (hundredths of a mm) come from rounding: 120.65 is sold as 120.7. */
  private static final long ROUNDING = 5;

  /** Up to here (hundredths of a mm) two circles are taken for each other in the trade. */
  private static final long MISTAKABLE = 200;

  /** Throws {@link IllegalArgumentException} for a pattern no wheel has. */
  public BoltPattern {
    if (count < 3 || count > 10) {
      throw Unreadable.found(count + " studs", "3 to 10", "Write " + EXPECTED);
    }
    if (!(circleMillimeters >= 60 && circleMillimeters <= 400)) {
      throw Unreadable.found(
          "a bolt circle of " + Lettering.shortest(circleMillimeters) + " mm",
          "60 to 400 mm",
          "Write the unit behind it if it is in inches: 5 x 4.5 in");
    }
    circleMillimeters = Math.round(circleMillimeters * 100) / 100.0;
  }

  /** Reads {@code 6x139.7}, {@code 6 x 139.7 mm} or {@code 5x4.5 in}; without unit in mm. */
  public static BoltPattern parse(String text) {
    Matcher matcher = TEXT.matcher(Lettering.plain(text));
    if (!matcher.matches()) {
      throw Unreadable.found(
          Unreadable.quoted(text) + " as a bolt pattern",
          EXPECTED,
          "Where two circles are drilled, write the one that will be used");
    }
    double circle = Double.parseDouble(matcher.group("circle"));
    return new BoltPattern(
        Integer.parseInt(matcher.group("count")),
        isInches(matcher.group("unit")) ? Inch.toMillimeters(circle) : circle);
  }

  private static boolean isInches(@Nullable String unit) {
    return unit != null && !unit.equals("MM");
  }

  /** The same pattern, but for the rounding of a name (0.05 mm). */
  public boolean matches(BoltPattern other) {
    return count == other.count && hundredthsFrom(other) <= ROUNDING;
  }

  /**
   * The same number of studs on a circle that is different but close enough to be mistaken: more
   * than 0.05 and at most 2 mm, such as 114.3 and 115. It must never be fitted.
   */
  public boolean nearMiss(BoltPattern other) {
    long difference = hundredthsFrom(other);
    return count == other.count && difference > ROUNDING && difference <= MISTAKABLE;
  }

  private long hundredthsFrom(BoltPattern other) {
    return Math.abs(Math.round((circleMillimeters - other.circleMillimeters) * 100));
  }

  @Override
  public String toString() {
    return count + "x" + Lettering.shortest(circleMillimeters);
  }
}
