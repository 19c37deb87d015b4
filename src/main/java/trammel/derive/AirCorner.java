package trammel.derive;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATE;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import trammel.build.Build;
import trammel.build.BuildSheet.FluidPressure;
import trammel.build.BuildSheet.Inflation;
import trammel.build.BuildSheet.State;
import trammel.build.Equipment;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.AirSpring;
import trammel.catalog.SuspensionPart.Spring;
import trammel.physics.SpringCurve;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * An air spring beside the steel spring of a corner whose height nothing holds: load of the body =
 * spring force · motion ratio + pressure · area · the air spring's motion ratio.
 *
 * <p>As proposed it stands at the pressure that the sheet has it set to with everything on board.
 * Where the sheet sets none, its valve stays shut: the pressure measured as found follows the
 * volume, as it settles.
 */
final class AirCorner {
  private static final Formula PART =
      new Formula(
          "air spring's part of the load",
          "pressure · effective area · motion ratio",
          "AirSpring: textbook mechanics");
  private static final Formula RATE_AT_WHEEL =
      new Formula(
          "air spring's rate at the wheel",
          "(n p A² / V − p dA/dl) · motion ratio², n of quick movement",
          "AirSpring: own derivation from the gas laws");
  private static final Formula SETTLED =
      new Formula(
          "pressure of the shut air spring",
          "pressure as found · volume as found / volume as proposed, pressures absolute",
          "law of Boyle and Mariotte");
  private static final Formula LEFT =
      new Formula("load left to the steel spring", "load − air spring's part", "definition");
  private static final Formula DEFLECTED =
      new Formula("deflection", "as it was − lift · motion ratio", "definition");
  private static final Formula AT_WHEEL =
      new Formula("spring's part of the load", "spring force · motion ratio", "virtual work");
  private static final Formula SURPLUS =
      new Formula("out of balance", "spring's + air spring's part − load", "balance of forces");
  private static final Formula STANDS =
      new Formula(
          "lift in balance",
          "where steel and air together carry the load of the body",
          "own derivation: balance of forces at one motion ratio");

  /** As far as a balance is looked for, up or down (mm). */
  private static final double FAR = 300;

  private final Build build;
  private final Position position;

  AirCorner(Build build, Position position) {
    this.build = build;
    this.position = position;
  }

  /** The air spring in a state. */
  Optional<AirSpring> fitted(Stage stage) {
    Equipment equipment =
        switch (stage) {
          case BOOK -> build.bookAt(position);
          case FOUND -> build.before(position);
          case PROPOSED -> build.after(position);
        };
    return equipment.one(PartKind.AIR_SPRING, AirSpring.class);
  }

  /** What it does there, as a fitter would say it. */
  String words(Stage stage) {
    return fitted(stage).map(air -> "air spring " + air.number()).orElse("air spring taken out");
  }

  /** Whether there is one in either state. */
  boolean any(Stage from, Stage to) {
    return fitted(from).isPresent() || fitted(to).isPresent();
  }

  /** Whether it, or its pressure, is another after the changes. */
  boolean changes() {
    return !fitted(Stage.FOUND).equals(fitted(Stage.PROPOSED))
        || (fitted(Stage.PROPOSED).isPresent() && inflated().isPresent());
  }

  private Optional<Quantity> inflated() {
    return build.aims().inflate().stream()
        .filter(set -> set.at().stream().anyMatch(where -> where.positions().contains(position)))
        .map(Inflation::pressure)
        .findFirst();
  }

  private Optional<Quantity> measured(State state) {
    return build.measurements().pressures().stream()
        .filter(reading -> reading.at() == position && reading.state() == state)
        .map(FluidPressure::pressure)
        .findFirst();
  }

  /**
   * Its pressure in a state (kPa).
   *
   * @param found how far the corner stands over book height as found (mm)
   * @param over how far it stands over book height in this state (mm)
   */
  Quantity pressure(Stage stage, double found, double over) {
    if (stage == Stage.BOOK) {
      return measured(State.BOOK).orElseGet(this::unknown);
    }
    if (stage == Stage.FOUND) {
      return measured(State.AS_FOUND).orElseGet(this::unknown);
    }
    Optional<Quantity> set = inflated();
    if (set.isPresent() || !fitted(Stage.FOUND).equals(fitted(Stage.PROPOSED))) {
      return set.orElseGet(this::unknown);
    }
    AirSpring air = fitted(stage).orElseThrow();
    return numeric(
        SETTLED,
        PRESSURE,
        v -> spring(v).settled(v[4], found * v[3], over * v[3]),
        air.effectiveDiameter(),
        air.diameterPerLength(),
        air.volume(),
        air.motionRatio(),
        measured(State.AS_FOUND).orElseGet(this::unknown));
  }

