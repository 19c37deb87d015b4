package trammel.designation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The nominal diameter of a rim in whole inches, or with one half for rims with a 15° taper.
 *
 * @param code the code as stamped: 10 to 30, or 16.5, 17.5, 19.5, 22.5
 */
public record RimCode(double code) {
  private static final List<Double> TAPERED = List.of(16.5, 17.5, 19.5, 22.5);
  private static final BigDecimal MILLIMETERS_PER_INCH = new BigDecimal("25.4");

  /** Throws {@link IllegalArgumentException} for a code that is not in {@link #validCodes()}. */
  public RimCode {
    boolean whole = code >= 10 && code <= 30 && code == Math.rint(code);
    if (!whole && !TAPERED.contains(code)) {
      throw refused(Unreadable.quoted(Lettering.shortest(code)));
    }
  }

  /** Reads {@code 17} or {@code 17.5}. */
  public static RimCode parse(String text) {
    String plain = Lettering.plain(text);
    if (!plain.matches("\\d{2}(\\.\\d)?")) {
      throw refused(Unreadable.quoted(text));
    }
    return new RimCode(Double.parseDouble(plain));
  }

  private static IllegalArgumentException refused(String found) {
    return Unreadable.found(
        found + " as a rim code",
        "10 to 30 in whole inches, or 16.5, 17.5, 19.5 or 22.5",
        "Read the number that stands after the construction letter on the sidewall");
  }

  /** Every code there is, in order. */
  public static List<RimCode> validCodes() {
    return DoubleStream.concat(
            IntStream.rangeClosed(10, 30).asDoubleStream(),
            TAPERED.stream().mapToDouble(Double::doubleValue))
        .sorted()
        .mapToObj(RimCode::new)
        .toList();
  }

  /**
   * The rim diameter to whole millimeters (mm): code × 25.4, halves up, the rule of the tire
   * standards. 17.5 gives 445, which rounding to even would miss.
   */
  public int millimeters() {
    return BigDecimal.valueOf(code)
        .multiply(MILLIMETERS_PER_INCH)
        .setScale(0, RoundingMode.HALF_UP)
        .intValueExact();
  }

  /** The rim diameter before rounding (mm): code × 25.4. */
  public double exactMillimeters() {
    return BigDecimal.valueOf(code).multiply(MILLIMETERS_PER_INCH).doubleValue();
  }

  /** A rim whose bead seats slope by 15° instead of 5°: the codes with one half. */
  public boolean isTapered() {
    return TAPERED.contains(code);
  }

  @Override
  public String toString() {
    return Lettering.shortest(code);
  }
}
