package trammel.derive;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.FREQUENCY;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATE;
import static trammel.quantity.Dimension.RATIO;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.BuildSheet.FluidPressure;
import trammel.build.BuildSheet.State;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.AxleProfile.Springs;
import trammel.catalog.PartKind;
import trammel.catalog.Support.Fluid;
import trammel.catalog.SuspensionPart.Spring;
import trammel.physics.AxleStatics;
import trammel.physics.FluidSpring;
import trammel.physics.GasSpring;
import trammel.physics.WheelRate;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * A corner whose height is held, with a ram beside its spring or instead of it: load of the body =
 * spring force · motion ratio + pressure · area · ram's motion ratio. The pressure as found is the
 * measured one, else the book's and what has changed since; with the changes it is that and what
 * they alter, so that what was not known of the book's balance stays out of the difference. The
 * ram's motion ratio is taken as constant.
 */
final class FluidCorner {
  private static final Formula PACKED =
      new Formula("packed onto the spring", "as fitted + what is tried", "definition");
  private static final Formula DEFLECTED =
      new Formula("deflection", "free length + spacers − room for the spring", "definition");
  private static final Formula AT_WHEEL =
      new Formula("spring's part of the load", "spring force · motion ratio", "virtual work");
  private static final Formula AREA =
      new Formula("effective area of the ram", "π d² / 4 · ram's motion ratio", "definition");
  private static final Formula MORE_LOAD =
      new Formula(
          "load left to the ram",
          "change of the load − change of the spring's part",
          "balance of forces");
  private static final Formula BY_RAM =
      new Formula(
          "change of the pressure",
          "load left to the ram / (area · ram's motion ratio)",
          "FluidSpring: own derivation from the balance of forces");
  private static final Formula PRESSURE_AFTER =
      new Formula("fluid pressure", "as it was + its change", "definition");
  private static final Formula RAM_PART =
      new Formula("ram's part of the load", "pressure · area · ram's motion ratio", "virtual work");
  private static final Formula SHARE =
      new Formula(
          "spring's share of the load", "spring's part / (spring's + ram's part)", "definition");
  private static final Formula GAS =
      new Formula(
          "rate of the gas at the wheel",
          "n · p² · A² · MRc² / (p₀ · V₀), pressures absolute",
          "GasSpring: own derivation from the gas laws");
  private static final Formula STIFFNESS =
      new Formula("rate at the wheel", "spring rate · motion ratio² + gas", "definition");
  private static final Formula RIDE =
      new Formula("ride frequency", "√(rate / mass) / 2π", "textbook mechanics, no damping");
  private static final Formula WANTED =
      new Formula(
          "spring spacer wanted",
          "(pressure − preferred) · area · MRc / (spring rate · MR)",
          "FluidSpring: own derivation");

  private static final Quantity NO_FORCE =
      Quantity.exact(FORCE, 0).called("spring force (there is no spring)");
  private static final Quantity NO_RATE =
      Quantity.exact(RATE, 0).called("spring rate (there is no spring)");

  private final Derivation derivation;
  private final HeightFacts heights;
  private final Position position;
  private final AxleProfile axle;
  private final Fluid fluid;
  private final RideChange ride;

  /** Pressures read at this wheel; of two in one state the first counts. */
  private final Map<State, Quantity> readings = new EnumMap<>(State.class);

  private final Map<Stage, SpringStand> springs = new EnumMap<>(Stage.class);
  private final Map<Stage, Quantity> pressures = new EnumMap<>(Stage.class);
  private final Map<Stage, Figures> figures = new EnumMap<>(Stage.class);

  /** The left corner of the axle where both are alike; null for that one, and for any other. */
  private final @Nullable FluidCorner like;

  /** Area of the ram times its motion ratio, in square millimeters. */
  private final Quantity area;

  FluidCorner(
      Derivation derivation,
      HeightFacts heights,
      Position position,
      Fluid fluid,
      @Nullable FluidCorner like) {
    this.like = like;
    this.derivation = derivation;
    this.heights = heights;
    this.position = position;
    this.axle = derivation.build.vehicle().axle(position.axle().orElseThrow());
    this.fluid = fluid;
    this.ride = derivation.travel(position);
    this.area = like == null ? area(fluid) : like.area;
    for (FluidPressure reading : derivation.build.measurements().pressures()) {
      if (reading.at() == position) {
        readings.putIfAbsent(reading.state(), reading.pressure());
      }
    }
  }

