package trammel.derive;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.LiftClaim;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.derive.HeightLedger.Line;
import trammel.physics.FittedSpring;
import trammel.physics.RideBalance;
import trammel.physics.RidePosition;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * What raises or lowers a corner on steel springs from one state to another, line by line, by the
 * balance of forces: spring force · motion ratio = the body's load on the wheel.
 *
 * <p>With one motion ratio the lines are exact whatever their order. Where corner and spring are
 * surveyed, the balance is solved on the path of the spring after each step: spring, then what is
 * packed onto it, then load. A leaf pack tells its lift by a change of load only; a new one, like
 * any spring of which something is not known, by its maker's claim.
 */
final class PassiveLedger {
  private static final Formula BY_SPACER =
      new Formula(
          "lift of a spacer",
          "thickness / motion ratio",
          "own derivation: load and deflection of the spring stay as they were");
  private static final Formula SPACERS =
      new Formula("packed onto the spring", "sum of the thicknesses", "definition");
  static final Formula ALONG =
      new Formula("spring force", "load of the body / motion ratio", "virtual work");
  private static final Formula LOADED =
      new Formula("loaded length", "free length − deflection", "definition");
  static final Formula BY_SPRING =
      new Formula(
          "lift of a spring",
          "(new − old loaded length) / motion ratio",
          "own derivation: balance of forces at one motion ratio");
  private static final Formula BY_LOAD =
      new Formula(
          "lift by the load",
          "(deflection before − after) / motion ratio",
          "own derivation: balance of forces at one motion ratio");
  private static final Formula DEFLECTED =
      new Formula("deflection", "free length + spacers − room for the spring", "definition");
  private static final Formula AT_WHEEL =
      new Formula("spring's part of the load", "spring force · motion ratio", "virtual work");
  private static final Formula SURPLUS =
      new Formula("out of balance", "spring's part − load of the body", "balance of forces");
  private static final Formula STANDS =
      new Formula(
          "travel in balance",
          "where the spring's part is the load of the body",
          "RideBalance: own derivation from virtual work");
  private static final Formula STEP =
      new Formula("lift of this step", "travel before − after", "definition");

  private static final Quantity NOTHING = Constants.mm(0).called("nothing packed onto the spring");

  /** What stops a wheel where nobody has measured its travel (mm). */
  private static final double FAR = 150;

  private final Derivation derivation;
  private final Build build;
  private final VehicleLoads loads;

  PassiveLedger(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.loads = derivation.loads();
  }

  /** What lies between two states of a corner. */
  List<Line> lines(Position position, Stage from, Stage to) {
    return new Corner(position, from, to).lines();
  }

  /** Whether a corner is taken to rise by what the maker of its new spring claims. */
  boolean goesByClaim(Position position) {
    return new Corner(position, Stage.FOUND, Stage.PROPOSED).claimUsed() != null;
  }

  /** Length of a spring under a force (mm). */
  static Quantity length(Spring spring, Quantity force) {
    return LOADED.linear(1, spring.freeLength(), -1, SpringFigures.deflection(spring, force));
  }

