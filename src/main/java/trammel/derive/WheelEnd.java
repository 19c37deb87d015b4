package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.build.Equipment;
import trammel.build.Trial;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.WheelPart.Fastener;
import trammel.catalog.WheelPart.Tire;
import trammel.catalog.WheelPart.Wheel;
import trammel.catalog.WheelPart.WheelSpacer;
import trammel.physics.TireDimensions;
import trammel.quantity.Absence;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;

/**
 * A wheel in one state, as found or as proposed, with the lengths that follow from its parts. Edges
 * are from the hub face: {@code outer} outboard, {@code inner} inboard.
 */
final class WheelEnd {
  private static final Formula OFFSET =
      new Formula(
          "effective offset", "offset − spacers", "definition: a spacer t acts as offset − t");
  private static final Formula TRIED =
      new Formula("tried", "as proposed + what is tried", "definition");
  private static final Formula OUTER =
      new Formula(
          "outer edge from the hub face",
          "section width / 2 − effective offset",
          "definition of offset");
  private static final Formula INNER =
      new Formula(
          "inner edge from the hub face",
          "section width / 2 + effective offset",
          "definition of offset");
  private static final Formula RADIUS = new Formula("tire radius", "diameter / 2", "definition");
  private static final Formula STACK =
      new Formula("spacer thickness", "sum of the spacers", "definition");
  private static final Formula CIRCUMFERENCE =
      new Formula(
          "rolling circumference",
          "3.05 · diameter",
          "shared/reference/tire-sizes-gost.csv: 3.046 to 3.079 over published rows");
  private static final Absence NO_TIRE =
      new Absence(
          "tire",
          "no tire is known to be fitted here",
          Instrument.READ,
          "read the sidewall and list it under as-found");
  private static final Absence NO_WHEEL =
      new Absence(
          "wheel",
          "no wheel is known to be fitted here",
          Instrument.READ,
          "read the marks behind a spoke and list it under as-found");

  final @Nullable Tire tire;
  final @Nullable Wheel wheel;
  final List<Fastener> fasteners;
  final List<WheelSpacer> spacers;
  final Quantity diameter;
  final Quantity radius;
  final Quantity width;
  final Quantity thickness;
  final Quantity offset;
  final Quantity outer;
  final Quantity inner;
  final Quantity circumference;

  WheelEnd(Equipment equipment, Figures figures) {
    this(equipment, figures, Trial.NONE);
  }

  /** A wheel with tires and offset that are tried on it. */
  WheelEnd(Equipment equipment, Figures figures, Trial trial) {
    tire = equipment.one(PartKind.TIRE, Tire.class).orElse(null);
    wheel = equipment.one(PartKind.WHEEL, Wheel.class).orElse(null);
    fasteners = equipment.all(PartKind.FASTENER, Fastener.class);
    spacers = equipment.all(PartKind.WHEEL_SPACER, WheelSpacer.class);
    diameter =
        tried(
            tire == null ? Quantity.absent(LENGTH, NO_TIRE) : figures.diameter(tire),
            trial.diameter());
    radius = RADIUS.linear(0.5, diameter);
    width =
        tried(
            tire == null
                ? Quantity.absent(LENGTH, NO_TIRE)
                : wheel == null
                    ? Quantity.absent(LENGTH, NO_WHEEL)
                    : figures.sectionWidth(tire, wheel),
            trial.width());
    thickness = tried(thickness(spacers), spacers.isEmpty() ? 0 : trial.wheelSpacer());
    Quantity marked =
        tried(wheel == null ? Quantity.absent(LENGTH, NO_WHEEL) : wheel.offset(), trial.offset());
    offset = spacers.isEmpty() ? marked : OFFSET.linear(1, marked, -1, thickness);
    outer = OUTER.linear(0.5, width, -1, offset);
    inner = INNER.linear(0.5, width, 1, offset);
    circumference = CIRCUMFERENCE.linear(TireDimensions.CIRCUMFERENCE_PER_DIAMETER, diameter);
  }

  private static Quantity tried(Quantity quantity, double more) {
    return more == 0 ? quantity : TRIED.linear(1, quantity, 1, Constants.mm(more));
  }

  private static Quantity thickness(List<WheelSpacer> spacers) {
    if (spacers.isEmpty()) {
      return Quantity.exact(LENGTH, 0);
    }
    double[] ones = new double[spacers.size()];
    Quantity[] each = new Quantity[spacers.size()];
    for (int i = 0; i < each.length; i++) {
      ones[i] = 1;
      each[i] = spacers.get(i).thickness();
    }
    return STACK.linear(ones, each);
  }

  /** The numbers of the parts that decide where the tire is. */
  List<String> numbers() {
    List<String> numbers = new ArrayList<>();
    if (tire != null) {
      numbers.add(tire.number());
    }
    if (wheel != null) {
      numbers.add(wheel.number());
    }
    spacers.stream().map(Part::number).forEach(numbers::add);
    return numbers;
  }
}
