package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import trammel.build.Build;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.SuspensionPart.PanhardBracket;
import trammel.fact.Alignment;
import trammel.fact.Clearance;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.fact.RideHeight;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Station;
import trammel.subject.Station.Height;
import trammel.subject.Station.Steer;
import trammel.subject.Subject;

/**
 * What measuring the finished vehicle should show, all from one derivation: predictions that rest
 * on the same input name the same {@link trammel.quantity.Input}, so that their errors are known to
 * go together.
 */
public final class Predictions {
  private static final Formula AT_POSE =
      new Formula(
          "gap in the pose measured",
          "gap measured before + change + c_z·(lift now − lift then) − c_z·bump between ± model",
          "StationModel: coefficients by station");

  private static final Formula AS_SET =
      new Formula("toe as set", "maker's preferred toe ± what his window leaves", "definition");

  private static final Formula ABOVE_BOOK =
      new Formula("height above the book's", "height as proposed − book height", "definition");

  private final Derivation derivation;
  private final ClearanceFacts clearance;
  private final HeightFacts heights;

  private Predictions(Derivation derivation) {
    this.derivation = derivation;
    this.clearance = new ClearanceFacts(derivation);
    this.heights = derivation.heights();
  }

  /** The predictions for what a build proposes. */
  public static Predictions of(Build build, LocalDate on) {
    return new Predictions(Derivation.whole(build, on));
  }

  /** The build they are for. */
  public Build build() {
    return derivation.build;
  }

  /** The first fact of a kind about a wheel or station. */
  public <F extends Fact> Optional<F> fact(Class<F> kind, Subject subject) {
    return derivation.facts.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .filter(fact -> fact.subject().equals(subject))
        .findFirst();
  }

  /** Hub to fender with everything fitted (mm). */
  public Quantity height(Position position) {
    return fact(RideHeight.class, Subject.of(position)).orElseThrow().after();
  }

  /** Pressure of a ram or an air spring at rest with everything fitted (kPa, above the air's). */
  public Quantity pressure(Position position) {
    return fact(FluidLoad.class, Subject.of(position))
        .map(FluidLoad::pressureAfter)
        .orElseGet(() -> unforetold(PRESSURE, "no fluid is known to carry this corner"));
  }

  /** What the changes add between axle and frame (mm). */
  public Quantity lift(Position position) {
    return heights.lift(position);
  }

  /**
   * Camber (degrees, positive top outward) at the proposed height.
   *
   * @param adjusted whether the adjusters stand as proposed, or as they were found
   */
  public Quantity camber(Position position, boolean adjusted) {
    if (beam(position)) {
      return asSurveyed(position, AlignmentSpec.Angles::camber);
    }
    return adjusted
        ? fact(Alignment.class, Subject.of(position))
            .map(Alignment::camber)
            .orElseGet(Predictions::noSetting)
        : untouched(position, 0);
  }

  /**
   * Caster (degrees, positive axis top rearward) at the proposed height.
   *
   * @param adjusted whether the adjusters stand as proposed, or as they were found
   */
  public Quantity caster(Position position, boolean adjusted) {
    if (beam(position)) {
      Quantity surveyed = asSurveyed(position, AlignmentSpec.Angles::caster);
      return surveyed.isKnown() ? beam(position.axle().orElseThrow()).caster() : surveyed;
    }
    return adjusted
        ? fact(Alignment.class, Subject.of(position))
            .map(Alignment::caster)
            .orElseGet(Predictions::noSetting)
        : untouched(position, 1);
  }

  /**
   * Toe of one wheel (degrees, positive inward) at the proposed height.
   *
   * @param adjusted whether it was set anew: the maker's, ± what his window leaves the fitter; else
   *     as the rack showed it before, and the bump steer since, the tie rod left alone; the wheels
   *     of a beam axle keep theirs
   */
  public Quantity toe(Position position, boolean adjusted) {
    AlignmentSpec.Window window = profile(position).alignment().toe();
    if (beam(position)) {
      boolean set = adjusted && position.axle().orElseThrow() == Axle.FRONT;
      return set ? toeSet(position, window) : asSurveyed(position, AlignmentSpec.Angles::toe);
    }
    if (adjusted) {
      return fact(Alignment.class, Subject.of(position))
          .map(set -> toeSet(position, window))
          .orElseGet(Predictions::noSetting);
    }
    return derivation
        .corners(position.axle().orElseThrow())
        .untouchedToe(position)
        .orElseGet(
            () -> unforetold(ANGLE, "toe that nobody set anew is foretold from hard points alone"));
  }

  private static Quantity toeSet(Position position, AlignmentSpec.Window toe) {
    if (!toe.preferred().isKnown()) {
      return unforetold(ANGLE, "the maker names no toe to set");
    }
    double wanted = toe.preferred().value();
    // A fitter may stop anywhere in the window; without one, as near as the rack shows.
    double within =
        toe.from().isKnown() && toe.to().isKnown()
            ? Math.max(wanted - toe.from().value(), toe.to().value() - wanted)
            : Instrument.TOE_RACK.expanded(wanted);
    String name = "setting of toe, " + position;
    Input setting = new Input("Predictions", name, 0, "own derivation", Instrument.STATED);
    return AS_SET.linear(1, toe.preferred(), 1, Quantity.read(name, ANGLE, 0, within, setting));
  }

  /** Where a beam axle should stand. */
  public BeamPredictions beam(Axle axle) {
    return new BeamPredictions(derivation, axle);
  }

