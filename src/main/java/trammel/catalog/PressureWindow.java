package trammel.catalog;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trammel.catalog.Support.Fluid;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.quantity.Unit;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.QuantityWriter;
import trammel.read.Words;

/**
 * The pressures that can be met somewhere, to tell a mistaken unit from a strange pressure.
 *
 * <p>A pressure more than twice the greatest or less than half the least is told where the same
 * number in another unit would lie inside, or with its decimal point one place aside. Twice is own
 * judgment: the nearest two units, kPa and psi, are 6.9 times apart.
 *
 * @param what it is the window of, in words
 * @param least (kPa)
 * @param most (kPa)
 */
public record PressureWindow(String what, double least, double most) {
  private static final double FAR = 2;

  /** What rams and air springs of road vehicles hold at rest (kPa); own judgment, wide. */
  private static final double LEAST_HELD = 20;

  private static final double MOST_HELD = 30000;

  /** Where a profile says nothing of what carries the axle. */
  public static final PressureWindow ANY =
      new PressureWindow("what rams and air springs hold", LEAST_HELD, MOST_HELD);

  /**
   * The window of a ram or an air spring: the profile's least and greatest pressure; of what is not
   * stated, half and twice the pressure it was laid out for or has in the book.
   *
   * @return where the profile has no pressure at all, what rams hold
   */
  public static PressureWindow of(String what, Fluid fluid) {
    List<Double> known =
        Stream.of(fluid.from(), fluid.bookPressure(), fluid.preferred(), fluid.to())
            .filter(Quantity::isKnown)
            .map(Quantity::value)
            .sorted()
            .toList();
    if (known.isEmpty()) {
      return ANY;
    }
    double least = fluid.from().isKnown() ? fluid.from().value() : known.get(0) / FAR;
    double most = fluid.to().isKnown() ? fluid.to().value() : known.get(known.size() - 1) * FAR;
    return new PressureWindow(what, least, most);
  }

  /** The window of a tire: half and twice the cold pressure on the label; common practice. */
  public static PressureWindow ofTire(String what, Quantity placard) {
    return new PressureWindow(what, placard.value() / FAR, placard.value() * FAR);
  }

  /**
   * Tells of a pressure that was read from a file and seems to have another unit than is written.
   *
   * @return whether it was told
   */
  public boolean check(Quantity pressure, Problems problems) {
    Input input = pressure.input();
    if (!pressure.isKnown() || input == null) {
      return false;
    }
    boolean above = pressure.value() > most * FAR;
    if (!above && pressure.value() >= least / FAR) {
      return false;
    }
    Unit unit = input.unit() == null ? Unit.KILOPASCAL : input.unit();
    String advice = meant(pressure.value(), unit);
    if (advice.isEmpty() && pressure.value() >= LEAST_HELD && pressure.value() <= MOST_HELD) {
      return false;
    }
    problems.add(
        new Place(input.file(), input.line(), input.column()),
        input.path()
            + ": "
            + QuantityWriter.shortest(unit, pressure.value())
            + " lies far "
            + (above ? "above " : "below ")
            + what
            + ", "
            + QuantityWriter.rough(unit, least, 3)
            + " to "
            + QuantityWriter.rough(unit, most, 3),
        advice.isEmpty() ? "Check the number and its unit." : advice);
    return true;
  }

  /** What would lie inside: the number in another unit, else with its point moved; or nothing. */
  private String meant(double kept, Unit written) {
    double number = written.fromKept(kept);
    List<Unit> others =
        Arrays.stream(Unit.values())
            .filter(unit -> unit.dimension() == Dimension.PRESSURE && unit != written)
            .filter(unit -> holds(unit.toKept(number)))
            .toList();
    if (!others.isEmpty()) {
      String would =
          others.stream()
              .map(
                  unit ->
                      QuantityWriter.shortest(unit, unit.toKept(number))
                          + " would be "
                          + QuantityWriter.rough(written, unit.toKept(number), 2))
              .collect(Collectors.joining(", "));
      return would + ": was " + Words.anyOf(others.stream().map(Unit::symbol).toList()) + " meant?";
    }
    return Stream.of(kept / 10, kept * 10)
        .filter(this::holds)
        .map(moved -> "Was " + QuantityWriter.shortest(written, moved) + " meant?")
        .findFirst()
        .orElse("");
  }

  private boolean holds(double kept) {
    return kept >= least && kept <= most;
  }
}
