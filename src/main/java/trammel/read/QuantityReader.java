package trammel.read;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trammel.quantity.Dimension;
import trammel.quantity.Unit;

/**
 * From text to a value with its unit and uncertainty.
 *
 * <p>{@code [sign] number unit [± number [unit or %]]}, where a number is decimal ({@code 33.5},
 * {@code .5}) or a fraction ({@code 1/2}, {@code 2 1/2}); degrees and minutes, and feet and inches,
 * may stand together ({@code 2° 15'}). The sign before the first number holds for both. {@code ±}
 * may be written {@code +-} or {@code +/-}; without a unit it has the value's. A ratio needs no
 * unit. A percentage after ± is of the value, except that a value in percent takes it as points:
 * {@code 4 % ± 1 %} is between 3 % and 5 %.
 */
public final class QuantityReader {
  private static final String PLUS_MINUS = "±";

  private QuantityReader() {}

  /**
   * Reads a value of a known dimension.
   *
   * @throws IllegalArgumentException if the text is no such value; the message's first line says
   *     what was found and expected, its second line gives advice
   */
  public static Reading parse(String text, Dimension dimension) {
    String folded = Numerals.fold(text);
    int split = folded.indexOf(PLUS_MINUS);
    if (split < 0) {
      Side value = side(folded, folded, dimension);
      return new Reading(value.kept(), OptionalDouble.empty(), value.unit());
    }
    Side value = side(folded.substring(0, split), folded, dimension);
    double expanded = expanded(folded.substring(split + 1), folded, value, dimension);
    if (!Double.isFinite(expanded)) {
      throw noQuantity(folded, dimension);
    }
    return new Reading(value.kept(), OptionalDouble.of(expanded), value.unit());
  }

  private record Side(double kept, Unit unit) {}

  private static Side side(String part, String whole, Dimension dimension) {
    Numerals numerals = new Numerals(part);
    int sign = numerals.sign();
    if (!numerals.atNumber()) {
      throw noQuantity(whole, dimension);
    }
    double number = numerals.number();
    Unit unit = unit(numerals.unit(), whole, dimension);
    double kept = unit.toKept(number);
    if (!numerals.atEnd()) {
      double second = numerals.number();
      Unit smaller = unit(numerals.unit(), whole, dimension);
      boolean pair =
          (unit == Unit.DEGREE && smaller == Unit.MINUTE)
              || (unit == Unit.FOOT && smaller == Unit.INCH);
      if (!pair || !numerals.atEnd()) {
        throw noQuantity(whole, dimension);
      }
      kept += smaller.toKept(second);
    }
    if (!Double.isFinite(kept)) {
      throw noQuantity(whole, dimension);
    }
    return new Side(sign * kept, unit);
  }

  private static double expanded(String part, String whole, Side value, Dimension dimension) {
    Numerals numerals = new Numerals(part);
    if (!numerals.atNumber()) {
      throw new Refusal(
          Words.quoted(whole) + " has no number after ±; expected one without a sign",
          "Write for example \"± 2\" or \"± 1 %\".");
    }
    double number = numerals.number();
    String name = numerals.unit();
    if (!numerals.atEnd()) {
      throw noQuantity(whole, dimension);
    }
    if (name.isEmpty()) {
      return value.unit().toKept(number);
    }
    if (name.equals(Unit.PERCENT.symbol()) && value.unit() != Unit.PERCENT) {
      return Unit.PERCENT.toKept(number) * Math.abs(value.kept());
    }
    return unit(name, whole, dimension).toKept(number);
  }

  private static Unit unit(String name, String whole, Dimension dimension) {
    Unit unit = Unit.named(name).orElse(null);
    if (unit != null && unit.dimension() == dimension) {
      return unit;
    }
    if (name.isEmpty()) {
      throw new Refusal(
          Words.quoted(whole) + " needs a unit; expected " + expected(dimension),
          write(example(whole, dimension)));
    }
    if (unit == null) {
      throw new Refusal(
          "unknown unit "
              + Words.quoted(name)
              + " in "
              + Words.quoted(whole)
              + "; expected "
              + expected(dimension),
          Words.didYouMean(name, nearNames(name, dimension), write(example("12", dimension))));
    }
    throw new Refusal(
        Words.quoted(whole)
            + " is "
            + Words.withArticle(unit.dimension().words())
            + "; expected "
            + expected(dimension),
        write(example("12", dimension)));
  }

  /** Short names are near to everything, so only those that differ in case count. */
  private static List<String> nearNames(String name, Dimension dimension) {
    return Unit.namesOf(dimension).stream()
        .filter(known -> known.equalsIgnoreCase(name) || known.length() > 2)
        .toList();
  }

  private static Refusal noQuantity(String whole, Dimension dimension) {
    return new Refusal(
        Words.quoted(whole) + " is no quantity; expected " + expected(dimension),
        "Write for example "
            + example("12", dimension)
            + "; leave the key out if the value is not known.");
  }

  private static String write(String example) {
    return "Write for example " + example + ".";
  }

  private static String example(String number, Dimension dimension) {
    return QuantityWriter.withUnit(number, dimension.unit());
  }

  private static String expected(Dimension dimension) {
    List<String> symbols =
        Stream.of(Unit.values())
            .filter(unit -> unit.dimension() == dimension)
            .map(Unit::symbol)
            .filter(symbol -> !symbol.isEmpty())
            .toList();
    String noun = Words.withArticle(dimension.words());
    return dimension == Dimension.RATIO
        ? noun + ", a number without a unit or in %"
        : noun + " in " + Words.anyOf(symbols);
  }
}
