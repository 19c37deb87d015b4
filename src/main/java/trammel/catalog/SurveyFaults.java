package trammel.catalog;

import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.QuantityWriter;

/** Tells what is wrong with surveyed values, each where it was written. */
final class SurveyFaults {
  private final Problems problems;

  SurveyFaults(Problems problems) {
    this.problems = problems;
  }

  /** How many faults there are so far: a later check leaves alone what is wrong already. */
  int count() {
    return problems.count();
  }

  /**
   * A value that cannot be right.
   *
   * @param value as it was read
   * @param what goes on after the value: {@code lies below the ground; expected …}
   * @param advice the likely mistake and how to mend it
   * @throws IllegalArgumentException if the value was not read from a file
   */
  void at(Quantity value, String what, String advice) {
    Input input = value.input();
    if (input == null) {
      throw new IllegalArgumentException(value.name() + " was not read from a file");
    }
    problems.add(
        new Place(input.file(), input.line(), input.column()),
        input.path() + ": " + written(value) + " " + what,
        advice);
  }

  /** Something that cannot be right as a whole, or misses a value. */
  void at(Place place, String what, String advice) {
    problems.add(place, what, advice);
  }

  /** A value in the digits it was written with. */
  static String written(Quantity value) {
    return QuantityWriter.shortest(value.dimension(), value.value());
  }

  /** A computed length, to a tenth of a millimeter where it is short. */
  static String length(double millimeters) {
    double unit = Math.abs(millimeters) < 10 ? 10 : 1;
    return QuantityWriter.shortest(Dimension.LENGTH, Math.round(millimeters * unit) / unit);
  }

  /** A computed angle, to a tenth of a degree. */
  static String angle(double degrees) {
    return QuantityWriter.shortest(Dimension.ANGLE, Math.round(degrees * 10) / 10.0);
  }

  /** Asks about a sign, and gives the value with the other one. */
  static String signSwapped(Quantity value) {
    return "Is the sign swapped? Was "
        + QuantityWriter.shortest(value.dimension(), -value.value())
        + " meant?";
  }
}
