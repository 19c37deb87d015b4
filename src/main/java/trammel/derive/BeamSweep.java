package trammel.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation;
import trammel.catalog.BeamLocation.Panhard;
import trammel.fact.AxleTurn;
import trammel.quantity.Constants;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/** A beam axle over its travel, from droop to bump, as it is set at the proposed height. */
final class BeamSweep {
  /** Steps of a curve (mm). */
  private static final double STEP = 10;

  private final AxleProfile profile;
  private final Axle axle;
  private final AxleRide ride;
  private final AxleFacts facts;
  private final AxleTurns turns;
  private final Quantity tireLift;
  private final @Nullable FittedBar bar;
  private final @Nullable SteeredBeam steered;

  private BeamSweep(Derivation derivation, Axle axle, AxleRide ride) {
    this.profile = derivation.build.vehicle().axle(axle);
    this.axle = axle;
    this.ride = ride;
    this.facts = new AxleFacts(derivation);
    this.turns = new AxleTurns(derivation.build);
    this.tireLift = BarMap.tireLift(derivation, axle);
    BeamLocation location = profile.location();
    Panhard panhard = location.panhard();
    FittedBar fitted = panhard == null ? null : new FittedBar(derivation, axle, panhard, ride);
    this.bar = fitted == null || fitted.missing() != null ? null : fitted;
    this.steered =
        axle == Axle.FRONT && panhard != null && location.dragLink() != null
            ? new SteeredBeam(derivation, axle, location.dragLink(), panhard, ride)
            : null;
  }

  static List<BeamPoint> of(Derivation derivation, Axle axle, AxleRide ride) {
    BeamSweep sweep = new BeamSweep(derivation, axle, ride);
    boolean bounded = sweep.profile.bumpTravel().isKnown() && sweep.profile.droopTravel().isKnown();
    boolean moves = sweep.bar != null || sweep.profile.location().links() != null;
    return bounded && moves && ride.proposed().isKnown() ? sweep.points() : List.of();
  }

  private List<BeamPoint> points() {
    double lift = ride.proposed().value();
    double first = Math.ceil((lift - profile.droopTravel().value()) / STEP) * STEP;
    double last = profile.bumpTravel().value() + lift;
    List<BeamPoint> points = new ArrayList<>();
    for (double at = first; at <= last; at += STEP) {
      points.add(point(at, lift - at));
    }
    return List.copyOf(points);
  }

  private BeamPoint point(double travel, double lift) {
    AxleTurns.Turned turned =
        profile.location().links() == null
            ? null
            : turns.at(axle, ride.proposed(), Constants.mm(lift), true);
    AxleTurn turn = turned == null ? null : facts.turn(axle, turned);
    boolean caster = axle == Axle.FRONT && profile.alignment().stated();
    return new BeamPoint(
        travel,
        turned != null && caster ? number(facts.caster(axle, turned, facts.rake(axle))) : null,
        bar == null
            ? null
            : number(
                bar.bar()
                    .rollCenterHeight(at(bar, lift), bar.proposed())
                    .filter(height -> tireLift.isKnown())
                    .map(height -> height.add(tireLift.value()))),
        bar == null ? null : number(bar.bar().shift(at(bar, lift), bar.proposed())),
        bar == null ? null : number(bar.bar().angle(at(bar, lift), bar.proposed())),
        turn == null ? null : number(turn.turn()),
        turn == null ? null : number(turn.shift()),
        steered == null ? null : steered.steerOver(travel).orElse(null));
  }

  private static Gradient at(FittedBar bar, double lift) {
    return bar.variables().constant(lift);
  }

  private static @Nullable Double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : null;
  }

  private static @Nullable Double number(Optional<Gradient> number) {
    return number.map(Gradient::getValue).orElse(null);
  }
}
