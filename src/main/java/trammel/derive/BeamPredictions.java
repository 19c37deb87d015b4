package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import trammel.catalog.BeamLocation;
import trammel.catalog.BeamLocation.DragLinkProfile;
import trammel.catalog.BeamLocation.Links;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.SurveyPoint;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/**
 * Where a beam axle should stand with everything fitted: what the check works out of its bar, its
 * links and its drag link. Slopes are against level, with the vehicle on level ground.
 */
public final class BeamPredictions {
  private static final String NO_BAR = "the ends of its panhard bar are not surveyed";
  private static final String OUT_OF_REACH = "its bar does not reach the proposed height";

  private final Derivation derivation;
  private final Axle axle;
  private final BeamLocation location;
  private final AxleRide ride;

  BeamPredictions(Derivation derivation, Axle axle) {
    this.derivation = derivation;
    this.axle = axle;
    this.location = derivation.build.vehicle().axle(axle).location();
    this.ride = derivation.ride(axle);
  }

  /** Slope of the panhard bar in front view (degrees), positive with its frame end higher. */
  public Quantity barSlope() {
    return bar(ANGLE, bar -> bar.frameEndHigher(bar.chosen()));
  }

  /** Sideways shift of the axle from where it was surveyed (mm), positive to the left. */
  public Quantity shift() {
    return bar(LENGTH, bar -> bar.toLeft(bar.chosen()));
  }

  private Quantity bar(Dimension dimension, Function<FittedBar, Optional<Quantity>> what) {
    Panhard panhard = location.panhard();
    if (panhard == null) {
      return Predictions.unforetold(dimension, NO_BAR);
    }
    FittedBar bar = new FittedBar(derivation, axle, panhard, ride);
    Quantity missing = bar.missing();
    return missing != null
        ? Quantity.absent(dimension, Variables.absence(missing))
        : what.apply(bar).orElseGet(() -> Predictions.unforetold(dimension, OUT_OF_REACH));
  }

  /** Slope of the drag link in front view (degrees), positive where it rises to the left. */
  public Quantity dragLinkSlope() {
    DragLinkProfile link = location.dragLink();
    Panhard panhard = location.panhard();
    return link == null || panhard == null
        ? Predictions.unforetold(ANGLE, link == null ? "its drag link is not surveyed" : NO_BAR)
        : new SteeredBeam(derivation, axle, link, panhard, ride).slopes().dragLink();
  }

  /** Slope of the lower links in side view (degrees), positive with their frame end higher. */
  public Quantity lowerLinkSlope() {
    Links links = location.links();
    return links == null
        ? Predictions.unforetold(ANGLE, "its links are not surveyed")
        : slope(links, links.lowerFrame(), links.lowerAxle());
  }

  /** Slope of the upper links in side view (degrees), positive with their frame end higher. */
  public Quantity upperLinkSlope() {
    Links links = location.links();
    return links == null
        ? Predictions.unforetold(ANGLE, "its links are not surveyed")
        : slope(links, links.upperFrame(), links.upperAxle());
  }

  private Quantity slope(Links links, @Nullable SurveyPoint frame, @Nullable SurveyPoint end) {
    return frame == null || end == null
        ? Predictions.unforetold(ANGLE, "it has no upper links")
        : LinkSlopes.of(links, frame, end, ride.proposed(), turned(), Rake.sinceSurvey(derivation));
  }

  /** Turn against the frame since the survey (degrees), positive with the pinion's nose up. */
  public Quantity turn() {
    return new AxleFacts(derivation).turn(axle, turned()).turn();
  }

  /** Caster of a steered axle (degrees), positive with the axis' top rearward. */
  Quantity caster() {
    AxleFacts facts = new AxleFacts(derivation);
    return axle == Axle.FRONT
        ? facts.caster(axle, turned(), facts.rake(axle))
        : Predictions.unforetold(ANGLE, "an axle that does not steer has no caster");
  }

  private AxleTurns.Turned turned() {
    return new AxleTurns(derivation.build).at(axle, ride.proposed(), true);
  }
}
