package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildSheet.ChainClass;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.VehicleProfile;
import trammel.catalog.VehicleProfile.Drive;
import trammel.catalog.VehicleProfile.SpareCarrier;
import trammel.catalog.WheelPart.Tire;
import trammel.fact.ChainRoom;
import trammel.fact.Coverage;
import trammel.fact.DriveMatch;
import trammel.fact.GearChange;
import trammel.fact.MeterReading;
import trammel.fact.PartOnVehicle;
import trammel.fact.SpareMatch;
import trammel.fact.SpareRoom;
import trammel.fact.Stability;
import trammel.fact.Standing;
import trammel.fact.TrackChange;
import trammel.fact.Vehicle;
import trammel.physics.StabilityFactor;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/**
 * What the change does to the vehicle as a whole: drive, meter, gearing, spare, outline, chains,
 * stability.
 */
final class VehicleFacts {
  private static final Formula DIFFERENCE =
      new Formula("difference of circumference", "|a − b| / larger", "definition");
  private static final Formula GROWTH =
      new Formula("circumference, new over old", "new / old", "definition");
  private static final Formula SHOWN =
      new Formula(
          "shown over true speed",
          "over-reading / growth",
          "UN R39, 5.3: a meter that over-reads by r still shows enough while growth ≤ r");
  private static final Formula MORE =
      new Formula("growth of circumference", "growth − 1", "definition");
  private static final Formula EFFECTIVE =
      new Formula("effective final drive", "final drive / growth", "shared/reference/gearing.csv");
  private static final Formula RESTORING =
      new Formula(
          "final drive that restores the gearing",
          "final drive · growth",
          "shared/reference/gearing.csv");
  private static final Formula ROOM = new Formula("room", "limit − size", "definition");
  private static final Formula PROUD =
      new Formula(
          "tread beyond the body",
          "outer edge − cover",
          "definition; the tread's own edge lies a little inboard of the section's");
  private static final Formula POKE =
      new Formula("change of poke", "new − old outer edge", "definition");
  private static final Formula CHAINS =
      new Formula("room for chains", "room on book tires − change of edge", "common practice");
  private static final Formula TRACK =
      new Formula("change of track", "−2 · change of effective offset", "definition of offset");
  private static final Formula SCRUB =
      new Formula(
          "change of scrub radius",
          "−change of effective offset",
          "own derivation: exact while camber and kingpin inclination stand");
  private static final Formula MEAN_LIFT =
      new Formula("mean lift of the body", "mean of the axles", "definition");
  private static final Formula HEIGHT =
      new Formula(
          "height of the center of gravity",
          "old + lift · raised share + tire lift",
          "own derivation: a suspension lift raises its share of the mass, tires raise everything");
  private static final Formula FACTOR =
      new Formula(
          "static stability factor",
          "track / (2 · height)",
          "NHTSA, rollover rulemaking, chapter 5: T/2h");
  private static final Formula CHANGE =
      new Formula("change of the static stability factor", "after / before − 1", "definition");

  private final Derivation derivation;
  private final Build build;
  private final VehicleProfile vehicle;

  VehicleFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.vehicle = build.vehicle();
  }

  void add() {
    boolean tires =
        build.changes(Axle.FRONT, PartKind.TIRE) || build.changes(Axle.REAR, PartKind.TIRE);
    Standing standing = Standing.ofChange(tires);
    WheelEnd front = derivation.after(Position.FRONT_LEFT);
    WheelEnd rear = derivation.after(Position.REAR_LEFT);
    drive(front, rear, standing);
    WheelEnd driven = vehicle.drive() == Drive.FRONT ? front : rear;
    WheelEnd drivenBefore =
        derivation.before(
            vehicle.drive() == Drive.FRONT ? Position.FRONT_LEFT : Position.REAR_LEFT);
    if (!Objects.equals(driven.tire, drivenBefore.tire)) {
      meter(driven, drivenBefore, standing);
    }
    if (build.hasSpare()) {
      spare(driven);
    }
    for (Position position : Position.running()) {
      coverage(position);
    }
    for (Axle axle : Axle.values()) {
      track(axle);
      chains(axle);
    }
    stability();
    onSheet();
  }

  /** The vehicle itself, and every part that is on it after the change. */
  private void onSheet() {
    String place = build.found().registeredAt();
    derivation.facts.add(
        new Vehicle(
            Subject.VEHICLE,
            Standing.ofChange(!build.lines().isEmpty() || !build.raised().isEmpty()),
            List.of(),
            vehicle.vehicle(),
            vehicle.vehicleClass(),
            vehicle.drive(),
            vehicle.grossRating(),
            vehicle.wheelbase(),
            place == null ? "" : place));
    for (Position position : Position.values()) {
      for (Part part : build.after(position).everything()) {
        boolean there = build.before(position).all(part.kind()).contains(part);
        derivation.facts.add(
            new PartOnVehicle(
                Subject.of(position, part.kind().toString()),
                Standing.ofChange(!there),
                List.of(part.number()),
                part.number(),
                part.kind()));
      }
    }
  }

  private static Quantity difference(Quantity a, Quantity b) {
    boolean known = a.isKnown() && b.isKnown();
    boolean first = known && a.value() >= b.value();
    Quantity larger = first ? a : b;
    Quantity smaller = first ? b : a;
    double l = known ? larger.value() : 1;
    double s = known ? smaller.value() : 1;
    return DIFFERENCE.of(RATIO, 1 - s / l, new double[] {s / (l * l), -1 / l}, larger, smaller);
  }

  private void drive(WheelEnd front, WheelEnd rear, Standing standing) {
    Quantity limit =
        vehicle.driveMatch().isKnown()
            ? vehicle.driveMatch()
            : Constants.percent(1).called("usual limit");
    derivation.facts.add(
        new DriveMatch(
            Subject.VEHICLE,
            standing,
            numbers(front, rear),
            vehicle.drive() == Drive.FULL_TIME,
            vehicle.drive() == Drive.PART_TIME,
            difference(front.circumference, rear.circumference),
            limit));
  }

  private static List<String> numbers(WheelEnd... ends) {
    return java.util.Arrays.stream(ends)
        .filter(end -> end.tire != null)
        .map(end -> end.tire.number())
        .distinct()
        .toList();
  }

  private void meter(WheelEnd now, WheelEnd then, Standing standing) {
    Quantity growth = GROWTH.quotient(RATIO, 1, now.circumference, then.circumference);
    Quantity shown = SHOWN.quotient(RATIO, 1, vehicle.overRead(), growth);
    derivation.facts.add(
        new MeterReading(
            Subject.VEHICLE, standing, numbers(now), growth, vehicle.overRead(), shown));
    double k = growth.isKnown() ? growth.value() : 1;
    Quantity more = MORE.of(RATIO, k - 1, new double[] {1}, growth);
    derivation.facts.add(
        new GearChange(
            Subject.VEHICLE,
            standing,
            numbers(now),
            more,
            vehicle.finalDrive(),
            EFFECTIVE.quotient(RATIO, 1, vehicle.finalDrive(), growth),
            RESTORING.product(RATIO, 1, vehicle.finalDrive(), growth)));
  }

  private void spare(WheelEnd road) {
    WheelEnd spare = derivation.after(Position.SPARE);
    if (spare.tire == null) {
      return;
    }
    Tire tire = spare.tire;
    SpareCarrier carrier = vehicle.spare();
    if (carrier.kind() == SpareCarrier.Kind.NONE) {
      return;
    }
    Standing standing =
        Standing.ofChange(build.changes(Position.SPARE, PartKind.TIRE, PartKind.WHEEL));
    Quantity wheelMass =
        spare.wheel == null
            ? Figures.missing(
                trammel.quantity.Dimension.MASS,
                "mass of the spare's wheel",
                "no wheel is known",
                trammel.quantity.Instrument.WEIGHED,
                "weigh the spare")
            : spare.wheel.mass();
    String where = words(carrier.kind());
    derivation.facts.add(
        new SpareRoom(
            Subject.of(Position.SPARE),
            standing,
            spare.numbers(),
            tire.number(),
            where,
            ROOM.linear(1, carrier.maxDiameter(), -1, spare.diameter),
            ROOM.linear(1, carrier.maxWidth(), -1, spare.width),
            ROOM.linear(new double[] {1, -1, -1}, carrier.maxMass(), tire.mass(), wheelMass),
            carrier.kind() != SpareCarrier.Kind.WELL));
    boolean roadChanged =
        build.changes(Axle.FRONT, PartKind.TIRE)
            || build.changes(Axle.REAR, PartKind.TIRE)
            || standing == Standing.WORSE_OR_NEW;
    derivation.facts.add(
        new SpareMatch(
            Subject.of(Position.SPARE),
            Standing.ofChange(roadChanged),
            spare.numbers(),
            tire.designation().toString(),
            build.spareRotates(),
            vehicle.drive() == Drive.FULL_TIME,
            difference(spare.circumference, road.circumference)));
  }

  private static String words(SpareCarrier.@Nullable Kind kind) {
    return kind == null
        ? "spare's carrier"
        : switch (kind) {
          case UNDER_FLOOR -> "carrier under the floor";
          case TAILGATE -> "carrier on the tailgate";
          case WELL -> "spare's well";
          case NONE -> "place where a spare would go";
        };
  }

  private void coverage(Position position) {
    AxleProfile axle = vehicle.axle(position.axle().orElseThrow());
    WheelEnd now = derivation.after(position);
    WheelEnd then = derivation.before(position);
    boolean moved = build.changes(position, PartKind.TIRE, PartKind.WHEEL, PartKind.WHEEL_SPACER);
    derivation.facts.add(
        new Coverage(
            Subject.of(position),
            Standing.ofChange(moved),
            now.numbers(),
            PROUD.linear(1, now.outer, -1, axle.treadCover()),
            moved ? POKE.linear(1, now.outer, -1, then.outer) : Constants.mm(0)));
  }

  private void track(Axle axle) {
    WheelEnd now = derivation.after(Position.of(axle, Side.LEFT));
    WheelEnd then = derivation.before(Position.of(axle, Side.LEFT));
    boolean moved = build.changes(axle, PartKind.WHEEL, PartKind.WHEEL_SPACER);
    Quantity none = Constants.mm(0);
    derivation.facts.add(
        new TrackChange(
            Subject.of(axle),
            Standing.ofChange(moved),
            now.numbers(),
            moved ? TRACK.linear(-2, now.offset, 2, then.offset) : none,
            moved ? SCRUB.linear(-1, now.offset, 1, then.offset) : none));
  }

  private void chains(Axle axle) {
    ChainClass wanted = build.aims().chains();
    boolean driven = vehicle.drive() == Drive.FRONT ? axle == Axle.FRONT : axle == Axle.REAR;
    if (wanted == null || !driven) {
      return;
    }
    WheelEnd now = derivation.after(Position.of(axle, Side.LEFT));
    WheelEnd then = new WheelEnd(build.bookAt(Position.of(axle, Side.LEFT)), derivation.figures);
    // Side-wall room that chains of a class need (mm): shared/reference/chain-classes.csv.
    double needed =
        switch (wanted) {
          case S -> 15;
          case U -> 23;
          case W -> 38.1;
        };
    derivation.facts.add(
        new ChainRoom(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            now.numbers(),
            wanted.name(),
            CHAINS.linear(
                new double[] {1, -1, 1}, vehicle.axle(axle).chainRoom(), now.inner, then.inner),
            Constants.mm(needed)));
  }

  private void stability() {
    HeightFacts heights = derivation.heights();
    Quantity lift =
        MEAN_LIFT.linear(
            new double[] {0.5, 0.5, 0.5, 0.5},
            heights.lift(Position.FRONT_LEFT),
            heights.lift(Position.REAR_LEFT),
            heights.bodyLift(Position.FRONT_LEFT),
            heights.bodyLift(Position.REAR_LEFT));
    WheelEnd now = derivation.after(Position.FRONT_LEFT);
    WheelEnd then = derivation.before(Position.FRONT_LEFT);
    Quantity height = vehicle.centerOfGravity();
    double share = vehicle.raisedShare().isKnown() ? vehicle.raisedShare().value() : 0;
    double up = lift.isKnown() ? lift.value() : 0;
    double rise =
        height.isKnown() && now.radius.isKnown() && then.radius.isKnown()
            ? height.value() + up * share + now.radius.value() - then.radius.value()
            : 1;
    Quantity raised =
        HEIGHT.of(
            LENGTH,
            rise,
            new double[] {1, share, up, 1, -1},
            height,
            lift,
            vehicle.raisedShare(),
            now.radius,
            then.radius);
    Quantity track = vehicle.front().track();
    Quantity wider =
        now.offset == then.offset
            ? track
            : TRACK.linear(new double[] {1, -2, 2}, track, now.offset, then.offset);
    Quantity before = factor(track, height);
    Quantity after = factor(wider, raised);
    boolean touched = false;
    for (Position position : Position.running()) {
      touched |=
          build.changes(
              position,
              PartKind.TIRE,
              PartKind.WHEEL,
              PartKind.WHEEL_SPACER,
              PartKind.SPRING,
              PartKind.SPRING_SPACER,
              PartKind.STRUT_TOP_SPACER,
              PartKind.BODY_LIFT_KIT);
    }
    double ratio = before.isKnown() && after.isKnown() ? after.value() / before.value() : 1;
    double b = before.isKnown() ? before.value() : 1;
    derivation.facts.add(
        new Stability(
            Subject.VEHICLE,
            Standing.ofChange(touched),
            List.of(),
            before,
            after,
            CHANGE.of(RATIO, ratio - 1, new double[] {1 / b, -ratio / b}, after, before)));
  }

  private static Quantity factor(Quantity track, Quantity height) {
    boolean known = track.isKnown() && height.isKnown();
    double t = known ? track.value() : 1;
    double h = known ? height.value() : 1;
    return FACTOR.of(
        RATIO,
        StabilityFactor.of(t, h),
        new double[] {StabilityFactor.perTrack(t, h), StabilityFactor.perHeight(t, h)},
        track,
        height);
  }
}