  /**
   * How a prop shaft should stand.
   *
   * @param shaft its name in the vehicle's profile
   */
  public ShaftPredictions shaft(String shaft) {
    return derivation.build.vehicle().shafts().stream()
        .filter(profile -> profile.shaft().equals(shaft))
        .map(profile -> new ShaftPredictions(derivation, profile))
        .findFirst()
        .orElseThrow();
  }

  /**
   * What another hole of a bracket would have foretold.
   *
   * @param stated the hole of the sheet; the best one where it names none
   * @param other the other hole
   * @param place of the bracket on the sheet
   */
  public record OtherHole(
      Axle axle, String bracket, String stated, String other, Place place, Predictions then) {}

  /** Every hole that a bar is not in, of the brackets on the sheet. */
  public List<OtherHole> otherHoles() {
    List<OtherHole> others = new ArrayList<>();
    for (Build.Line line : derivation.build.lines()) {
      if (!(line.part() instanceof PanhardBracket bracket)) {
        continue;
      }
      Axle axle = line.at().get(0).axle().orElseThrow();
      Panhard panhard = derivation.build.vehicle().axle(axle).location().panhard();
      if (panhard == null) {
        continue;
      }
      FittedBar bar = new FittedBar(derivation, axle, panhard, derivation.ride(axle));
      if (bar.missing() != null) {
        continue;
      }
      String stated = bar.chosen().name();
      for (PanhardBracket.Hole hole : bracket.holes()) {
        if (!hole.name().equals(stated)) {
          Build moved = derivation.build.inHole(bracket, hole.name());
          Predictions then = of(moved, derivation.on);
          others.add(
              new OtherHole(axle, bracket.number(), stated, hole.name(), line.place(), then));
        }
      }
    }
    return List.copyOf(others);
  }

  private boolean beam(Position position) {
    return profile(position).layout().beam();
  }

  /** What a rack showed of a beam axle as surveyed: its camber and toe stay. */
  private Quantity asSurveyed(Position position, Function<AlignmentSpec.Angles, Quantity> which) {
    Quantity shown = which.apply(profile(position).alignment().asSurveyed());
    return shown.isKnown()
        ? shown
        : unforetold(ANGLE, "the profile does not say what the rack showed of this beam axle");
  }

  private static Quantity noSetting() {
    return unforetold(ANGLE, "the changes leave the alignment of this wheel alone");
  }

  private Quantity untouched(Position position, int which) {
    List<Quantity> angles = derivation.corners(position.axle().orElseThrow()).untouched(position);
    return angles.isEmpty()
        ? unforetold(ANGLE, "the linkage does not reach the proposed height")
        : angles.get(which);
  }

  /**
   * The gap at a station in one pose (mm): what the check found, where that is the pose which
   * decides; else carried over from a gap that was known in this steering.
   */
  public Quantity gap(Position position, Station station, Steer steer, Height height) {
    Subject subject = Subject.of(position, station.toString());
    Optional<Clearance> deciding = fact(Clearance.class, subject);
    if (deciding.isPresent() && deciding.get().pose().equals(ClearanceFacts.pose(steer, height))) {
      return deciding.get().gap();
    }
    List<ClearanceFacts.Measured> known = new ArrayList<>();
    for (ClearanceFacts.Measured gap :
        clearance.gaps(position, station, profile(position).stations().get(station))) {
      if (gap.steer() == steer) {
        known.add(gap);
      }
    }
    return first(known, gap -> gap.height() == height)
        .or(() -> first(known, gap -> gap.height() == Height.REST && height == Height.BUMP_STOP))
        .map(gap -> carried(position, station, gap, height))
        .orElseGet(() -> unforetold(LENGTH, "no gap is known at this lock and height"));
  }

  private static Optional<ClearanceFacts.Measured> first(
      List<ClearanceFacts.Measured> gaps, Predicate<ClearanceFacts.Measured> which) {
    return gaps.stream().filter(which).findFirst();
  }

  private Quantity carried(
      Position position, Station station, ClearanceFacts.Measured gap, Height height) {
    StationModel model = StationModel.of(station);
    boolean body =
        Optional.ofNullable(profile(position).stations().get(station))
            .map(known -> known.fixedTo() == Station.FixedTo.BODY)
            .orElse(false);
    Quantity raise = body ? heights.bodyLift(position) : Constants.mm(0);
    Quantity change =
        ClearanceFacts.change(model, station, derivation.after(position), gap.with(), raise);
    // At rest a lifted wheel hangs lower; on the stop it is where it always was.
    double perLift = height == Height.REST ? model.perBump() : 0;
    double perBump = gap.height() == height ? 0 : -model.perBump();
    return AT_POSE.linear(
        new double[] {1, 1, perLift, -perLift + perBump, perBump, 1},
        gap.gap(),
        change,
        gap.lifted() == ClearanceFacts.NOT_LIFTED
            ? heights.lift(position)
            : ABOVE_BOOK.linear(1, height(position), -1, profile(position).fenderHeight()),
        gap.lifted(),
        profile(position).bumpTravel(),
        model.uncertainty(station, change));
  }

  private AxleProfile profile(Position position) {
    return derivation.build.vehicle().axle(position.axle().orElseThrow());
  }

  /** A value that nothing known here foretells. */
  public static Quantity unforetold(Dimension dimension, String why) {
    return Figures.missing(dimension, "prediction", why, Instrument.READ, "nothing to do");
  }
}
