package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.jspecify.annotations.Nullable;
import trammel.catalog.BeamLocation.DragLinkProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.fact.BumpSteer;
import trammel.fact.LinkMismatch;
import trammel.fact.Standing;
import trammel.geometry.DragLink;
import trammel.geometry.LinkChange;
import trammel.geometry.PanhardBar;
import trammel.quantity.Absence;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Subject;

/** The drag link of a beam axle over its panhard bar. */
final class SteeredBeam {
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

  private final Axle axle;
  private final Variables variables;
  private final int found;
  private final int proposed;
  private final @Nullable Linkage linkage;

  /** A drag link over its panhard bar, and what the changes make of the bar. */
  private record Linkage(
      DragLink<Gradient> dragLink,
      PanhardBar<Gradient> bar,
      LinkChange<Gradient> none,
      LinkChange<Gradient> change) {}

  SteeredBeam(
      Derivation derivation, Axle axle, DragLinkProfile link, Panhard panhard, AxleRide ride) {
    this.axle = axle;
    Variables.Collector collector = new Variables.Collector();
    int[] box = collector.add(link.boxEnd(), "drag link, box end");
    int[] arm = collector.add(link.axleEnd(), "drag link, axle end");
    int[] frame = collector.add(panhard.frameEnd(), "bar, frame end");
    int[] end = collector.add(panhard.axleEnd(), "bar, axle end");
    int length = collector.add(link.steeringArm());
    found = collector.add(ride.found());
    proposed = collector.add(ride.proposed());
    variables = collector.all();
    if (variables.missing() != null) {
      linkage = null;
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
    linkage =
        new Linkage(
            dragLink,
            bar,
            LinkChange.none(ahead.getField()),
            new LinkChange<>(
                variables.constant(fit.longer()),
                variables.constant(fit.frameEndRaised()),
                variables.constant(fit.axleEndRaised())));
  }

  /** How both slope as proposed. */
  LinkMismatch slopes() {
    return linkage == null
        ? unknown(Variables.absence(variables.missing()))
        : slopes(linkage, variables.variable(proposed), linkage.change);
  }

  /** How both slope as found. */
  LinkMismatch slopesFound() {
    return linkage == null
        ? unknown(Variables.absence(variables.missing()))
        : slopes(linkage, variables.variable(found), linkage.none);
  }

  private LinkMismatch slopes(Linkage links, Gradient at, LinkChange<Gradient> change) {
    Optional<Gradient> mismatch = links.dragLink.mismatch(at, links.none, links.bar, change);
    Optional<Gradient> slope = links.bar.inclination(at, change);
    if (mismatch.isEmpty() || slope.isEmpty()) {
      return unknown(OUT_OF_REACH);
    }
    return new LinkMismatch(
        Subject.of(axle),
        Standing.WORSE_OR_NEW,
        List.of(),
        variables.quantity(SLOPES, ANGLE, slope.get().add(mismatch.get())),
        variables.quantity(SLOPES, ANGLE, slope.get()),
        AxleFacts.eitherWay(variables.quantity(SLOPES, ANGLE, mismatch.get())));
  }

  private LinkMismatch unknown(Absence why) {
    Quantity unknown = Quantity.absent(ANGLE, why);
    return new LinkMismatch(
        Subject.of(axle), Standing.WORSE_OR_NEW, List.of(), unknown, unknown, unknown);
  }

  /** How much the wheels steer themselves over bumps, as found and as proposed. */
  BumpSteer bumpSteer() {
    Absence why = slopes().difference().absence();
    if (linkage == null || why != null) {
      Quantity unknown = Quantity.absent(ANGLE, why == null ? OUT_OF_REACH : why);
      return new BumpSteer(
          Subject.of(axle), Standing.WORSE_OR_NEW, List.of(), unknown, unknown, unknown);
    }
    Quantity then = greatest(linkage, variables.variable(found), linkage.none);
    Quantity now = greatest(linkage, variables.variable(proposed), linkage.change);
    return new BumpSteer(
        Subject.of(axle),
        Standing.WORSE_OR_NEW,
        List.of(),
        then.called("bump steer before"),
        now,
        MORE.linear(1, now, -1, then));
  }

  /** The greater steer over 25 mm either way of a ride height, as far as they reach. */
  private Quantity greatest(Linkage links, Gradient lift, LinkChange<Gradient> change) {
    @Nullable Gradient greatest = null;
    for (double travel : new double[] {OVER, -OVER}) {
      Optional<Gradient> steer =
          steer(links, lift, travel, change)
              .map(angle -> angle.getValue() < 0 ? angle.negate() : angle);
      if (steer.isPresent() && (greatest == null || steer.get().getValue() > greatest.getValue())) {
        greatest = steer.get();
      }
    }
    return greatest == null
        ? Quantity.absent(ANGLE, OUT_OF_REACH)
        : variables.quantity(STEER, ANGLE, greatest);
  }

  private Optional<Gradient> steer(
      Linkage links, Gradient lift, double travel, LinkChange<Gradient> change) {
    return links.dragLink.bumpSteer(
        lift, variables.constant(travel), links.none, links.bar, change);
  }

  /**
   * Steer of the wheels by travel from the proposed height, straight there (degrees, positive to
   * the left); empty where it is not known or they do not reach.
   *
   * @param travel of the wheels up (mm)
   */
  Optional<Double> steerOver(double travel) {
    return linkage == null
        ? Optional.empty()
        : steer(linkage, variables.variable(proposed), travel, linkage.change)
            .map(Gradient::getValue);
  }
}