  /**
   * Spring and pressure in one state.
   *
   * @param force along the spring (N)
   * @param pressure in the ram (kPa)
   * @param share of the load that the spring carries
   * @param gas rate of the gas at the wheel (N/mm)
   * @param frequency of the ride (Hz)
   */
  record Figures(
      Quantity force, Quantity pressure, Quantity share, Quantity gas, Quantity frequency) {}

  /** Spring alone in one state. */
  private record SpringStand(Quantity force, Quantity part, Quantity rate, Quantity ratio) {}

  /** Spring and pressure in a state. */
  Figures figures(Stage stage) {
    return figures.computeIfAbsent(stage, this::workedOutFigures);
  }

  private Figures workedOutFigures(Stage stage) {
    if (like != null && pressure(stage) == like.pressure(stage)) {
      return like.figures(stage);
    }
    SpringStand spring = spring(stage);
    Quantity pressure = pressure(stage);
    Quantity ram = product(RAM_PART, FORCE, 1e-3, pressure, area);
    Quantity gas = gas(pressure);
    return new Figures(
        spring.force,
        pressure,
        share(spring.part, ram),
        gas,
        frequency(spring, gas, derivation.loads().sprung(position, stage)));
  }

  /** How much thicker what is packed onto the spring would have to be (mm). */
  Quantity spacerWanted() {
    SpringStand spring = spring(Stage.PROPOSED);
    Quantity pressure = pressure(Stage.PROPOSED);
    double over = number(pressure) - number(fluid.preferred());
    double a = number(area) / 1000;
    double k = number(spring.rate);
    double r = number(spring.ratio);
    double value = over * a / (k * r);
    return WANTED.of(
        LENGTH,
        value,
        new double[] {a / (k * r), -a / (k * r), over / 1000 / (k * r), -value / k, -value / r},
        pressure,
        fluid.preferred(),
        area,
        spring.rate,
        spring.ratio);
  }

  /** Pressure in a state (kPa, gauge). */
  Quantity pressure(Stage stage) {
    return pressures.computeIfAbsent(stage, this::workedOutPressure);
  }

  private Quantity workedOutPressure(Stage stage) {
    if (like != null && !measured() && !like.measured()) {
      return like.pressure(stage);
    }
    Quantity book = measured(State.BOOK).orElse(fluid.bookPressure());
    if (stage == Stage.BOOK) {
      return book;
    }
    Quantity found =
        measured(State.AS_FOUND)
            .orElseGet(() -> changed(Stage.BOOK, Stage.FOUND) ? after(book, Stage.BOOK) : book);
    return stage == Stage.FOUND || !changed(Stage.FOUND, Stage.PROPOSED)
        ? found
        : after(found, Stage.FOUND);
  }

  private boolean measured() {
    return !readings.isEmpty();
  }

  private Optional<Quantity> measured(State state) {
    return Optional.ofNullable(readings.get(state));
  }

  private Quantity after(Quantity before, Stage from) {
    Stage to = from == Stage.BOOK ? Stage.FOUND : Stage.PROPOSED;
    VehicleLoads loads = derivation.loads();
    Quantity left =
        MORE_LOAD.linear(
            new double[] {1, -1, -1, 1},
            loads.sprung(position, to),
            loads.sprung(position, from),
            spring(to).part,
            spring(from).part);
    return PRESSURE_AFTER.linear(1, before, 1, BY_RAM.quotient(PRESSURE, 1000, left, area));
  }

  /** Whether anything that the pressure depends on differs between two states. */
  boolean changed(Stage from, Stage to) {
    Equipment before = from.equipment(derivation.build, position);
    Equipment after = to.equipment(derivation.build, position);
    Quantity moved = from == Stage.BOOK ? ride.found() : heights.lift(position);
    return derivation.loads().changed(position.axle().orElseThrow(), from, to)
        || !before.sameAs(after, PartKind.SPRING)
        || !before.sameAs(after, PartKind.SPRING_SPACER)
        || !before.sameAs(after, PartKind.STRUT_TOP_SPACER)
        || (to == Stage.PROPOSED && heights.thicker(position) != 0)
        || !moved.isKnown()
        || moved.value() != 0
        || moved.expanded() != 0;
  }

  /** The spring in a state, worked out once. */
  private SpringStand spring(Stage stage) {
    return like == null ? springs.computeIfAbsent(stage, this::workedOut) : like.spring(stage);
  }

