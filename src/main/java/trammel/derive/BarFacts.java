package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.PartKind;
import trammel.fact.AxleShift;
import trammel.fact.Standing;
import trammel.geometry.LinkChange;
import trammel.quantity.Constants;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** Where a panhard bar holds its axle, and what a moved bar meets. */
final class BarFacts {
  private final Derivation derivation;
  private final Build build;

  BarFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Axle axle : Axle.values()) {
      AxleProfile profile = build.vehicle().axle(axle);
      boolean parts = build.changes(axle, PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET);
      AxleRide ride = derivation.ride(axle);
      Panhard panhard = profile.location().panhard();
      if (panhard != null && (parts || ride.moved())) {
        new FittedBar(derivation, axle, panhard, ride).add(this);
      } else if (panhard == null && (parts || (coilBeam(profile) && ride.wantsMeasuring()))) {
        derivation.facts.add(unmeasured(axle));
      }
    }
  }

  /**
   * How the proposed bar differs from the surveyed one (mm), for what follows it.
   *
   * @param longer than it was
   */
  record Fit(double longer, double frameEndRaised, double axleEndRaised) {}

  /** The fit of an axle's bar as proposed; none of it where there is no bar to speak of. */
  Fit fit(Axle axle) {
    Panhard panhard = build.vehicle().axle(axle).location().panhard();
    if (panhard != null) {
      FittedBar bar = new FittedBar(derivation, axle, panhard, derivation.ride(axle));
      if (bar.missing() == null) {
        LinkChange<Gradient> change = bar.proposed();
        return new Fit(
            change.longer().getValue(),
            change.frameEndRaised().getValue(),
            change.axleEndRaised().getValue());
      }
    }
    return new Fit(0, 0, 0);
  }

  private static boolean coilBeam(AxleProfile profile) {
    return profile.layout().beam() && profile.springs() != AxleProfile.Springs.LEAF;
  }

  AxleShift unmeasured(Axle axle) {
    Quantity length =
        Figures.missing(
            LENGTH,
            "panhard bar of the " + axle + " axle",
            "nobody has measured its ends",
            Instrument.TAPE,
            "tape: height of both ends, and eye to eye");
    Quantity angle =
        Figures.missing(
            ANGLE,
            "panhard bar of the " + axle + " axle",
            "nobody has measured its ends",
            Instrument.TAPE,
            "tape: height of both ends, and eye to eye");
    return new AxleShift(
        Subject.of(axle),
        Standing.WORSE_OR_NEW,
        numbers(axle),
        length,
        "either side",
        angle,
        angle,
        "",
        "",
        length,
        Constants.mm(0),
        length);
  }

  List<String> numbers(Axle axle) {
    Equipment after = build.after(Position.of(axle, Side.LEFT));
    List<String> numbers = new ArrayList<>();
    for (PartKind kind : List.of(PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET)) {
      if (build.changes(axle, kind)) {
        after.all(kind).forEach(part -> numbers.add(part.number()));
      }
    }
    return numbers;
  }
}
