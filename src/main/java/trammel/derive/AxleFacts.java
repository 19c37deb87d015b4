package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation;
import trammel.catalog.BeamLocation.DragLinkProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.PartKind;
import trammel.fact.Alignment;
import trammel.fact.AxleTurn;
import trammel.fact.BumpSteer;
import trammel.fact.LinkMismatch;
import trammel.fact.Standing;
import trammel.geometry.DragLink;
import trammel.geometry.LinkChange;
import trammel.geometry.PanhardBar;
import trammel.quantity.Absence;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Side;
import trammel.subject.Subject;

/** What raising a beam axle does to its pinion, its caster and its steering. */
final class AxleFacts {
  private static final Formula NOSE =
      new Formula("turn of the axle, nose up", "± turn, front up", "definition");
  private static final Formula EITHER_WAY = new Formula("either way", "|value|", "definition");
  private static final Formula CASTER =
      new Formula(
          "caster as proposed",
          "as the rack showed + turn of the axle + rake",
          "definition: as the front turns up, the steering axis' top goes rearward");
  private static final Formula SLOPES =
      new Formula("slope in front view", "atan(rise / span)", "DragLink, PanhardBar");
  private static final Formula STEER =
      new Formula(
          "bump steer",
          "greater steer over 25 mm either way, straight at rest",
          "DragLink: constant length, axle on its panhard bar");
  private static final Formula MORE =
      new Formula("bump steer added", "as proposed − before", "definition");
  private static final Absence OUT_OF_REACH =
      new Absence(
          "drag link and panhard bar",
          "they do not reach the proposed height",
          Instrument.READ,
          "raise it less");
  private static final double OVER = 25;

  private final Derivation derivation;
  private final Build build;
  private final AxleTurns turns;

  AxleFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.turns = new AxleTurns(build);
  }

  void add() {
    for (Axle axle : Axle.values()) {
      AxleProfile profile = build.vehicle().axle(axle);
      boolean parts =
          build.changes(axle, PartKind.AXLE_LINK, PartKind.LEAF_BLOCK, PartKind.SHACKLE);
      AxleRide ride = derivation.ride(axle);
      if (!profile.layout().beam() || !(parts || ride.moved())) {
        continue;
      }
      boolean measured = profile.location().links() != null || leaf(profile);
      if (measured || parts || ride.wantsMeasuring()) {
        turn(axle, ride);
      }
      if (axle == Axle.FRONT && profile.alignment().stated()) {
        caster(axle, profile, ride);
      }
      steering(axle, profile.location(), ride);
    }
  }

  private static boolean leaf(AxleProfile profile) {
    return profile.springs() == AxleProfile.Springs.LEAF;
  }

  private void turn(Axle axle, AxleRide ride) {
    AxleTurns.Turned turned = turns.at(axle, ride.proposed(), true);
    Quantity nose = NOSE.linear(axle == Axle.FRONT ? -1 : 1, turned.frontUp());
    boolean steered = axle == Axle.FRONT;
    boolean driven = driven(axle);
    derivation.facts.add(
        new AxleTurn(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            turns.numbers(axle),
            nose,
            eitherWay(nose),
            driven ? (steered ? "pinion and caster" : "pinion") : steered ? "caster" : "",
            turned.fore(),
            eitherWay(turned.fore())));
  }

  private boolean driven(Axle axle) {
    return switch (build.vehicle().drive()) {
      case FRONT -> axle == Axle.FRONT;
      case REAR -> axle == Axle.REAR;
      case PART_TIME, FULL_TIME -> true;
    };
  }

  private static Quantity eitherWay(Quantity quantity) {
    boolean negative = quantity.isKnown() && quantity.value() < 0;
    return EITHER_WAY.linear(negative ? -1 : 1, quantity);
  }

  /** A beam's camber is what it was; its caster turns with the axle. */
  private void caster(Axle axle, AxleProfile profile, AxleRide ride) {
    AlignmentSpec spec = profile.alignment();
    Quantity turned = turns.at(axle, ride.proposed(), true).frontUp();
    Quantity caster =
        CASTER.linear(
            1, spec.asSurveyed().caster(), 1, turned, 1, Rake.of(derivation, spec, Side.LEFT));
    boolean low = nearerLow(caster, spec.caster());
    Quantity camber = spec.asSurveyed().camber();
    boolean camberLow = nearerLow(camber, spec.camber());
    WheelAlignment wheel =
        new WheelAlignment(
            WheelAlignment.Depth.SURVEYED,
            camber,
            caster,
            WheelAlignment.reserve(camber, spec.camber(), camberLow),
            camberLow,
            WheelAlignment.reserve(caster, spec.caster(), low),
            low,
            "nothing can be set",
            true,
            Constants.mm(0));
    derivation.facts.add(
        new Alignment(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            turns.numbers(axle),
            wheel.depth().toString(),
            wheel.camber(),
            wheel.caster(),
            wheel.camberReserve(),
            wheel.casterReserve(),
            wheel.setting(),
            wheel.camberMeans(),
            wheel.casterMeans()));
  }

  private static boolean nearerLow(Quantity angle, AlignmentSpec.Window window) {
    if (!angle.isKnown() || !window.from().isKnown() || !window.to().isKnown()) {
      return true;
    }
    return angle.value() - window.from().value() <= window.to().value() - angle.value();
  }

  private void steering(Axle axle, BeamLocation location, AxleRide ride) {
    DragLinkProfile link = location.dragLink();
    Panhard panhard = location.panhard();
    if (link == null || panhard == null) {
      return;
    }
    Variables.Collector collector = new Variables.Collector();
    int[] box = collector.add(link.boxEnd(), "drag link, box end");
    int[] arm = collector.add(link.axleEnd(), "drag link, axle end");
    int[] frame = collector.add(panhard.frameEnd(), "bar, frame end");
    int[] end = collector.add(panhard.axleEnd(), "bar, axle end");
    int length = collector.add(link.steeringArm());
    int found = collector.add(ride.found());
    int proposed = collector.add(ride.proposed());
    Variables variables = collector.all();
    if (variables.missing() != null) {
      unknownSteering(axle, Variables.absence(variables.missing()));
      return;
    }
    Gradient ahead = variables.variable(length);
    DragLink<Gradient> dragLink =
        new DragLink<>(
            variables.left(box, link.boxEnd()),
            variables.left(arm, link.axleEnd()),
            link.axleEnd().fore().value() < 0 ? ahead.negate() : ahead);
    PanhardBar<Gradient> bar =
        new PanhardBar<>(
            variables.left(frame, panhard.frameEnd()), variables.left(end, panhard.axleEnd()));
    BarFacts.Fit fit = new BarFacts(derivation).fit(axle);
    Linkage linkage = new Linkage(variables, dragLink, bar);
    Gradient before = variables.variable(found);
    Gradient after = variables.variable(proposed);
    LinkChange<Gradient> none = LinkChange.none(before.getField());
    LinkChange<Gradient> change =
        new LinkChange<>(
            variables.constant(fit.longer()),
            variables.constant(fit.frameEndRaised()),
            variables.constant(fit.axleEndRaised()));
    Optional<Gradient> mismatch = dragLink.mismatch(after, none, bar, change);
    Optional<Gradient> slope = bar.inclination(after, change);
    if (mismatch.isEmpty() || slope.isEmpty()) {
      unknownSteering(axle, OUT_OF_REACH);
      return;
    }
    derivation.facts.add(
        new LinkMismatch(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            List.of(),
            variables.quantity(SLOPES, ANGLE, slope.get().add(mismatch.get())),
            variables.quantity(SLOPES, ANGLE, slope.get()),
            eitherWay(variables.quantity(SLOPES, ANGLE, mismatch.get()))));
    Quantity then = linkage.steer(before, none);
    Quantity now = linkage.steer(after, change);
    derivation.facts.add(
        new BumpSteer(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            List.of(),
            then.called("bump steer before"),
            now,
            MORE.linear(1, now, -1, then)));
  }

  private void unknownSteering(Axle axle, Absence why) {
    Quantity unknown = Quantity.absent(ANGLE, why);
    derivation.facts.add(
        new LinkMismatch(
            Subject.of(axle), Standing.WORSE_OR_NEW, List.of(), unknown, unknown, unknown));
    derivation.facts.add(
        new BumpSteer(
            Subject.of(axle), Standing.WORSE_OR_NEW, List.of(), unknown, unknown, unknown));
  }

  /** A drag link over its panhard bar. */
  private record Linkage(
      Variables variables, DragLink<Gradient> dragLink, PanhardBar<Gradient> bar) {

    /** The greater steer over 25 mm either way of a ride height, as far as they reach. */
    Quantity steer(Gradient lift, LinkChange<Gradient> change) {
      LinkChange<Gradient> none = LinkChange.none(lift.getField());
      @Nullable Gradient greatest = null;
      for (double travel : new double[] {OVER, -OVER}) {
        Optional<Gradient> steer =
            dragLink
                .bumpSteer(lift, variables.constant(travel), none, bar, change)
                .map(angle -> angle.getValue() < 0 ? angle.negate() : angle);
        if (steer.isPresent()
            && (greatest == null || steer.get().getValue() > greatest.getValue())) {
          greatest = steer.get();
        }
      }
      if (greatest == null) {
        return Quantity.absent(ANGLE, OUT_OF_REACH);
      }
      return variables.quantity(STEER, ANGLE, greatest);
    }
  }
}
