package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildSheet.FenderHeight;
import trammel.build.BuildSheet.State;
import trammel.build.Equipment;
import trammel.build.Trial;
import trammel.catalog.AxleProfile;
import trammel.catalog.AxleProfile.SpringSeat;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.BodyLiftKit;
import trammel.catalog.SuspensionPart.LiftClaim;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.fact.ClaimedLift;
import trammel.fact.RideHeight;
import trammel.fact.SpringSeating;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** The passive ride-height ledger in its simple form, lift claims, and what springs sit on. */
final class HeightFacts {
  private static final Formula BY_SPACER =
      new Formula(
          "lift of a spacer",
          "thickness / motion ratio",
          "own derivation: load and deflection of the spring stay as they were");
  private static final Formula LEDGER =
      new Formula("suspension lift", "sum of what the parts add", "definition");
  private static final Formula AFTER =
      new Formula(
          "height as proposed", "height as found + suspension lift + body lift", "definition");
  private static final Formula TIRE_LIFT =
      new Formula(
          "tire lift",
          "new − old tire radius",
          "definition; loaded radius moves alike within the tires' own tolerance");
  private static final Formula BODY = new Formula("body lift", "new − old blocks", "definition");
  private static final Formula OFF =
      new Formula("axle load against the claim's", "difference of the axle loads", "definition");
  private static final Formula ROOM = new Formula("room", "outer − inner", "definition");

  private final Derivation derivation;
  private final Build build;

  HeightFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Position position : Position.running()) {
      AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
      Quantity lift = lift(position);
      Quantity bodyLift = bodyLift(position);
      Quantity before = heightAsFound(position, axle);
      boolean touched =
          build.raised().containsKey(position)
              || !build.trial().equals(Trial.NONE)
              || build.changes(
                  position,
                  PartKind.SPRING,
                  PartKind.SPRING_SPACER,
                  PartKind.STRUT_TOP_SPACER,
                  PartKind.BODY_LIFT_KIT);
      Quantity tireLift =
          TIRE_LIFT.linear(
              1, derivation.after(position).radius, -1, derivation.before(position).radius);
      Quantity aimed =
          position.axle().orElseThrow() == Axle.FRONT
              ? build.aims().lift().front()
              : build.aims().lift().rear();
      derivation.facts.add(
          new RideHeight(
              Subject.of(position),
              Standing.ofChange(touched),
              List.of(),
              lift,
              bodyLift,
              tireLift,
              before,
              AFTER.linear(1, before, 1, lift, 1, bodyLift),
              aimed));
      seats(position, axle.springSeat());
    }
    for (Axle axle : Axle.values()) {
      claims(axle);
    }
  }

  /**
   * What the changes add between axle and body or frame at a corner, springs and spacers together.
   */
  Quantity lift(Position position) {
    return derivation.lifts.computeIfAbsent(position, this::workedOutLift);
  }

  private Quantity workedOutLift(Position position) {
    Quantity proposed = proposedLift(position);
    boolean front = position.axle().orElseThrow() == Axle.FRONT;
    double tried = front ? build.trial().frontLift() : build.trial().rearLift();
    boolean spacers = !build.after(position).all(PartKind.SPRING_SPACER).isEmpty();
    double thicker = spacers ? build.trial().springSpacer() : 0;
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    if (thicker != 0 && !axle.heightControlled()) {
      proposed =
          LEDGER.linear(
              1,
              proposed,
              1,
              BY_SPACER.quotient(LENGTH, 1, Constants.mm(thicker), axle.springMotionRatio()));
    }
    return tried == 0 ? proposed : LEDGER.linear(1, proposed, 1, Constants.mm(tried));
  }

  private Quantity proposedLift(Position position) {
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    Quantity raised = build.raised().get(position);
    if (axle.heightControlled()) {
      // The sensor's set point fixes the height: spacers move load between spring and fluid and
      // lift nothing.
      return raised == null
          ? Constants.mm(0).called("suspension lift (the set point fixes the height)")
          : raised.called("suspension lift");
    }
    List<Quantity> terms = new ArrayList<>();
    List<Double> signs = new ArrayList<>();
    if (raised != null) {
      terms.add(raised);
      signs.add(1.0);
    }
    collect(build.after(position), axle, 1, terms, signs);
    collect(build.before(position), axle, -1, terms, signs);
    springs(position, terms, signs);
    if (terms.isEmpty()) {
      return Constants.mm(0).called("suspension lift");
    }
    return LEDGER.linear(
        signs.stream().mapToDouble(Double::doubleValue).toArray(), terms.toArray(Quantity[]::new));
  }

  /**
   * How much farther down a wheel hangs: a plate above a strut takes the damper's whole stroke with
   * it, anything else leaves the stroke where it was.
   */
  Quantity droopAdded(Position position) {
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    Quantity added = NO_PLATE;
    for (int sign : new int[] {1, -1}) {
      Equipment equipment = sign > 0 ? build.after(position) : build.before(position);
      for (StrutTopSpacer plate : equipment.all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)) {
        added =
            LEDGER.linear(
                1,
                added,
                sign,
                BY_SPACER.quotient(LENGTH, 1, plate.thickness(), axle.springMotionRatio()));
      }
    }
    return added;
  }

  private static final Quantity NO_PLATE = Constants.mm(0).called("no plate above the strut");

  private static void collect(
      Equipment equipment,
      AxleProfile axle,
      double sign,
      List<Quantity> terms,
      List<Double> signs) {
    for (SpringSpacer spacer : equipment.all(PartKind.SPRING_SPACER, SpringSpacer.class)) {
      terms.add(BY_SPACER.quotient(LENGTH, 1, spacer.thickness(), axle.springMotionRatio()));
      signs.add(sign);
    }
    for (StrutTopSpacer spacer : equipment.all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)) {
      terms.add(BY_SPACER.quotient(LENGTH, 1, spacer.thickness(), axle.springMotionRatio()));
      signs.add(sign);
    }
  }

  private void springs(Position position, List<Quantity> terms, List<Double> signs) {
    Optional<Spring> now = build.before(position).one(PartKind.SPRING, Spring.class);
    Optional<Spring> then = build.after(position).one(PartKind.SPRING, Spring.class);
    if (then.isPresent() && !now.equals(then)) {
      LiftClaim claim = then.get().claims();
      terms.add(
          claim == null
              ? Figures.missing(
                  Dimension.LENGTH,
                  "lift of " + then.get().number(),
                  "no lift is claimed and the force balance of springs is not yet kept",
                  Instrument.TAPE,
                  "measure hub to fender before and after")
              : claim.lift());
      signs.add(1.0);
    }
  }

  /** What blocks between body and frame add at a corner. */
  Quantity bodyLift(Position position) {
    Quantity then = blocks(build.after(position));
    Quantity now = blocks(build.before(position));
    return !build.changes(position, PartKind.BODY_LIFT_KIT)
        ? Constants.mm(0).called("body lift")
        : BODY.linear(1, then, -1, now);
  }

  private static Quantity blocks(Equipment equipment) {
    return equipment
        .one(PartKind.BODY_LIFT_KIT, BodyLiftKit.class)
        .map(BodyLiftKit::thickness)
        .orElse(NO_BLOCKS);
  }

  private static final Quantity NO_BLOCKS = Constants.mm(0).called("no blocks");

  private Quantity heightAsFound(Position position, AxleProfile axle) {
    return build.measurements().heights().stream()
        .filter(height -> height.at() == position && height.state() == State.AS_FOUND)
        .map(FenderHeight::height)
        .findFirst()
        .orElse(axle.fenderHeight());
  }

  private void claims(Axle axle) {
    Quantity weighed =
        axle == Axle.FRONT ? build.found().weighed().front() : build.found().weighed().rear();
    Quantity load = weighed.isKnown() ? weighed : build.vehicle().axle(axle).bookLoad();
    for (Build.Line line : build.lines()) {
      boolean here =
          line.at().stream().anyMatch(position -> position.axle().filter(axle::equals).isPresent());
      LiftClaim claim = here ? claim(line.part()) : null;
      if (claim != null) {
        boolean over =
            claim.axleLoad().isKnown()
                && load.isKnown()
                && load.value() >= claim.axleLoad().value();
        derivation.facts.add(
            new ClaimedLift(
                Subject.of(axle, line.part().number()),
                Standing.WORSE_OR_NEW,
                List.of(line.part().number()),
                line.part().number(),
                claim.lift(),
                claim.axleLoad(),
                load,
                OFF.linear(over ? 1 : -1, load, over ? -1 : 1, claim.axleLoad())));
      }
    }
  }

  /** A spring's claim; what a spacer adds does not depend on the load. */
  private static @Nullable LiftClaim claim(Part part) {
    return part instanceof Spring spring ? spring.claims() : null;
  }

  private void seats(Position position, SpringSeat seat) {
    Equipment after = build.after(position);
    List<SpringSpacer> spacers = after.all(PartKind.SPRING_SPACER, SpringSpacer.class);
    Optional<Spring> spring = after.one(PartKind.SPRING, Spring.class);
    boolean stacked = spacers.size() > 1 && !spacers.stream().allMatch(SpringSpacer::stacks);
    Standing standing =
        Standing.ofChange(build.changes(position, PartKind.SPRING_SPACER, PartKind.SPRING));
    for (SpringSpacer spacer : spacers) {
      if (spring.isEmpty()) {
        continue;
      }
      Spring coil = spring.get();
      Decision end =
          spacer.end() == null || coil.lowerEnd() == null
              ? Decision.ABSENT
              : Decision.of(spacer.end() == coil.lowerEnd());
      derivation.facts.add(
          new SpringSeating(
              Subject.of(position, spacer.number()),
              standing,
              List.of(spacer.number(), coil.number()),
              spacer.number(),
              coil.number(),
              ROOM.linear(1, spacer.insideDiameter(), -1, seat.pinDiameter()),
              ROOM.linear(1, seat.cupDiameter(), -1, spacer.outsideDiameter()),
              ROOM.linear(1, coil.insideDiameter(), -1, spacer.collarDiameter()),
              ROOM.linear(1, spacer.outsideDiameter(), -1, coil.outsideDiameter()),
              end,
              words(spacer.end()),
              words(coil.lowerEnd()),
              stacked));
    }
  }

  private static String words(@Nullable Object end) {
    return end == null ? "unknown" : end.toString().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