  private SpringStand workedOut(Stage stage) {
    Optional<Spring> fitted =
        stage.equipment(derivation.build, position).one(PartKind.SPRING, Spring.class);
    boolean none = axle.springs() == Springs.AIR || axle.springs() == Springs.HYDROPNEUMATIC;
    Quantity travel =
        switch (stage) {
          case BOOK -> ride.surveyed();
          case FOUND -> ride.found();
          case PROPOSED -> ride.proposed();
        };
    if (fitted.isEmpty() && none) {
      return new SpringStand(NO_FORCE, NO_FORCE, NO_RATE, Constants.number(1));
    }
    SpringTravel.Stand stand = derivation.springs(position.axle().orElseThrow()).at(travel);
    if (fitted.isEmpty()) {
      Quantity unknown =
          trammel.derive.Figures.missing(
              FORCE,
              "spring force",
              "the spring that is fitted here is not known",
              Instrument.READ,
              "list it under as-found");
      return new SpringStand(
          unknown,
          unknown,
          SpringFigures.absent(Dimension.RATE, "spring rate", unknown),
          stand.ratio());
    }
    Quantity packed = PassiveLedger.packed(stage.equipment(derivation.build, position));
    if (stage == Stage.PROPOSED && heights.thicker(position) != 0) {
      packed = PACKED.linear(1, packed, 1, Constants.mm(heights.thicker(position)));
    }
    Quantity deflection =
        DEFLECTED.linear(1, fitted.get().freeLength(), 1, packed, -1, stand.seats());
    Quantity force = SpringFigures.force(fitted.get(), deflection);
    return new SpringStand(
        force,
        product(AT_WHEEL, FORCE, 1, force, stand.ratio()),
        SpringFigures.rate(fitted.get(), deflection),
        stand.ratio());
  }

  private static Quantity area(Fluid fluid) {
    double d = number(fluid.diameter());
    double r = number(fluid.motionRatio());
    double area = d > 0 ? FluidSpring.ramArea(d) : Double.NaN;
    double perDiameter = d > 0 ? FluidSpring.ramAreaPerDiameter(d) : Double.NaN;
    return AREA.of(
        RATIO,
        area * r,
        new double[] {perDiameter * r, area},
        fluid.diameter(),
        fluid.motionRatio());
  }

  private static Quantity share(Quantity spring, Quantity ram) {
    double s = number(spring);
    double p = number(ram);
    double all = s + p;
    return SHARE.of(RATIO, s / all, new double[] {p / (all * all), -s / (all * all)}, spring, ram);
  }

  private Quantity gas(Quantity pressure) {
    boolean known =
        pressure.isKnown()
            && area.isKnown()
            && fluid.gasIndex().isKnown()
            && fluid.gasPressure().isKnown()
            && fluid.gasVolume().isKnown();
    Optional<GasSpring.Rate> found =
        known
            ? GasSpring.rate(
                fluid.gasIndex().value(),
                pressure.value(),
                fluid.gasPressure().value(),
                fluid.gasVolume().value(),
                area.value(),
                1)
            : Optional.empty();
    if (known && found.isEmpty()) {
      return trammel.derive.Figures.missing(
          RATE,
          "rate of the gas",
          "the fluid's pressure does not reach the charge of the gas, so no gas moves",
          Instrument.GAUGE,
          "check the charge of the gas");
    }
    double[] partials =
        found
            .map(
                rate ->
                    new double[] {
                      rate.perIndex(),
                      rate.perPressure(),
                      rate.perChargePressure(),
                      rate.perChargeVolume(),
                      rate.perArea()
                    })
            .orElseGet(() -> new double[5]);
    return GAS.of(
        RATE,
        found.map(GasSpring.Rate::value).orElse(0.0),
        partials,
        fluid.gasIndex(),
        pressure,
        fluid.gasPressure(),
        fluid.gasVolume(),
        area);
  }

  private static Quantity frequency(SpringStand spring, Quantity gas, Quantity load) {
    double k = number(spring.rate);
    double r = number(spring.ratio);
    Quantity stiffness =
        STIFFNESS.of(
            RATE,
            k * r * r + number(gas),
            new double[] {r * r, 2 * k * r, 1},
            spring.rate,
            spring.ratio,
            gas);
    boolean known =
        stiffness.isKnown() && load.isKnown() && load.value() > 0 && stiffness.value() > 0;
    WheelRate.OfTwo f =
        known
            ? WheelRate.frequency(stiffness.value(), load.value() / AxleStatics.GRAVITY)
            : new WheelRate.OfTwo(Double.NaN, 0, 0);
    return RIDE.of(
        FREQUENCY,
        f.value(),
        new double[] {f.perFirst(), f.perSecond() / AxleStatics.GRAVITY},
        stiffness,
        load);
  }

  private static Quantity product(
      Formula formula, Dimension dimension, double a, Quantity one, Quantity other) {
    return formula.product(dimension, a, one, other);
  }

  private static double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : Double.NaN;
  }
}
