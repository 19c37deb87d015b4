package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation;
import trammel.catalog.BeamLocation.DragLinkProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.Catalog;
import trammel.fact.Alignment;
import trammel.fact.AxleTurn;
import trammel.fact.BumpSteer;
import trammel.fact.LinkMismatch;
import trammel.quantity.Constants;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/**
 * Where a beam axle stands as found and as proposed: sideways by its panhard bar, fore and aft and
 * in turn by its links or springs, and what that makes of caster and steering. Lengths in mm,
 * angles in degrees, all against the state that the axle was surveyed in.
 *
 * @param raisedFound how much higher the frame stands over the axle today
 * @param raisedProposed the same with the changes
 * @param bar null where leaf springs hold the axle sideways and no bar is surveyed
 * @param found turn and shift as the vehicle stands today
 * @param proposed the same with the changes
 * @param caster null where the axle does not steer or its maker states no angles
 * @param steering null where the axle does not steer or leaf springs hold it sideways
 * @param curve over the travel at the proposed height; empty where nothing is surveyed that moves
 *     it
 */
public record BeamMap(
    Axle axle,
    Quantity raisedFound,
    Quantity raisedProposed,
    @Nullable BarMap bar,
    Turn found,
    Turn proposed,
    @Nullable Caster caster,
    @Nullable Steering steering,
    List<BeamPoint> curve) {

  /**
   * How links or leaf springs have turned and moved the axle.
   *
   * @param noseUp positive with the nose of the pinion up, or with the front of an axle in front
   *     down
   * @param forward of the wheels
   */
  public record Turn(Quantity noseUp, Quantity forward) {}

  /**
   * Caster of a steered beam against the maker's window. Camber is what it was.
   *
   * @param camber as the rack showed it
   * @param camberReserve how far that lies inside its window
   * @param found as it turns with the axle
   * @param proposed the same with the changes
   * @param window the maker's
   * @param reserve how far the proposed lies inside the window; negative: outside
   */
  public record Caster(
      Quantity camber,
      Quantity camberReserve,
      Quantity found,
      Quantity proposed,
      AlignmentSpec.Window window,
      Quantity reserve) {}

  /**
   * Drag link against panhard bar, in front view; positive slopes rise to the left.
   *
   * @param bumpSteerFound the greater steer over 25 mm either way
   * @param bumpSteerAdded how much the changes add
   */
  public record Steering(
      Quantity linkFound,
      Quantity linkProposed,
      Quantity barFound,
      Quantity barProposed,
      Quantity apartFound,
      Quantity apartProposed,
      Quantity bumpSteerFound,
      Quantity bumpSteerProposed,
      Quantity bumpSteerAdded) {}

  /** Far below what any tool can tell (mm, degrees). */
  private static final double NOISE = 1e-9;

  /** The maps of every beam axle, front first. */
  public static List<BeamMap> of(Build build, Catalog catalog, LocalDate on) {
    Derivation derivation = new Derivation(build, on);
    List<BeamMap> maps = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      if (build.vehicle().axle(axle).layout().beam()) {
        maps.add(of(derivation, catalog, axle));
      }
    }
    return List.copyOf(maps);
  }

  private static BeamMap of(Derivation derivation, Catalog catalog, Axle axle) {
    AxleProfile profile = derivation.build.vehicle().axle(axle);
    AxleRide ride = derivation.ride(axle);
    boolean leaf = profile.springs() == AxleProfile.Springs.LEAF;
    Panhard panhard = profile.location().panhard();
    AxleTurns turns = new AxleTurns(derivation.build);
    AxleFacts facts = new AxleFacts(derivation);
    AxleTurns.Turned then = turns.at(axle, ride.found(), false);
    AxleTurns.Turned now = turns.at(axle, ride.proposed(), true);
    boolean barless = leaf && panhard == null;
    return new BeamMap(
        axle,
        ride.found(),
        ride.proposed(),
        barless ? null : BarMap.of(derivation, catalog, axle, panhard, ride),
        turn(facts.turn(axle, then)),
        turn(facts.turn(axle, now)),
        axle == Axle.FRONT && profile.alignment().stated()
            ? caster(
                profile.alignment(),
                facts.caster(axle, then, Constants.degrees(0)),
                facts.alignment(axle, now))
            : null,
        axle == Axle.FRONT && !barless
            ? steering(derivation, axle, profile.location(), ride)
            : null,
        BeamSweep.of(derivation, axle, ride));
  }

  private static Turn turn(AxleTurn fact) {
    return new Turn(settled(fact.turn()), settled(fact.shift()));
  }

  /** A value that is 0 but for the noise of arithmetic, as 0. */
  static Quantity settled(Quantity quantity) {
    boolean noise =
        quantity.isKnown() && Math.abs(quantity.value()) < NOISE && quantity.expanded() < NOISE;
    return noise ? Quantity.exact(quantity.dimension(), 0) : quantity;
  }

  private static Caster caster(AlignmentSpec spec, Quantity then, Alignment now) {
    return new Caster(
        now.camber(), now.camberReserve(), then, now.caster(), spec.caster(), now.casterReserve());
  }

  private static Steering steering(
      Derivation derivation, Axle axle, BeamLocation location, AxleRide ride) {
    DragLinkProfile link = location.dragLink();
    Panhard panhard = location.panhard();
    if (link == null || panhard == null) {
      Quantity unknown =
          Figures.missing(
              ANGLE,
              (link == null ? "drag link of the " : "panhard bar of the ") + axle + " axle",
              "nobody has measured its ends",
              Instrument.TAPE,
              link == null
                  ? "tape: both ends of the drag link, and the arm that it turns"
                  : "tape: height of both ends, and eye to eye");
      return new Steering(
          unknown, unknown, unknown, unknown, unknown, unknown, unknown, unknown, unknown);
    }
    SteeredBeam beam = new SteeredBeam(derivation, axle, link, panhard, ride);
    LinkMismatch then = beam.slopesFound();
    LinkMismatch now = beam.slopes();
    BumpSteer steer = beam.bumpSteer();
    return new Steering(
        then.dragLink(),
        now.dragLink(),
        then.bar(),
        now.bar(),
        then.difference(),
        now.difference(),
        steer.before(),
        steer.after(),
        steer.more());
  }
}