  /** What is packed onto the spring at a wheel (mm). */
  static Quantity packed(Equipment equipment) {
    List<Quantity> thicknesses = new ArrayList<>();
    for (SpringSpacer spacer : equipment.all(PartKind.SPRING_SPACER, SpringSpacer.class)) {
      thicknesses.add(spacer.thickness());
    }
    for (StrutTopSpacer plate : equipment.all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)) {
      thicknesses.add(plate.thickness());
    }
    return thicknesses.isEmpty() ? NOTHING : SPACERS.sum(thicknesses);
  }

  /** One corner between two states. */
  private final class Corner {
    private final AxleProfile axle;
    private final Equipment before;
    private final Equipment after;
    private final Optional<Spring> now;
    private final Optional<Spring> then;
    private final Position position;
    private final Stage from;
    private final Stage to;
    private final SpringTravel travel;
    private final AirCorner air;
    private final Map<Stage, Quantity> forces = new EnumMap<>(Stage.class);
    private final Once<Quantity> bySpring = new Once<>(this::balancedSpring);

    Corner(Position position, Stage from, Stage to) {
      this.axle = build.vehicle().axle(position.axle().orElseThrow());
      this.position = position;
      this.from = from;
      this.to = to;
      this.before = from.equipment(build, position);
      this.after = to.equipment(build, position);
      this.now = before.one(PartKind.SPRING, Spring.class);
      this.then = after.one(PartKind.SPRING, Spring.class);
      this.travel = derivation.springs(position.axle().orElseThrow());
      this.air = new AirCorner(build, position);
    }

    private boolean springChanges() {
      return then.isPresent() && !now.equals(then);
    }

    private boolean loadChanges() {
      return loads.changed(position.axle().orElseThrow(), from, to);
    }

    List<Line> lines() {
      List<Line> lines = new ArrayList<>();
      Quantity spring = springChanges() ? springLift(then.orElseThrow()) : null;
      if (spring != null) {
        lines.add(new Line("spring " + then.orElseThrow().number(), spring));
      }
      if (solvable()) {
        bySteps(lines);
        return lines;
      }
      packs(after, before, 1, lines);
      packs(before, after, -1, lines);
      if (air.any(from, to)) {
        byAir(lines);
      } else if (loadChanges()) {
        lines.add(new Line("load", loadLift()));
      }
      return lines;
    }

    /** Steel and air together: first at the load as it was, then at what it becomes. */
    private void byAir(List<Line> lines) {
      if (then.isEmpty()) {
        lines.add(new Line("air spring", loadLift()));
        return;
      }
      double over = standsOver() + known(lines);
      LiftClaim claim = claimUsed();
      Quantity was =
          claim == null || !claim.axleLoad().isKnown()
              ? loads.sprung(position, from)
              : loads.sprung(position, claim.axleLoad());
      Quantity set = withAir(was, over);
      lines.add(new Line(air.words(to), set));
      if (loadChanges()) {
        Quantity loaded = withAir(loads.sprung(position, to), over);
        lines.add(new Line("load", STEP.linear(1, loaded, -1, set)));
      }
    }

    private Quantity withAir(Quantity load, double over) {
      Spring steel = then.orElseThrow();
      Quantity deflection = SpringFigures.deflection(steel, loadBefore());
      Quantity ratio = axle.springMotionRatio();
      return air.lift(steel, deflection, ratio, load, to, standsOver(), over);
    }

    /** How far it stands over book height in the state before (mm); of the unknown, nothing. */
    private double standsOver() {
      return from == Stage.BOOK ? 0 : known(new Corner(position, Stage.BOOK, from).lines());
    }

    private static double known(List<Line> lines) {
      return lines.stream()
          .map(Line::lift)
          .filter(Quantity::isKnown)
          .mapToDouble(Quantity::value)
          .sum();
    }

    private void packs(Equipment with, Equipment without, double sign, List<Line> lines) {
      List<Part> there = new ArrayList<>(without.all(PartKind.SPRING_SPACER));
      there.addAll(without.all(PartKind.STRUT_TOP_SPACER));
      List<Part> here = new ArrayList<>(with.all(PartKind.SPRING_SPACER));
      here.addAll(with.all(PartKind.STRUT_TOP_SPACER));
      for (Part part : here) {
        if (!there.remove(part)) {
          Quantity thickness =
              part instanceof SpringSpacer ring
                  ? ring.thickness()
                  : ((StrutTopSpacer) part).thickness();
          lines.add(
              new Line(
                  part.kind().words() + " " + part.number() + (sign < 0 ? " taken out" : ""),
                  BY_SPACER.quotient(LENGTH, sign, thickness, axle.springMotionRatio())));
        }
      }
    }

    private Quantity springLift(Spring spring) {
      Quantity balanced = bySpring.get();
      LiftClaim claim = spring.claims();
      if (balanced.isKnown() || claim == null) {
        return balanced;
      }
      return claim.lift();
    }

    /** By the balance at the load as it was. */
    private Quantity balancedSpring() {
      Spring spring = then.orElseThrow();
      if (now.isEmpty() || spring.leaf() || now.get().leaf()) {
        return Figures.missing(
            LENGTH,
            "lift of " + spring.number(),
            "no lift is claimed, and a leaf pack's height cannot be worked out from its length",
            Instrument.TAPE,
            "measure hub to fender before and after");
      }
      if (travel.surveyed() && solvable()) {
        Quantity load = loads.sprung(position, from);
        return STEP.linear(
            1, stands(now.get(), packed(before), load), -1, stands(spring, packed(before), load));
      }
      return BY_SPRING.quotient(
          LENGTH,
          1,
          LOADED.linear(1, length(spring, force(from)), -1, length(now.get(), force(from))),
          axle.springMotionRatio());
    }

    private Quantity force(Stage stage) {
      return forces.computeIfAbsent(stage, when -> steel(loads.sprung(position, when)));
    }

    /** Force of the steel spring under a load, beside the air spring that was there before. */
    private Quantity steel(Quantity load) {
      Quantity left =
          air.fitted(from).isEmpty() ? load : air.left(load, from, standsOver(), standsOver());
      return ALONG.quotient(FORCE, 1, left, axle.springMotionRatio());
    }

    /**
     * The claim that the ledger goes by, of a spring that it cannot balance; null for any other.
     */
    private @Nullable LiftClaim claimUsed() {
      LiftClaim claim = springChanges() ? then.orElseThrow().claims() : null;
      return claim == null || bySpring.get().isKnown() ? null : claim;
    }

    /** A claim holds at the load it was stated at: from there the load goes on lowering. */
    private Quantity loadBefore() {
      LiftClaim claim = claimUsed();
      return claim == null || !claim.axleLoad().isKnown()
          ? force(from)
          : steel(loads.sprung(position, claim.axleLoad()));
    }

    private Quantity loadLift() {
      if (then.isEmpty()) {
        return Figures.missing(
            LENGTH,
            "lift by the load",
            "the rate of what carries this axle is not known",
            Instrument.TAPE,
            "measure hub to fender with the load and without");
      }
      return BY_LOAD.quotient(
          LENGTH,
          1,
          LOADED.linear(
              1,
              SpringFigures.deflection(then.get(), loadBefore()),
              -1,
              SpringFigures.deflection(then.get(), force(to))),
          axle.springMotionRatio());
    }

    /** Whether the balance can be solved on a surveyed path, for both springs. */
    private boolean solvable() {
      return travel.surveyed()
          && !air.any(from, to)
          && now.isPresent()
          && then.isPresent()
          && Stream.of(now.get(), then.get())
              .allMatch(
                  spring ->
                      !spring.leaf()
                          && spring.freeLength().isKnown()
                          && SpringFigures.missing(spring).isEmpty())
          && Stream.concat(
                  travel.needed().stream(),
                  Stream.of(
                      loads.sprung(position, from),
                      loads.sprung(position, to),
                      packed(before),
                      packed(after)))
              .allMatch(Quantity::isKnown);
    }

    private void bySteps(List<Line> lines) {
      Quantity load = loads.sprung(position, from);
      Spring spring = then.orElseThrow();
      boolean packing =
          !before.sameAs(after, PartKind.SPRING_SPACER)
              || !before.sameAs(after, PartKind.STRUT_TOP_SPACER);
      if (!packing && !loadChanges()) {
        return;
      }
      Quantity on = stands(spring, packed(before), load);
      Quantity onto = packing ? stands(spring, packed(after), load) : on;
      if (packing) {
        lines.add(new Line("spacers", STEP.linear(1, on, -1, onto)));
      }
      if (loadChanges()) {
        Quantity loaded = stands(spring, packed(after), loads.sprung(position, to));
        lines.add(new Line("load", STEP.linear(1, onto, -1, loaded)));
      }
    }

    /** Travel in balance, with the part that each of its inputs has in its uncertainty. */
    private Quantity stands(Spring spring, Quantity spacers, Quantity load) {
      double free = spring.freeLength().value();
      double solid = spring.solidLength().isKnown() ? spring.solidLength().value() : 1;
      RidePosition found =
          RideBalance.of(
              new FittedSpring(SpringFigures.curve(spring), free, solid, spacers.value()),
              travel.path(),
              load.value(),
              -stop(axle.droopTravel()),
              stop(axle.bumpTravel()));
      if (!(found instanceof RidePosition.Balanced balanced)) {
        return Figures.missing(
            LENGTH,
            "travel in balance",
            spring.number()
                + " ends on the "
                + ((RidePosition.Limited) found)
                    .limit()
                    .name()
                    .replace('_', ' ')
                    .toLowerCase(Locale.ROOT),
            Instrument.STATED,
            "take a spring for this load");
      }
      SpringTravel.Stand stand = travel.at(Constants.mm(balanced.travel()));
      Quantity deflection = DEFLECTED.linear(1, spring.freeLength(), 1, spacers, -1, stand.seats());
      Quantity part =
          AT_WHEEL.product(FORCE, 1, SpringFigures.force(spring, deflection), stand.ratio());
      return STANDS.of(
          LENGTH,
          balanced.travel(),
          new double[] {-1 / balanced.wheelRate()},
          SURPLUS.linear(1, part, -1, load));
    }

    private static double stop(@Nullable Quantity stop) {
      return stop != null && stop.isKnown() && stop.value() > 0 ? stop.value() : FAR;
    }
  }
}
