package trammel.derive;

import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Dimension.TIME;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.PartKind;
import trammel.catalog.VehicleProfile.VehicleClass;
import trammel.catalog.WheelPart.Tire;
import trammel.catalog.WheelPart.Tire.Pattern;
import trammel.catalog.WheelPart.Wheel;
import trammel.designation.RimCode;
import trammel.designation.TireDesignation;
import trammel.fact.Standing;
import trammel.fact.TireCapacity;
import trammel.fact.TireOnRim;
import trammel.fact.TirePair;
import trammel.fact.TireSpeed;
import trammel.fact.TireState;
import trammel.fact.WheelRating;
import trammel.physics.TireLoad;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** Tires on their rims, under their load, at their speed, and against each other on an axle. */
final class TireFacts {
  private static final Formula OVER =
      new Formula(
          "rim over the narrowest listed", "rim width − narrowest", "tire maker's rim list");
  private static final Formula UNDER =
      new Formula("rim under the widest listed", "widest − rim width", "tire maker's rim list");
  private static final Formula WIDTH_RATIO =
      new Formula(
          "rim width over section width",
          "rim width / nominal section width",
          "shared/reference/rim-widths-80-series.csv");
  private static final Formula CAPACITY =
      new Formula(
          "tire capacity of the axle",
          "left + right load rating",
          "49 CFR 571.110: sum of the load ratings");
  private static final Formula DERATED =
      new Formula(
          "tire capacity of the axle",
          "(left + right load rating) / 1.10",
          "49 CFR 571.120 S5.1.2: a passenger tire on a light truck");
  private static final Formula AT_PLACARD =
      new Formula(
          "capacity at placard pressure",
          "capacity · (pressure / reference pressure)^n",
          "TRA and ETRTO load formulas, shared/reference/load-inflation-lt235-85r16.csv");
  private static final Formula NEEDED =
      new Formula(
          "cold pressure needed",
          "reference pressure · (axle rating / capacity)^(1/n)",
          "TRA and ETRTO load formulas, shared/reference/load-inflation-lt235-85r16.csv");
  private static final Formula HALF =
      new Formula("half the heaviest axle rating", "heaviest axle rating / 2", "SAE J2530, scope");
  private static final Formula TREAD =
      new Formula("tread difference", "deeper − shallower", "definition");

  private final Derivation derivation;
  private final Build build;

  TireFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Axle axle : Axle.values()) {
      Tire left = derivation.after(Position.of(axle, Side.LEFT)).tire;
      Tire right = derivation.after(Position.of(axle, Side.RIGHT)).tire;
      Standing standing = Standing.ofChange(build.changes(axle, PartKind.TIRE));
      if (left != null && right != null) {
        pair(axle, left, right, standing);
        capacity(axle, left, right, standing);
      }
    }
    for (Position position : Position.values()) {
      WheelEnd end = derivation.after(position);
      if (end.tire != null) {
        Standing standing = Standing.ofChange(build.changes(position, PartKind.TIRE));
        state(position, end.tire, standing);
        if (end.wheel != null) {
          onRim(position, end.tire, end.wheel);
        }
        if (position != Position.SPARE) {
          derivation.facts.add(
              new TireSpeed(
                  Subject.of(position, "tire"),
                  standing,
                  List.of(end.tire.number()),
                  end.tire.number(),
                  end.tire.designation().speedSymbol().map(Object::toString).orElse("none"),
                  Figures.speed(end.tire),
                  build.vehicle().topSpeed()));
        }
      }
    }
  }

  private void onRim(Position position, Tire tire, Wheel wheel) {
    Standing standing = Standing.ofChange(build.changes(position, PartKind.TIRE, PartKind.WHEEL));
    Quantity rim = derivation.figures.rimWidth(wheel);
    double nominal = tire.designation().sectionWidthMillimeters();
    Quantity ratio = WIDTH_RATIO.of(RATIO, rim.value() / nominal, new double[] {1 / nominal}, rim);
    RimCode mine = tire.designation().rim();
    RimCode theirs = wheel.size().code();
    boolean listed = tire.rimFrom().isKnown() || tire.rimTo().isKnown();
    derivation.facts.add(
        new TireOnRim(
            Subject.of(position, "tire"),
            standing,
            List.of(tire.number(), wheel.number()),
            tire.number(),
            wheel.number(),
            mine.toString(),
            theirs.toString(),
            Decision.of(mine.equals(theirs)),
            listed,
            rim,
            OVER.linear(1, rim, -1, tire.rimFrom()),
            UNDER.linear(1, tire.rimTo(), -1, rim),
            ratio));
  }

  private void pair(Axle axle, Tire left, Tire right, Standing standing) {
    TireDesignation l = left.designation();
    TireDesignation r = right.designation();
    boolean size = l.size().equals(r.size()) && l.rim().equals(r.rim());
    Decision load =
        l.loadIndex().isEmpty() || r.loadIndex().isEmpty()
            ? (left.equals(right) ? Decision.MET : Decision.ABSENT)
            : Decision.of(l.loadIndex().equals(r.loadIndex()));
    boolean deeperLeft =
        !left.treadDepth().isKnown()
            || !right.treadDepth().isKnown()
            || left.treadDepth().value() >= right.treadDepth().value();
    derivation.facts.add(
        new TirePair(
            Subject.of(axle),
            standing,
            List.of(left.number(), right.number()),
            l.toString(),
            r.toString(),
            Decision.of(size),
            Decision.of(l.construction() == r.construction()),
            load,
            TREAD.linear(
                deeperLeft ? 1 : -1, left.treadDepth(), deeperLeft ? -1 : 1, right.treadDepth())));
  }

  private void capacity(Axle axle, Tire left, Tire right, Standing standing) {
    AxleProfile profile = build.vehicle().axle(axle);
    boolean derated =
        build.vehicle().vehicleClass() == VehicleClass.LIGHT_TRUCK
            && (left.designation().family().isPassenger()
                || right.designation().family().isPassenger());
    double share = derated ? 1 / TireLoad.PASSENGER_ON_TRUCK_DIVISOR : 1;
    Quantity capacity =
        (derated ? DERATED : CAPACITY)
            .linear(share, derivation.figures.load(left), share, derivation.figures.load(right));
    TireLoad.Standard standard = Figures.standard(left.designation());
    Quantity reference = Figures.loadPressure(left);
    Quantity atPlacard = carried(standard, capacity, reference, profile.placard());
    Quantity needed = needed(standard, capacity, reference, profile.rating());
    boolean changed = build.changes(axle, PartKind.TIRE);
    derivation.facts.add(
        new TireCapacity(
            Subject.of(axle),
            standing,
            List.of(left.number()),
            left.number(),
            derated,
            capacity,
            profile.rating(),
            profile.placard(),
            atPlacard,
            needed,
            changed));
    for (Position position : Position.of(axle)) {
      Wheel wheel = derivation.after(position).wheel;
      if (wheel != null) {
        rating(position, wheel, needed);
      }
    }
  }

  private void rating(Position position, Wheel wheel, Quantity needed) {
    Standing standing = Standing.ofChange(build.changes(position, PartKind.WHEEL, PartKind.TIRE));
    Quantity front = build.vehicle().front().rating();
    Quantity rear = build.vehicle().rear().rating();
    boolean frontHeavier = front.isKnown() && (!rear.isKnown() || front.value() >= rear.value());
    Quantity share = HALF.linear(frontHeavier ? 0.5 : 0, front, frontHeavier ? 0 : 0.5, rear);
    derivation.facts.add(
        new WheelRating(
            Subject.of(position, "wheel"),
            standing,
            List.of(wheel.number()),
            wheel.number(),
            wheel.loadRating(),
            share,
            wheel.maxPressure(),
            needed));
  }

  private static Quantity carried(
      TireLoad.Standard standard, Quantity capacity, Quantity reference, Quantity pressure) {
    boolean known = capacity.isKnown() && reference.isKnown() && pressure.isKnown();
    double n = standard.exponent();
    double value =
        known
            ? TireLoad.capacity(standard, capacity.value(), reference.value(), pressure.value())
            : 0;
    double perPressure =
        known
            ? TireLoad.capacityPerPressure(
                standard, capacity.value(), reference.value(), pressure.value())
            : 0;
    double[] partials =
        known
            ? new double[] {value / capacity.value(), -n * value / reference.value(), perPressure}
            : new double[3];
    return AT_PLACARD.of(MASS, value, partials, capacity, reference, pressure);
  }

  private static Quantity needed(
      TireLoad.Standard standard, Quantity capacity, Quantity reference, Quantity rating) {
    boolean known = capacity.isKnown() && reference.isKnown() && rating.isKnown();
    OptionalDouble pressure =
        known
            ? TireLoad.pressureFor(standard, capacity.value(), reference.value(), rating.value())
            : OptionalDouble.empty();
    if (known && pressure.isEmpty()) {
      // The tires are too weak at any pressure, which is for another rule to say; they want all
      // they may have.
      return reference.called("cold pressure needed");
    }
    double value = pressure.orElse(0);
    double n = standard.exponent();
    double[] partials =
        known
            ? new double[] {
              -value / (n * capacity.value()),
              value / reference.value(),
              value / (n * rating.value())
            }
            : new double[3];
    return NEEDED.of(PRESSURE, value, partials, capacity, reference, rating);
  }

  private void state(Position position, Tire tire, Standing standing) {
    Quantity age =
        Optional.ofNullable(tire.made())
            .map(
                made ->
                    Figures.stated(
                        "age of " + tire.number(),
                        TIME,
                        (double) ChronoUnit.DAYS.between(made, derivation.on),
                        Instrument.READ,
                        tire.listing().place(),
                        tire.number() + ".made"))
            .orElseGet(
                () ->
                    Figures.missing(
                        Dimension.TIME,
                        "age of " + tire.number(),
                        "no date of manufacture is stated",
                        Instrument.READ,
                        "read the four digits after DOT on the sidewall"));
    derivation.facts.add(
        new TireState(
            Subject.of(position, "tire"),
            standing,
            List.of(tire.number()),
            tire.number(),
            tire.usedWithTube(),
            tire.pattern() == Pattern.DIRECTIONAL,
            tire.pattern() == Pattern.ASYMMETRIC,
            tire.made() != null,
            age));
  }
}
