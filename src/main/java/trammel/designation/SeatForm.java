package trammel.designation;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The form in which a nut or bolt meets the wheel. Nut and wheel must have the same.
 *
 * @param kind cone, ball, flat or shank
 * @param measure the included angle of a cone (degrees) or the radius of a ball (mm); 0 for flat
 *     and shank
 */
public record SeatForm(Kind kind, int measure) {
  private static final Pattern TEXT =
      Pattern.compile(
          "(?<kind>CONE|BALL|FLAT|SHANK)(?: ?(?<radius>R)? ?(?<measure>\\d{1,2}) ?°?)?");
  private static final Set<Integer> CONES = Set.of(60, 80, 90);

  /** The families of seats. */
  public enum Kind {
    CONE,
    BALL,
    FLAT,
    /** A straight shank in the hole, with a washer. */
    SHANK
  }

  /** Throws {@link IllegalArgumentException} for a seat that is not made. */
  public SeatForm {
    boolean made =
        switch (kind) {
          case CONE -> CONES.contains(measure);
          case BALL -> measure >= 10 && measure <= 20;
          case FLAT, SHANK -> measure == 0;
        };
    if (!made) {
      throw refused(Unreadable.quoted(spelled(kind, measure)));
    }
  }

  /** Reads {@code cone 60}, {@code ball R13}, {@code flat} or {@code shank}. */
  public static SeatForm parse(String text) {
    Matcher matcher = TEXT.matcher(Lettering.plain(text));
    if (!matcher.matches()) {
      throw refused(Unreadable.quoted(text));
    }
    Kind kind = Kind.valueOf(matcher.group("kind"));
    String measure = matcher.group("measure");
    if (kind != Kind.BALL && matcher.group("radius") != null) {
      throw refused(Unreadable.quoted(text));
    }
    return new SeatForm(kind, measure == null ? 0 : Integer.parseInt(measure));
  }

  private static IllegalArgumentException refused(String found) {
    return Unreadable.found(
        found + " as a seat",
        "cone 60, cone 80, cone 90, ball R10 to ball R20, flat or shank",
        "Look into the wheel's hole: a cone has straight walls, a ball seat is hollow round");
  }

  private static String spelled(Kind kind, int measure) {
    return switch (kind) {
      case CONE -> "cone " + measure;
      case BALL -> "ball R" + measure;
      case FLAT -> measure == 0 ? "flat" : "flat " + measure;
      case SHANK -> measure == 0 ? "shank" : "shank " + measure;
    };
  }

  @Override
  public String toString() {
    return spelled(kind, measure);
  }
}
