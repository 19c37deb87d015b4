package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.LeafBlock;
import trammel.catalog.VehicleProfile;
import trammel.catalog.VehicleProfile.Drive;
import trammel.fact.LegalMeasures;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/**
 * What statutes measure. A height is the profile's and what raises that place since: suspension and
 * tires raise frame and bumpers, blocks raise what is on the body besides. Bumpers and headlamps
 * rise with the axle that they stand near.
 */
final class LegalFacts {
  private static final Formula LIFT =
      new Formula("suspension lift of the axle", "mean of both sides", "definition");
  private static final Formula BLOCKS =
      new Formula("body lift", "mean of both ends − the maker's", "definition");
  private static final Formula DIAMETER =
      new Formula("change of tire diameter", "fitted − the maker's", "definition");
  private static final Formula TIRE_LIFT =
      new Formula("tire lift", "change of tire diameter / 2", "definition");
  private static final Formula TOTAL =
      new Formula(
          "total raise", "suspension lift + body lift + tire lift at one end", "definition");
  private static final Formula TRACK =
      new Formula(
          "change of track", "2 · (the maker's effective offset − fitted)", "definition of offset");
  private static final Formula BUMP =
      new Formula("bump left", "rise at the stop + lift over book height", "definition");
  private static final Formula DROOP =
      new Formula("droop left", "hang − lift over book height", "definition");
  private static final Formula SHARE =
      new Formula("share of travel kept", "left / the maker's", "definition");
  private static final Formula MIDWAY =
      new Formula(
          "height midway",
          "the profile's + mean of both axles' suspension and tire lift",
          "own derivation: midway between the axles");
  private static final Formula AT_AXLE =
      new Formula(
          "height near an axle",
          "the profile's + suspension lift + tire lift of the axle",
          "own derivation: what stands near an axle rises with it");
  private static final Formula ON_BODY =
      new Formula("height on the body", "height + body lift", "definition");
  private static final Formula FENDER =
      new Formula(
          "fender over ground", "hub to fender + tire radius, mean of both sides", "definition");
  private static final Formula FENDERS =
      new Formula("front fender over rear fender", "front − rear", "definition");
  private static final Formula PER_WHEELBASE =
      new Formula("tire diameter over wheelbase", "diameter / wheelbase", "definition");

  private final Derivation derivation;
  private final Build build;
  private final VehicleProfile vehicle;
  private final HeightFacts heights;
  private final Map<Axle, Quantity> lifts = new EnumMap<>(Axle.class);
  private final Map<Axle, Quantity> diameters = new EnumMap<>(Axle.class);
  private final Map<Axle, Quantity> tireLifts = new EnumMap<>(Axle.class);
  private final List<Quantity> bumps = new ArrayList<>();
  private final List<Quantity> droops = new ArrayList<>();

  LegalFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.vehicle = build.vehicle();
    this.heights = derivation.heights();
  }

  void add() {
    for (Axle axle : Axle.values()) {
      Standings left = new Standings(derivation, Position.of(axle, Side.LEFT));
      Standings right = new Standings(derivation, Position.of(axle, Side.RIGHT));
      lifts.put(axle, LIFT.linear(0.5, left.liftAfter(), 0.5, right.liftAfter()));
      travel(Position.of(axle, Side.LEFT), left);
      travel(Position.of(axle, Side.RIGHT), right);
      diameters.put(axle, diameterChange(axle));
      tireLifts.put(axle, TIRE_LIFT.linear(0.5, diameterChange(axle)));
    }
    Quantity blocks = bodyLift();
    VehicleProfile.Outline outline = vehicle.outline();
    derivation.facts.add(
        new LegalMeasures(
            Subject.VEHICLE,
            Standing.ofChange(!build.lines().isEmpty() || !build.raised().isEmpty()),
            List.of(),
            vehicle.vehicleClass(),
            vehicle.drive() == Drive.PART_TIME || vehicle.drive() == Drive.FULL_TIME,
            vehicle.grossRating(),
            outline.netMass(),
            of(lifts, Axle.FRONT),
            of(lifts, Axle.REAR),
            blocks,
            greatest(of(tireLifts, Axle.FRONT), of(tireLifts, Axle.REAR)),
            greatest(total(Axle.FRONT, blocks), total(Axle.REAR, blocks)),
            greatest(of(diameters, Axle.FRONT), of(diameters, Axle.REAR)),
            perWheelbase(),
            trackChange(Axle.FRONT),
            trackChange(Axle.REAR),
            least(bumps),
            least(droops),
            midway(outline.frameHeight()),
            ON_BODY.linear(1, midway(outline.lowestBody()), 1, blocks),
            near(outline.frameEndFront(), Axle.FRONT),
            near(outline.frameEndRear(), Axle.REAR),
            near(outline.bumperBottomFront(), Axle.FRONT),
            near(outline.bumperBottomRear(), Axle.REAR),
            outline.bumperTallness(),
            ON_BODY.linear(1, outline.floorOverFrame(), 1, blocks),
            FENDERS.linear(1, fender(Axle.FRONT), -1, fender(Axle.REAR)),
            ON_BODY.linear(1, near(outline.headlampCenter(), Axle.FRONT), 1, blocks),
            leafBlock(),
            added(PartKind.WHEEL_SPACER, Axle.values()),
            added(PartKind.SPRING_SPACER, Axle.values()),
            added(PartKind.LEAF_BLOCK, Axle.FRONT)));
  }

  private static Quantity of(Map<Axle, Quantity> each, Axle axle) {
    return each.getOrDefault(axle, Constants.mm(0));
  }

  /** The share of bump and of droop that a wheel has kept of what its maker gave it. */
  private void travel(Position position, Standings standings) {
    Equipment book = build.bookAt(position);
    Equipment fitted = build.after(position);
    boolean same =
        isNothing(standings.liftAfter())
            && Stream.of(TravelFacts.TOUCHING).allMatch(kind -> fitted.sameAs(book, kind));
    if (same) {
      bumps.add(Constants.number(1).called("bump travel kept"));
      droops.add(Constants.number(1).called("droop travel kept"));
      return;
    }
    CornerTravel had = derivation.ends(position, Stage.BOOK);
    CornerTravel has = standings.after();
    bumps.add(
        SHARE.quotient(
            RATIO, 1, BUMP.linear(1, has.stopRise(), 1, standings.liftAfter()), had.stopRise()));
    droops.add(
        SHARE.quotient(
            RATIO,
            1,
            DROOP.linear(1, has.droop().hang(), -1, standings.liftAfter()),
            had.droop().hang()));
  }

  private static boolean isNothing(Quantity length) {
    return length.isKnown() && length.value() == 0 && length.expanded() == 0;
  }

  private Quantity bodyLift() {
    Position front = Position.FRONT_LEFT;
    Position rear = Position.REAR_LEFT;
    return BLOCKS.linear(
        new double[] {0.5, 0.5, -0.5, -0.5},
        HeightFacts.blocks(build.after(front)),
        HeightFacts.blocks(build.after(rear)),
        HeightFacts.blocks(build.bookAt(front)),
        HeightFacts.blocks(build.bookAt(rear)));
  }

  private WheelEnd book(Axle axle) {
    return new WheelEnd(build.bookAt(Position.of(axle, Side.LEFT)), derivation.figures);
  }

  private WheelEnd fitted(Axle axle) {
    return derivation.after(Position.of(axle, Side.LEFT));
  }

  private Quantity diameterChange(Axle axle) {
    return DIAMETER.linear(1, fitted(axle).diameter, -1, book(axle).diameter);
  }

  private Quantity total(Axle axle, Quantity blocks) {
    return TOTAL.linear(1, of(lifts, axle), 1, blocks, 1, of(tireLifts, axle));
  }

  private Quantity perWheelbase() {
    return PER_WHEELBASE.quotient(
        RATIO,
        1,
        greatest(fitted(Axle.FRONT).diameter, fitted(Axle.REAR).diameter),
        vehicle.wheelbase());
  }

  private Quantity trackChange(Axle axle) {
    return TRACK.linear(2, book(axle).offset, -2, fitted(axle).offset);
  }

  private Quantity midway(Quantity height) {
    return MIDWAY.linear(
        new double[] {1, 0.5, 0.5, 0.5, 0.5},
        height,
        of(lifts, Axle.FRONT),
        of(lifts, Axle.REAR),
        of(tireLifts, Axle.FRONT),
        of(tireLifts, Axle.REAR));
  }

  private Quantity near(Quantity height, Axle axle) {
    return AT_AXLE.linear(1, height, 1, of(lifts, axle), 1, of(tireLifts, axle));
  }

  private Quantity fender(Axle axle) {
    Position left = Position.of(axle, Side.LEFT);
    Position right = Position.of(axle, Side.RIGHT);
    return FENDER.linear(
        new double[] {0.5, 0.5, 0.5, 0.5},
        heights.proposed(left),
        heights.proposed(right),
        derivation.after(left).radius,
        derivation.after(right).radius);
  }

  private Quantity leafBlock() {
    Quantity thickest = Quantity.exact(LENGTH, 0).called("no block under a leaf spring");
    for (Position position : Position.running()) {
      if (!build.after(position).sameAs(build.bookAt(position), PartKind.LEAF_BLOCK)) {
        for (LeafBlock block : build.after(position).all(PartKind.LEAF_BLOCK, LeafBlock.class)) {
          thickest = greatest(thickest, block.thickness());
        }
      }
    }
    return thickest;
  }

  private Decision added(PartKind kind, Axle... axles) {
    for (Position position : Position.running()) {
      Equipment fitted = build.after(position);
      if (List.of(axles).contains(position.axle().orElseThrow())
          && !fitted.all(kind).isEmpty()
          && !fitted.sameAs(build.bookAt(position), kind)) {
        return Decision.MET;
      }
    }
    return Decision.NOT_MET;
  }

  /** The greater; the one that is not known, where there is one. */
  private static Quantity greatest(Quantity a, Quantity b) {
    if (!a.isKnown() || !b.isKnown()) {
      return a.isKnown() ? b : a;
    }
    return a.value() >= b.value() ? a : b;
  }

  private static Quantity least(List<Quantity> shares) {
    Quantity least = shares.get(0);
    for (Quantity share : shares) {
      boolean less = least.isKnown() && (!share.isKnown() || share.value() < least.value());
      least = less ? share : least;
    }
    return least;
  }
}
