package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.UnderbodyPoint;
import trammel.catalog.UnderbodyPoint.FixedTo;
import trammel.fact.GroundRoom;
import trammel.fact.RampAngle;
import trammel.fact.Standing;
import trammel.physics.Underbody;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/**
 * Ground clearance and the angles under the vehicle, today and as proposed, by the left wheels. The
 * tire's free radius stands for its loaded one, which moves an angle by about a tenth of a degree
 * and its change by less.
 */
final class UnderbodyFacts {
  private static final Formula PLACE = new Formula("place", "fore of the front axle", "definition");
  private static final Formula SHARE =
      new Formula(
          "share of the rear axle", "distance behind the front axle / wheelbase", "definition");
  private static final Formula RAISED =
      new Formula("raised at an axle", "suspension, body and tire together", "definition");
  private static final Formula DIFFERENCE = new Formula("difference", "new − old", "definition");
  private static final Formula CHANGE =
      new Formula("change of ground clearance", "as proposed − today", "definition");
  private static final Formula TURN =
      new Formula("change of the angle", "as proposed − today", "definition");
  private static final Formula BETWEEN =
      new Formula("raised at the point", "between the axles in proportion", "definition");
  private static final Formula HEIGHT =
      new Formula("height over the ground", "the book's + raised there", "definition");
  private static final Formula ANGLE_UNDER =
      new Formula("angle under the vehicle", "tangent to the tires", "Underbody: 49 CFR 523.2");

  private final Derivation derivation;
  private final Build build;
  private final Quantity wheelbase;
  private final Map<Axle, WheelEnd> book = new EnumMap<>(Axle.class);
  private final Map<Axle, Standings> standings = new EnumMap<>(Axle.class);

  UnderbodyFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.wheelbase = build.vehicle().wheelbase();
    for (Axle axle : Axle.values()) {
      Position left = Position.of(axle, Side.LEFT);
      book.put(axle, new WheelEnd(build.bookAt(left), derivation.figures));
      standings.put(axle, new Standings(derivation, left));
    }
  }

  void add() {
    boolean moved = false;
    for (Axle axle : Axle.values()) {
      for (FixedTo fixed : FixedTo.values()) {
        moved |= !TravelFacts.stays(raised(axle, fixed, true, raised(axle, fixed, false, null)));
      }
    }
    if (!moved) {
      return;
    }
    List<UnderbodyPoint> points = build.vehicle().underbody();
    for (UnderbodyPoint point : points) {
      Quantity before = height(point, false);
      Quantity after = height(point, true);
      Quantity change = CHANGE.linear(1, after, -1, before);
      derivation.facts.add(
          new GroundRoom(
              new Subject("vehicle", point.point().replace(' ', '-')),
              Standing.ofChange(falls(change)),
              List.of(),
              point.point(),
              before,
              after,
              change));
    }
    for (Which which : Which.values()) {
      angle(which, points);
    }
  }

  private static boolean falls(Quantity change) {
    return !change.isKnown() || change.value() < 0;
  }

  private static Position left(Axle axle) {
    return Position.of(axle, Side.LEFT);
  }

  /** What is raised at an axle over the book state, less what is taken off. */
  private Quantity raised(Axle axle, FixedTo fixed, boolean after, @Nullable Quantity less) {
    WheelEnd end = after ? derivation.after(left(axle)) : derivation.before(left(axle));
    List<Quantity> terms = new ArrayList<>(List.of(end.radius));
    List<Double> signs = new ArrayList<>(List.of(1.0));
    terms.add(book.get(axle).radius);
    signs.add(-1.0);
    if (fixed == FixedTo.BODY || fixed == FixedTo.FRAME) {
      Standings at = standings.get(axle);
      terms.add(after ? at.liftAfter() : at.liftBefore());
      signs.add(1.0);
    }
    if (fixed == FixedTo.BODY && after) {
      terms.add(derivation.heights().bodyLift(left(axle)));
      signs.add(1.0);
    }
    if (less != null) {
      terms.add(less);
      signs.add(-1.0);
    }
    return RAISED.linear(
        signs.stream().mapToDouble(Double::doubleValue).toArray(), terms.toArray(Quantity[]::new));
  }

  /** Fore of the front axle. */
  private Quantity fore(UnderbodyPoint point) {
    return point.from() == Axle.FRONT ? point.fore() : PLACE.linear(1, point.fore(), -1, wheelbase);
  }

  private Quantity height(UnderbodyPoint point, boolean after) {
    Quantity raised =
        switch (point.fixedTo()) {
          case FRONT_AXLE -> raised(Axle.FRONT, point.fixedTo(), after, null);
          case REAR_AXLE -> raised(Axle.REAR, point.fixedTo(), after, null);
          case BODY, FRAME -> {
            Quantity front = raised(Axle.FRONT, point.fixedTo(), after, null);
            Quantity rear = raised(Axle.REAR, point.fixedTo(), after, null);
            Quantity share = SHARE.quotient(RATIO, -1, fore(point), wheelbase);
            Quantity more = DIFFERENCE.linear(1, rear, -1, front);
            yield BETWEEN.linear(1, front, 1, BETWEEN.product(LENGTH, 1, share, more));
          }
        };
    return HEIGHT.linear(1, point.up(), 1, raised);
  }

  /** The three angles. */
  private enum Which {
    APPROACH("approach angle"),
    DEPARTURE("departure angle"),
    BREAKOVER("breakover angle");

    private final String words;

    Which(String words) {
      this.words = words;
    }
  }

  /** An angle, and the point that makes it. */
  private record Under(String point, Quantity degrees) {}

  private void angle(Which which, List<UnderbodyPoint> points) {
    Optional<Under> before = least(which, points, false);
    Optional<Under> after = least(which, points, true);
    if (before.isPresent() && after.isPresent()) {
      Quantity change = TURN.linear(1, after.get().degrees(), -1, before.get().degrees());
      derivation.facts.add(
          new RampAngle(
              new Subject("vehicle", which.words.replace(' ', '-')),
              Standing.ofChange(falls(change)),
              List.of(),
              which.words,
              after.get().point(),
              before.get().degrees(),
              after.get().degrees(),
              change));
    }
  }

  /** The least angle; absent as soon as a point of the body or frame is not known. */
  private Optional<Under> least(Which which, List<UnderbodyPoint> points, boolean after) {
    @Nullable Under least = null;
    for (UnderbodyPoint point : points) {
      Optional<Under> next = under(which, point, after);
      if (next.isPresent() && !next.get().degrees().isKnown()) {
        return next;
      }
      if (next.isPresent()
          && (least == null || next.get().degrees().value() < least.degrees().value())) {
        least = next.get();
      }
    }
    return Optional.ofNullable(least);
  }

  private Optional<Under> under(Which which, UnderbodyPoint point, boolean after) {
    Quantity fore = fore(point);
    Quantity up = height(point, after);
    Quantity front = radius(Axle.FRONT, after);
    Quantity rear = radius(Axle.REAR, after);
    Quantity[] all = {fore, up, wheelbase, front, rear};
    for (Quantity one : all) {
      if (!one.isKnown()) {
        return Optional.of(new Under(point.point(), unknown(all)));
      }
    }
    double x = fore.value();
    double z = Math.max(0, up.value());
    double base = wheelbase.value();
    return switch (which) {
      case APPROACH ->
          Underbody.approach(x, z, front.value())
              .map(
                  a ->
                      of(point, a.degrees(), all, a.perDistance(), a.perUp(), 0, a.perRadius(), 0));
      case DEPARTURE ->
          Underbody.departure(x, z, base, rear.value())
              .map(
                  a ->
                      of(
                          point,
                          a.degrees(),
                          all,
                          -a.perDistance(),
                          a.perUp(),
                          -a.perDistance(),
                          0,
                          a.perRadius()));
      case BREAKOVER ->
          Underbody.breakover(x, z, base, front.value(), rear.value())
              .map(
                  a ->
                      of(
                          point,
                          a.degrees(),
                          all,
                          a.perFore(),
                          a.perUp(),
                          a.perWheelbase(),
                          a.perFrontRadius(),
                          a.perRearRadius()));
    };
  }

  private static Under of(
      UnderbodyPoint point, double degrees, Quantity[] all, double... partials) {
    return new Under(point.point(), ANGLE_UNDER.of(ANGLE, degrees, partials, all));
  }

  private static Quantity unknown(Quantity[] all) {
    return ANGLE_UNDER.of(ANGLE, Double.NaN, new double[all.length], all);
  }

  private Quantity radius(Axle axle, boolean after) {
    return (after ? derivation.after(left(axle)) : derivation.before(left(axle))).radius;
  }
}