  private Quantity unknown() {
    return Figures.missing(
        PRESSURE,
        "pressure of the air spring",
        "the sheet does not say what it is set to",
        Instrument.GAUGE,
        "write it under aims, inflate");
  }

  /** What it carries of the load at the wheel (N); nothing where there is none. */
  Quantity part(Stage stage, double found, double over) {
    return fitted(stage)
        .map(
            air ->
                numeric(
                    PART,
                    FORCE,
                    v -> spring(v).force(v[4], over * v[3]) * v[3],
                    air.effectiveDiameter(),
                    air.diameterPerLength(),
                    air.volume(),
                    air.motionRatio(),
                    pressure(stage, found, over)))
        .orElse(Quantity.exact(FORCE, 0).called("no air spring"));
  }

  /** What it adds to the rate at the wheel in quick movement (N/mm). */
  Quantity rate(Stage stage, double found, double over) {
    AirSpring air = fitted(stage).orElseThrow();
    return numeric(
        RATE_AT_WHEEL,
        RATE,
        v -> spring(v).rate(v[5], v[4], over * v[3]) * v[3] * v[3],
        air.effectiveDiameter(),
        air.diameterPerLength(),
        air.volume(),
        air.motionRatio(),
        pressure(stage, found, over),
        air.gasIndex());
  }

  /** Load left to the steel spring (N). */
  Quantity left(Quantity load, Stage stage, double found, double over) {
    return fitted(stage).isEmpty() ? load : LEFT.linear(1, load, -1, part(stage, found, over));
  }

  /**
   * How far the corner rises from where the steel spring alone stands deflected so far, until steel
   * and air carry a load together (mm).
   *
   * @param deflection of the steel spring there
   * @param over how far it stands there over book height (mm)
   */
  Quantity lift(
      Spring steel,
      Quantity deflection,
      Quantity ratio,
      Quantity load,
      Stage stage,
      double found,
      double over) {
    Quantity there = part(stage, found, over);
    Optional<Quantity> missing =
        Stream.concat(
                SpringFigures.missing(steel).stream(), Stream.of(deflection, ratio, load, there))
            .filter(quantity -> !quantity.isKnown())
            .findFirst();
    if (missing.isPresent()) {
      return SpringFigures.absent(LENGTH, "lift of the air spring", missing.get());
    }
    double mr = ratio.value();
    SpringCurve curve = SpringFigures.curve(steel);
    DoubleUnaryOperator surplus =
        x ->
            mr * curve.force(deflection.value() - mr * x)
                + part(stage, found, over + x).value()
                - load.value();
    if (!(surplus.applyAsDouble(-FAR) > 0 && surplus.applyAsDouble(FAR) < 0)) {
      return Figures.missing(
          LENGTH,
          "lift of the air spring",
          "steel and air together find no height at which they carry the load",
          Instrument.STATED,
          "set another pressure");
    }
    double x =
        new BracketingNthOrderBrentSolver(1e-14, 1e-11, 1e-9, 5)
            .solve(200, surplus::applyAsDouble, -FAR, FAR);
    double step = 1e-3;
    double rate = (surplus.applyAsDouble(x - step) - surplus.applyAsDouble(x + step)) / (2 * step);
    Quantity rest = DEFLECTED.linear(1, deflection, -x, ratio);
    Quantity force = AT_WHEEL.product(FORCE, 1, SpringFigures.force(steel, rest), ratio);
    return STANDS.of(
        LENGTH,
        x,
        new double[] {1 / rate},
        SURPLUS.linear(1, force, 1, part(stage, found, over + x), -1, load));
  }

  private static trammel.physics.AirSpring spring(double[] v) {
    return new trammel.physics.AirSpring(v[0], v[1], v[2]);
  }

  /** A quantity of what is known, with its slopes from differences. */
  private static Quantity numeric(
      Formula formula, Dimension dimension, ToDoubleFunction<double[]> value, Quantity... inputs) {
    boolean known = Stream.of(inputs).allMatch(Quantity::isKnown);
    double[] at = Stream.of(inputs).mapToDouble(q -> known ? q.value() : 0).toArray();
    double[] partials = new double[at.length];
    for (int i = 0; known && i < at.length; i++) {
      double step = 1e-5 * Math.max(Math.abs(at[i]), 1e-2);
      double[] more = at.clone();
      double[] less = at.clone();
      more[i] += step;
      less[i] -= step;
      partials[i] = (value.applyAsDouble(more) - value.applyAsDouble(less)) / (2 * step);
    }
    return formula.of(dimension, known ? value.applyAsDouble(at) : 0, partials, inputs);
  }
}
