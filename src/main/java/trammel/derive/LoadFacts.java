package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.Spring;
import trammel.fact.AxleLoad;
import trammel.fact.HeightOffBook;
import trammel.fact.SideLean;
import trammel.fact.SpringBand;
import trammel.fact.Standing;
import trammel.physics.AxleStatics;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** What axles carry against their rating and their springs, and how level they stand. */
final class LoadFacts {
  private static final Formula LEFT =
      new Formula("left of the rating", "rating − load with the changes", "definition");
  private static final Formula UNDER =
      new Formula("load under the spring's band", "least load − axle load", "definition");
  private static final Formula OVER =
      new Formula("load over the spring's band", "axle load − greatest load", "definition");
  private static final Formula ERROR =
      new Formula(
          "height lost by the load outside the band",
          "half of it · 9.80665 / (spring rate · motion ratio²)",
          "own derivation: one more kilogram on one more wheel rate");
  private static final Formula APART =
      new Formula("off the prediction", "unexplained rest without its sign", "definition");
  private static final Formula HEIGHT =
      new Formula("height as proposed", "as found + what the changes add", "definition");
  private static final Formula LEAN = new Formula("lean", "difference of the sides", "definition");

  private final Derivation derivation;
  private final Build build;
  private final VehicleLoads loads;
  private final HeightFacts heights;

  LoadFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.loads = derivation.loads();
    this.heights = derivation.heights();
  }

  void add() {
    for (Axle axle : Axle.values()) {
      derivation.facts.add(load(axle));
      derivation.facts.addAll(bands(axle));
      derivation.facts.add(lean(axle));
    }
    derivation.facts.add(gross());
    for (Position position : Position.running()) {
      derivation.facts.add(offBook(position));
    }
  }

  /** What the vehicle weighs, today and with the changes. */
  AxleLoad gross() {
    return load(
        Subject.VEHICLE,
        "vehicle",
        loads.gross(Stage.FOUND),
        loads.gross(Stage.PROPOSED),
        build.vehicle().grossRating());
  }

  /** What an axle carries, today and with the changes. */
  AxleLoad load(Axle axle) {
    return load(
        Subject.of(axle),
        axle + " axle",
        loads.axle(axle, Stage.FOUND),
        loads.axle(axle, Stage.PROPOSED),
        build.vehicle().axle(axle).rating());
  }

  private AxleLoad load(
      Subject subject, String place, Quantity before, Quantity after, Quantity rating) {
    Set<String> parts = new LinkedHashSet<>();
    for (Position position : Position.running()) {
      build.after(position).all(PartKind.ACCESSORY).stream().map(Part::number).forEach(parts::add);
    }
    return new AxleLoad(
        subject,
        Standing.ofChange(loads.changed()),
        List.copyOf(parts),
        place,
        before,
        after,
        rating,
        LEFT.linear(1, rating, -1, after));
  }

  /** The load of an axle against each spring it stands on. */
  List<SpringBand> bands(Axle axle) {
    AxleProfile profile = build.vehicle().axle(axle);
    Standing standing = Standing.ofChange(loads.changed() || build.changes(axle, PartKind.SPRING));
    List<SpringBand> bands = new ArrayList<>();
    Set<Spring> springs = new LinkedHashSet<>();
    for (Position position : Position.of(axle)) {
      build.after(position).one(PartKind.SPRING, Spring.class).ifPresent(springs::add);
    }
    for (Spring spring : springs) {
      Quantity load = loads.axle(axle, Stage.PROPOSED);
      boolean under =
          load.isKnown()
              && spring.axleLoadFrom().isKnown()
              && (load.value() < spring.axleLoadFrom().value() || !spring.axleLoadTo().isKnown());
      boolean over =
          load.isKnown()
              && spring.axleLoadTo().isKnown()
              && load.value() > spring.axleLoadTo().value();
      boolean nearerUnder = !over && (under || nearerUnder(spring, load));
      Quantity outside =
          nearerUnder
              ? UNDER.linear(1, spring.axleLoadFrom(), -1, load)
              : OVER.linear(1, load, -1, spring.axleLoadTo());
      bands.add(
          new SpringBand(
              Subject.of(axle, spring.number()),
              standing,
              List.of(spring.number()),
              spring.number(),
              load,
              spring.axleLoadFrom(),
              spring.axleLoadTo(),
              outside,
              error(profile, spring, outside, under ? -1 : over ? 1 : 0)));
    }
    return bands;
  }

  /** Inside the band, whether its lower end is the nearer one, or the one that nobody has given. */
  private static boolean nearerUnder(Spring spring, Quantity load) {
    Quantity from = spring.axleLoadFrom();
    Quantity to = spring.axleLoadTo();
    return !from.isKnown()
        || (load.isKnown()
            && to.isKnown()
            && load.value() - from.value() < to.value() - load.value());
  }

  private static Quantity error(AxleProfile axle, Spring spring, Quantity outside, int sign) {
    if (axle.heightControlled() || sign == 0) {
      return Constants.mm(0).called("height lost by the load");
    }
    Quantity rate = spring.secondRate().isKnown() ? spring.secondRate() : spring.rate();
    Quantity ratio = axle.springMotionRatio();
    double m = outside.isKnown() ? outside.value() : Double.NaN;
    double k = rate.isKnown() ? rate.value() : Double.NaN;
    double r = ratio.isKnown() ? ratio.value() : Double.NaN;
    double per = sign * AxleStatics.GRAVITY / 2 / (k * r * r);
    return ERROR.of(
        LENGTH, m * per, new double[] {per, -m * per / k, -2 * m * per / r}, outside, rate, ratio);
  }

  private HeightOffBook offBook(Position position) {
    Quantity rest = heights.rest(position);
    boolean lower = rest.isKnown() && rest.value() < 0;
    return new HeightOffBook(
        Subject.of(position),
        Standing.ofChange(
            build.changes(position, PartKind.SPRING, PartKind.SPRING_SPACER) || loads.changed()),
        build.before(position).all(PartKind.SPRING).stream().map(Part::number).toList(),
        heights.predicted(position),
        heights.asMeasured(position),
        rest,
        APART.linear(lower ? -1 : 1, rest),
        lower ? "lower" : "higher");
  }

  /** How far the sides of an axle differ in height with the changes. */
  SideLean lean(Axle axle) {
    Position left = Position.of(axle, Side.LEFT);
    Position right = Position.of(axle, Side.RIGHT);
    Quantity difference =
        LEAN.linear(1, after(left), -1, new SideInputs(build, right).again(after(right)));
    boolean leftLower = difference.isKnown() && difference.value() < 0;
    boolean touched =
        loads.changed()
            || build.changes(
                axle, PartKind.SPRING, PartKind.SPRING_SPACER, PartKind.STRUT_TOP_SPACER)
            || Position.of(axle).stream().anyMatch(build.raised()::containsKey);
    return new SideLean(
        Subject.of(axle),
        Standing.ofChange(touched),
        List.of(),
        axle.toString(),
        leftLower ? "left" : "right",
        difference,
        LEAN.linear(leftLower ? -1 : 1, difference));
  }

  private Quantity after(Position position) {
    return HEIGHT.linear(1, heights.found(position), 1, heights.lift(position));
  }
}
