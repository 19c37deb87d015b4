package trammel.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Comparison;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.quantity.Unit;
import trammel.read.QuantityWriter;

/** Quantities as a report prints them. */
final class Figures {
  /** Kept units to this many decimals in data: far below anything a workshop can measure. */
  private static final int DECIMALS = 6;

  private static final int DAYS_BETTER_SAID_IN_YEARS = 730;

  private Figures() {}

  /** With uncertainty, and in both units the trade uses: {@code 6.2 ± 3.4 mm (0.24 in)}. */
  static String text(Quantity quantity) {
    if (!quantity.isKnown()) {
      return QuantityWriter.value(quantity);
    }
    if (quantity.dimension() == Dimension.TIME && quantity.value() >= DAYS_BETTER_SAID_IN_YEARS) {
      double years = Unit.YEAR.fromKept(quantity.value());
      return BigDecimal.valueOf(years).setScale(1, RoundingMode.HALF_UP) + " years";
    }
    String value = QuantityWriter.value(quantity);
    if (quantity.value() == 0 && quantity.expanded() == 0) {
      return value;
    }
    String second = QuantityWriter.both(quantity).substring(value.length());
    return QuantityWriter.uncertain(quantity) + second;
  }

  /**
   * A value against its limit: {@code gap 6.2 ± 3.4 mm (0.24 in); wanted: at least 8 mm (0.31 in)}.
   *
   * @param said what was said before; a value that stands there is not told twice
   * @param written how a quantity is written
   */
  static String against(Comparison comparison, String said, Function<Quantity, String> written) {
    String value = written.apply(comparison.quantity());
    String limit =
        "wanted: " + comparison.sense().words() + " " + written.apply(comparison.limit());
    return said.contains(value) ? limit : named(comparison.quantity()) + " " + value + "; " + limit;
  }

  /** A share in percent, with its uncertainty: {@code 6.6 ± 0.5 %}. */
  static String percent(Quantity share) {
    if (!share.isKnown()) {
      return QuantityWriter.value(share);
    }
    int places = share.expanded() >= 0.01 || share.expanded() == 0 ? 1 : 2;
    BigDecimal value =
        BigDecimal.valueOf(Unit.PERCENT.fromKept(share.value()))
            .setScale(places, RoundingMode.HALF_UP);
    BigDecimal expanded =
        BigDecimal.valueOf(Unit.PERCENT.fromKept(share.expanded()))
            .setScale(places, RoundingMode.HALF_UP);
    String text = value.stripTrailingZeros().toPlainString();
    return share.expanded() == 0
        ? text + " %"
        : value.toPlainString() + " ± " + expanded.toPlainString() + " %";
  }

  static String named(Quantity quantity) {
    return quantity.name().isEmpty() ? "value" : quantity.name();
  }

  /** The number in its kept unit for data; null where absent. */
  static @Nullable Double number(Quantity quantity) {
    return quantity.isKnown() ? rounded(quantity.value()) : null;
  }

  /** The expanded uncertainty for data; null where the quantity is absent. */
  static @Nullable Double expanded(Quantity quantity) {
    return quantity.isKnown() ? rounded(quantity.expanded()) : null;
  }

  private static double rounded(double value) {
    double result =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).doubleValue();
    return result == 0 ? 0 : result;
  }

  /** A number to so many significant digits, in plain digits. */
  static String rounded(double number, int digits) {
    return new BigDecimal(number, new MathContext(digits, RoundingMode.HALF_EVEN))
        .stripTrailingZeros()
        .toPlainString();
  }
}
