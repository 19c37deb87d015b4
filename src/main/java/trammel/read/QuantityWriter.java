package trammel.read;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.quantity.Unit;

/**
 * From a quantity to text, the same in every language of the machine.
 *
 * <p>Digits follow the uncertainty: its second significant digit is the last that is shown (JCGM
 * 100:2008, 7.2.6), and none finer than the trade can use.
 */
public final class QuantityWriter {
  private static final MathContext SHORTEST = new MathContext(12, RoundingMode.HALF_EVEN);

  private QuantityWriter() {}

  /** The value alone: {@code 815 mm}. Says so where it is absent. */
  public static String value(Quantity quantity) {
    return quantity.isKnown()
        ? withUnit(number(rounded(quantity)), quantity.dimension().unit())
        : notKnown(quantity);
  }

  /** The value with its expanded uncertainty, k = 2: {@code 6.2 ± 3.4 mm}. */
  public static String uncertain(Quantity quantity) {
    if (!quantity.isKnown()) {
      return notKnown(quantity);
    }
    if (quantity.expanded() == 0) {
      return value(quantity);
    }
    int places = places(quantity.dimension().unit(), quantity.expanded(), 2);
    BigDecimal value = round(quantity.value(), places);
    BigDecimal expanded = round(quantity.expanded(), places);
    if (expanded.signum() == 0) {
      expanded = BigDecimal.ONE.movePointLeft(places);
    }
    while (places > 0 && endsInZero(value) && endsInZero(expanded)) {
      places--;
      value = value.setScale(places, RoundingMode.UNNECESSARY);
      expanded = expanded.setScale(places, RoundingMode.UNNECESSARY);
    }
    return withUnit(
        value.toPlainString() + " ± " + expanded.toPlainString(), quantity.dimension().unit());
  }

  /** The value in both units the trade uses: {@code 815 mm (32.1 in)}. */
  public static String both(Quantity quantity) {
    return quantity.isKnown() ? value(quantity) + second(quantity) : notKnown(quantity);
  }

  private static String second(Quantity quantity) {
    return quantity
        .dimension()
        .second()
        .map(
            unit -> {
              double expanded = unit.fromKept(quantity.expanded());
              BigDecimal value = round(unit.fromKept(quantity.value()), places(unit, expanded, 1));
              return " (" + withUnit(number(value), unit) + ")";
            })
        .orElse("");
  }

  /**
   * Every digit, so that {@link QuantityReader} reads back the same: {@code 815.25 mm ± 4 mm}.
   *
   * @throws IllegalStateException if the quantity is absent
   */
  public static String exact(Quantity quantity) {
    Unit unit = quantity.dimension().unit();
    return withUnit(all(quantity.value()), unit) + " ± " + withUnit(all(quantity.expanded()), unit);
  }

  private static String all(double value) {
    return number(new BigDecimal(Double.toString(value)));
  }

  private static String notKnown(Quantity quantity) {
    return quantity.absence() == null ? "" : "not known (" + quantity.absence().reason() + ")";
  }

  /** A number with its unit, set apart as the unit is usually written. */
  static String withUnit(String number, Unit unit) {
    String symbol = unit.symbol();
    boolean close = symbol.isEmpty() || unit == Unit.DEGREE || unit == Unit.MINUTE;
    return close ? number + symbol : number + " " + symbol;
  }

  /** A kept value with its unit, in no more digits than it has: {@code 0.82 mm}. */
  public static String shortest(Dimension dimension, double kept) {
    return withUnit(digits(kept), dimension.unit());
  }

  /** A kept value in a unit, in no more digits than it has: {@code 880 bar}. */
  public static String shortest(Unit unit, double kept) {
    return withUnit(digits(unit.fromKept(kept)), unit);
  }

  /** A kept value in a unit, in so many significant digits. */
  public static String rough(Unit unit, double kept, int significant) {
    BigDecimal number =
        new BigDecimal(unit.fromKept(kept))
            .round(new MathContext(significant, RoundingMode.HALF_UP));
    return withUnit(number(number), unit);
  }

  /** A number without the noise that a change of unit leaves in its last digits. */
  static String digits(double number) {
    return number(new BigDecimal(number, SHORTEST));
  }

  private static BigDecimal rounded(Quantity quantity) {
    return round(quantity.value(), places(quantity.dimension().unit(), quantity.expanded(), 2));
  }

  private static BigDecimal round(double value, int places) {
    return new BigDecimal(Double.toString(value)).setScale(places, RoundingMode.HALF_UP);
  }

  /** Decimal places that an uncertainty of so many significant digits leaves. */
  private static int places(Unit unit, double expanded, int significant) {
    int finest = finest(unit);
    if (expanded == 0) {
      return finest;
    }
    int first = (int) Math.floor(Math.log10(expanded));
    return Math.min(finest, significant - 1 - first);
  }

  /** The last decimal place that can matter in a workshop; common practice. */
  private static int finest(Unit unit) {
    return switch (unit) {
      case FOOT -> 3;
      case INCH, DEGREE, PERCENT, METER -> 2;
      case ONE -> 3;
      case NEWTON, KILOPASCAL, DAY, MINUTE -> 0;
      default -> 1;
    };
  }

  private static boolean endsInZero(BigDecimal number) {
    return number.unscaledValue().mod(java.math.BigInteger.TEN).signum() == 0;
  }

  /** Plain digits without a tail of zeros, and never a negative zero. */
  private static String number(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
