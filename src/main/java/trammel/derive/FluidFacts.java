package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Dimension.VOLTAGE;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.Support.Fluid;
import trammel.catalog.Support.HeightSensor;
import trammel.fact.FluidLoad;
import trammel.fact.SensorRange;
import trammel.fact.Standing;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** How spring and fluid share the load of a held height, and whether its sensor goes so far. */
final class FluidFacts {
  private static final Formula RISE =
      new Formula("rise of the pressure", "after / before − 1", "definition");
  private static final Formula SEEN =
      new Formula(
          "height that the sensor sees",
          "height over book − what another link takes up",
          "own derivation");
  private static final Formula READING =
      new Formula(
          "reading of the sensor",
          "even between the readings at its ends",
          "definition of the profile's sensor");
  private static final Formula ABOVE =
      new Formula("range left above", "highest − height seen", "definition");
  private static final Formula BELOW =
      new Formula("range left below", "lowest + height seen", "definition");

  private static final List<PartKind> ON_THE_SPRING =
      List.of(PartKind.SPRING, PartKind.SPRING_SPACER, PartKind.STRUT_TOP_SPACER);

  private final Derivation derivation;
  private final Build build;
  private final HeightFacts heights;
  private final Map<Position, FluidCorner> corners = new EnumMap<>(Position.class);

  FluidFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.heights = derivation.heights();
  }

  void add() {
    for (Position position : Position.running()) {
      load(position).ifPresent(derivation.facts::add);
      sensor(position).ifPresent(derivation.facts::add);
    }
  }

  /** How spring and fluid share the load of a corner, where fluid carries any. */
  Optional<FluidLoad> load(Position position) {
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    Fluid fluid = axle.support().fluid();
    if (fluid == null) {
      return axle.heightControlled() ? Optional.of(unknown(position)) : Optional.empty();
    }
    FluidCorner corner = corner(position, fluid);
    FluidCorner.Figures before = corner.figures(Stage.FOUND);
    FluidCorner.Figures after = corner.figures(Stage.PROPOSED);
    Quantity was = before.pressure();
    double old = was.isKnown() ? was.value() : Double.NaN;
    double now = after.pressure().isKnown() ? after.pressure().value() : Double.NaN;
    return Optional.of(
        new FluidLoad(
            Subject.of(position),
            Standing.ofChange(corner.changed(Stage.FOUND, Stage.PROPOSED)),
            numbers(position),
            before.force(),
            after.force(),
            was,
            after.pressure(),
            fluid.from(),
            fluid.preferred(),
            fluid.to(),
            RISE.of(
                RATIO,
                now / old - 1,
                new double[] {1 / old, -now / (old * old)},
                after.pressure(),
                was),
            before.share(),
            after.share(),
            before.gas(),
            after.gas(),
            before.frequency(),
            after.frequency(),
            corner.spacerWanted()));
  }

  private FluidCorner corner(Position position, Fluid fluid) {
    FluidCorner known = corners.get(position);
    if (known == null) {
      Position like = derivation.sides().like(position);
      known =
          new FluidCorner(
              derivation, heights, position, fluid, like == position ? null : corner(like, fluid));
      corners.put(position, known);
    }
    return known;
  }

  private List<String> numbers(Position position) {
    Equipment fitted = build.after(position);
    Set<String> numbers = new LinkedHashSet<>();
    for (PartKind kind : ON_THE_SPRING) {
      for (Part part : fitted.all(kind)) {
        numbers.add(part.number());
      }
    }
    return List.copyOf(numbers);
  }

  private FluidLoad unknown(Position position) {
    Absence absence =
        new Absence(
            "fluid pressure",
            "nobody has described the rams of this axle",
            Instrument.GAUGE,
            "gauge or diagnostic reading, and the rams' diameter");
    Quantity force = Quantity.absent(Dimension.FORCE, absence);
    Quantity pressure = Quantity.absent(Dimension.PRESSURE, absence);
    Quantity ratio = Quantity.absent(RATIO, absence);
    Quantity rate = Quantity.absent(Dimension.RATE, absence);
    Quantity frequency = Quantity.absent(Dimension.FREQUENCY, absence);
    return new FluidLoad(
        Subject.of(position),
        Standing.ofChange(moved(position)),
        numbers(position),
        force,
        force,
        pressure,
        pressure,
        pressure,
        pressure,
        pressure,
        ratio,
        ratio,
        ratio,
        rate,
        rate,
        frequency,
        frequency,
        Quantity.absent(LENGTH, absence));
  }

  private boolean moved(Position position) {
    return build.raised().containsKey(position)
        || (heights.lift(position).isKnown() && heights.lift(position).value() != 0)
        || derivation.loads().changed()
        || build.changes(
            position, PartKind.SPRING, PartKind.SPRING_SPACER, PartKind.STRUT_TOP_SPACER);
  }

  /** What is left of a height sensor's range, where a sensor holds the height. */
  Optional<SensorRange> sensor(Position position) {
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    if (!axle.heightControlled()) {
      return Optional.empty();
    }
    Standing standing =
        Standing.ofChange(
            build.changes(position, PartKind.HEIGHT_SENSOR_LINK)
                || !heights.lift(position).isKnown()
                || heights.lift(position).value() != 0);
    List<String> parts =
        build.after(position).all(PartKind.HEIGHT_SENSOR_LINK).stream().map(Part::number).toList();
    Optional<SensorLink> link = SensorLink.of(build, position);
    if (link.isEmpty()) {
      Quantity unknown =
          Figures.missing(
              LENGTH,
              "range of the height sensor",
              "nobody has described the sensor of this axle",
              Instrument.STATED,
              "workshop book, or its readings at both ends");
      Quantity reading = SpringFigures.absent(VOLTAGE, "reading of the sensor", unknown);
      return Optional.of(
          new SensorRange(
              Subject.of(position), standing, parts, unknown, reading, unknown, unknown, unknown));
    }
    HeightSensor sensor = link.get().sensor();
    Quantity travel = derivation.travel(position).proposed();
    Quantity body = SEEN.linear(-1, travel);
    Quantity seen = SEEN.linear(1, body, -1, link.get().shift(body));
    Quantity above = ABOVE.linear(1, sensor.highest(), -1, seen);
    Quantity below = BELOW.linear(1, sensor.lowest(), 1, seen);
    boolean up = above.isKnown() && (!below.isKnown() || above.value() <= below.value());
    boolean both = above.isKnown() && below.isKnown();
    return Optional.of(
        new SensorRange(
            Subject.of(position),
            standing,
            parts,
            seen,
            reading(sensor, seen),
            above,
            below,
            both ? (up ? above : below) : (above.isKnown() ? below : above)));
  }

  private static Quantity reading(HeightSensor sensor, Quantity seen) {
    double low = number(sensor.lowest());
    double range = low + number(sensor.highest());
    double readings = number(sensor.readingHighest()) - number(sensor.readingLowest());
    double share = (number(seen) + low) / range;
    return READING.of(
        VOLTAGE,
        number(sensor.readingLowest()) + readings * share,
        new double[] {
          1 - share,
          share,
          readings / range,
          readings * (1 - share) / range,
          -readings * share / range
        },
        sensor.readingLowest(),
        sensor.readingHighest(),
        seen,
        sensor.lowest(),
        sensor.highest());
  }

  private static double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : Double.NaN;
  }
}
