package trammel.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trammel.build.Build;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * What a build proposes, in the measures that a wish is told in: each front and rear, by the left
 * wheels. Lists of what need not be there are empty where it is not.
 *
 * @param diameters of the tires
 * @param widths section widths of the tires
 * @param offsets of the wheels, spacers taken off
 * @param wheelSpacers their thickness
 * @param springSpacers their thickness
 * @param lifts suspension lift
 */
public record Proposed(
    List<Quantity> diameters,
    List<Quantity> widths,
    List<Quantity> offsets,
    List<Quantity> wheelSpacers,
    List<Quantity> springSpacers,
    List<Quantity> lifts) {

  /** What a build proposes. */
  public static Proposed of(Build build, LocalDate on) {
    Derivation derivation = new Derivation(build, on);
    HeightFacts heights = derivation.heights();
    List<Quantity> wheelSpacers = new ArrayList<>();
    List<Quantity> springSpacers = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      Position left = Position.of(axle, Side.LEFT);
      if (!derivation.after(left).spacers.isEmpty()) {
        wheelSpacers.add(derivation.after(left).thickness);
      }
      build.after(left).all(PartKind.SPRING_SPACER, SpringSpacer.class).stream()
          .map(SpringSpacer::thickness)
          .forEach(springSpacers::add);
    }
    return new Proposed(
        each(axle -> derivation.after(Position.of(axle, Side.LEFT)).diameter),
        each(axle -> derivation.after(Position.of(axle, Side.LEFT)).width),
        each(axle -> derivation.after(Position.of(axle, Side.LEFT)).offset),
        List.copyOf(wheelSpacers),
        List.copyOf(springSpacers),
        each(axle -> heights.lift(Position.of(axle, Side.LEFT))));
  }

  private static List<Quantity> each(Function<Axle, Quantity> what) {
    return List.of(what.apply(Axle.FRONT), what.apply(Axle.REAR));
  }
}
