package trammel.derive;

import trammel.build.Build;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation;
import trammel.catalog.BeamLocation.DragLinkProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.PartKind;
import trammel.fact.Alignment;
import trammel.fact.AxleTurn;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
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
        derivation.facts.add(turn(axle, turns.at(axle, ride.proposed(), true)));
      }
      if (axle == Axle.FRONT && profile.alignment().stated()) {
        derivation.facts.add(alignment(axle, turns.at(axle, ride.proposed(), true)));
      }
      steering(axle, profile.location(), ride);
    }
  }

  private static boolean leaf(AxleProfile profile) {
    return profile.springs() == AxleProfile.Springs.LEAF;
  }

  /** A turn and a shift of an axle, as rules and readers know them. */
  AxleTurn turn(Axle axle, AxleTurns.Turned turned) {
    Quantity nose = NOSE.linear(axle == Axle.FRONT ? -1 : 1, turned.frontUp());
    boolean steered = axle == Axle.FRONT;
    boolean driven = driven(axle);
    return new AxleTurn(
        Subject.of(axle),
        Standing.WORSE_OR_NEW,
        turns.numbers(axle),
        nose,
        eitherWay(nose),
        driven ? (steered ? "pinion and caster" : "pinion") : steered ? "caster" : "",
        turned.fore(),
        eitherWay(turned.fore()));
  }

  private boolean driven(Axle axle) {
    return switch (build.vehicle().drive()) {
      case FRONT -> axle == Axle.FRONT;
      case REAR -> axle == Axle.REAR;
      case PART_TIME, FULL_TIME -> true;
    };
  }

  static Quantity eitherWay(Quantity quantity) {
    boolean negative = quantity.isKnown() && quantity.value() < 0;
    return EITHER_WAY.linear(negative ? -1 : 1, quantity);
  }

  /** A beam's camber is what it was; its caster turns with the axle. */
  Alignment alignment(Axle axle, AxleTurns.Turned turned) {
    AlignmentSpec spec = build.vehicle().axle(axle).alignment();
    Quantity caster = caster(axle, turned, rake(axle));
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
    return new Alignment(
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
        wheel.casterMeans());
  }

  /** What the proposed attitude of the body adds to caster (degrees). */
  Quantity rake(Axle axle) {
    return Rake.of(derivation, build.vehicle().axle(axle).alignment(), Side.LEFT);
  }

  /** Caster (degrees) as it turns with the axle. */
  Quantity caster(Axle axle, AxleTurns.Turned turned, Quantity rake) {
    AlignmentSpec spec = build.vehicle().axle(axle).alignment();
    return CASTER.linear(1, spec.asSurveyed().caster(), 1, turned.frontUp(), 1, rake);
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
    SteeredBeam beam = new SteeredBeam(derivation, axle, link, panhard, ride);
    derivation.facts.add(beam.slopes());
    derivation.facts.add(beam.bumpSteer());
  }
}
