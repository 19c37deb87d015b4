package trammel.designation;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Nominal diameter and width of a rim, and the letter of its flange.
 *
 * @param code nominal diameter
 * @param widthInches nominal width between the flanges (in), 3 to 20, in quarters
 * @param flange the flange letter, if stamped
 */
public record RimSize(RimCode code, double widthInches, Optional<String> flange) {
  private static final String NUMBER = "\\d{1,2}(?:\\.\\d{1,2}| [13]/[24])?";
  private static final Pattern TEXT =
      Pattern.compile(
          "(?<first>"
              + NUMBER
              + ") ?(?<firstFlange>[A-Z]{1,2}?)? ?X ?(?<second>"
              + NUMBER
              + ") ?(?<secondFlange>[A-Z]{1,2})?");

  /** Flange letters in use on road rims: common practice. */
  private static final Set<String> FLANGES =
      Set.of("B", "C", "D", "E", "F", "G", "J", "JJ", "JK", "K", "L");

  /** Throws {@link IllegalArgumentException} for a rim that is not made. */
  public RimSize {
    if (!(widthInches >= 3 && widthInches <= 20) || widthInches * 4 != Math.rint(widthInches * 4)) {
      throw refused("a rim width of " + Lettering.shortest(widthInches));
    }
    flange.ifPresent(
        letter -> {
          if (!FLANGES.contains(letter)) {
            throw refused("flange letter " + Unreadable.quoted(letter));
          }
        });
  }

  /**
   * Reads {@code 17x8.5J}, {@code 17 x 8.5}, {@code 8.5Jx17} or {@code 8½ J × 17}. The larger
   * number is the diameter; a flange letter stands behind the width.
   */
  public static RimSize parse(String text) {
    Matcher matcher = TEXT.matcher(Lettering.plain(text));
    if (!matcher.matches()) {
      throw refused(Unreadable.quoted(text));
    }
    double first = number(matcher.group("first"));
    double second = number(matcher.group("second"));
    boolean diameterFirst = first >= second;
    String flange = matcher.group(diameterFirst ? "secondFlange" : "firstFlange");
    String misplaced = matcher.group(diameterFirst ? "firstFlange" : "secondFlange");
    if (isStamped(misplaced)) {
      throw refused("a flange letter behind the diameter in " + Unreadable.quoted(text));
    }
    return new RimSize(
        new RimCode(diameterFirst ? first : second),
        diameterFirst ? second : first,
        isStamped(flange) ? Optional.of(flange) : Optional.empty());
  }

  private static boolean isStamped(@Nullable String flange) {
    return flange != null && !flange.isEmpty();
  }

  private static double number(String text) {
    String[] parts = text.split("[ /]", -1);
    double whole = Double.parseDouble(parts[0]);
    return parts.length == 1
        ? whole
        : whole + Double.parseDouble(parts[1]) / Double.parseDouble(parts[2]);
  }

  private static IllegalArgumentException refused(String found) {
    return Unreadable.found(
        found + " as a rim",
        "diameter x width in inches and a flange letter, for example 17x8.5J or 8.5Jx17",
        "Write the offset separately, and leave hump marks out");
  }

  /** The width between the flanges (mm). */
  public double widthMillimeters() {
    return Inch.toMillimeters(widthInches);
  }

  @Override
  public String toString() {
    return code + "x" + Lettering.shortest(widthInches) + flange.orElse("");
  }
}
