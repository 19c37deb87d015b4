package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.util.Binary64;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildSheet;
import trammel.build.BuildSheet.Printout;
import trammel.build.BuildSheet.State;
import trammel.catalog.Adjuster;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.catalog.AxleProfile;
import trammel.catalog.AxleProfile.Layout;
import trammel.catalog.Linkage;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.Shift;
import trammel.catalog.SuspensionPart.UpperArm;
import trammel.derive.WheelAlignment.Depth;
import trammel.geometry.Heading;
import trammel.geometry.OutOfReach;
import trammel.geometry.WheelTravel;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/** Both corners of an axle, each at the depth at which it is known. */
final class Corners {
  private static final Formula ON_RACK =
      new Formula("travel on the rack", "book height − height on the rack", "definition");
  private static final Formula PROPOSED_HEIGHT =
      new Formula("height as proposed", "height as found + suspension lift", "definition");

  private final Derivation derivation;
  private final Build build;
  private final Axle axle;
  private final AxleProfile profile;
  private final HeightFacts heights;

  private final Map<Position, Optional<Surveyed>> solvable = new EnumMap<>(Position.class);
  private final Memo<Position, CornerModel> models = new Memo<>();

  Corners(Derivation derivation, Axle axle, HeightFacts heights) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.axle = axle;
    this.profile = build.vehicle().axle(axle);
    this.heights = heights;
  }

  /**
   * What is the same for all corners of the same numbers, as left and right mostly are; both empty
   * where the linkage does not reach the proposed height.
   */
  record Solution(Optional<SurveyedAlignment.Solved> solved, Optional<CornerPoses> poses) {}

  /**
   * A corner solved from hard points.
   *
   * @param key the numbers that the solution follows from
   */
  record Surveyed(
      CornerModel model,
      Variables variables,
      SurveyedAlignment alignment,
      Surveys.CornerKey key,
      Solution solution) {

    Optional<SurveyedAlignment.Solved> solved() {
      return solution.solved;
    }

    Optional<CornerPoses> poses() {
      return solution.poses;
    }
  }

  /** The alignment of a wheel at the depth at which it is known. */
  WheelAlignment alignment(Position position) {
    Quantity rake = rake(position);
    Optional<Quantity> missing = missing(position, rake);
    if (!surveyed(position)) {
      return rack(position);
    }
    if (missing.isPresent()) {
      return unknown(missing.get().absence());
    }
    return solvable(position)
        .map(corner -> corner.alignment.quantities(corner.solved().orElseThrow()))
        .orElseGet(
            () ->
                unknown(
                    new Absence(
                        "alignment",
                        "the linkage does not reach the proposed height",
                        Instrument.READ,
                        "raise it less")));
  }

  /** A corner solved from its hard points; only where nothing of it is missing. */
  Surveyed solve(Position position) {
    Quantity rake = rake(position);
    Optional<Printout> shown = asFound(position);
    CornerModel model = model(position);
    Variables variables =
        position.side().orElseThrow() == Side.LEFT
            ? model.variables()
            : model.variables().again("right", model.shared());
    SurveyedAlignment alignment =
        new SurveyedAlignment(model, variables, angles(shown), profile.alignment(), rake);
    Angles rack = angles(shown);
    List<Double> values = new ArrayList<>(model.variables().values());
    values.add(rake.value());
    values.add(rack.camber().value());
    values.add(rack.caster().value());
    values.add(rack.toe().isKnown() ? rack.toe().value() : Double.NaN);
    Surveys.CornerKey key =
        new Surveys.CornerKey(axle, newArm(position) != null, model.ranges(), values);
    return new Surveyed(
        model,
        variables,
        alignment,
        key,
        derivation.surveys.corner(
            key,
            () -> {
              Optional<SurveyedAlignment.Solved> solved = alignment.solve();
              return new Solution(solved, solved.map(found -> new CornerPoses(model, found)));
            }));
  }

  /**
   * Whether the changes touch the alignment: by an arm, a bolt, a lift here or a rake from there.
   */
  boolean touched() {
    return build.changes(axle, PartKind.UPPER_ARM, PartKind.ECCENTRIC_BOLT)
        || Position.of(axle).stream()
            .anyMatch(p -> moved(heights.lift(p), 0) || moved(rake(p), LEVEL));
  }

  /** A rake below this is none (degrees). */
  private static final double LEVEL = 1e-6;

  private static boolean moved(Quantity quantity, double least) {
    return !quantity.isKnown() || Math.abs(quantity.value()) > least;
  }

  private Quantity rake(Position position) {
    return Rake.of(derivation, profile.alignment(), position.side().orElseThrow());
  }

  /**
   * A corner solved from its hard points, where all of it is known and within reach. It is much
   * work: who asks for it meanwhile waits.
   */
  synchronized Optional<Surveyed> solvable(Position position) {
    return solvable.computeIfAbsent(
        position,
        which ->
            surveyed(which) && missing(which, rake(which)).isEmpty()
                ? Optional.of(solve(which)).filter(corner -> corner.solved().isPresent())
                : Optional.empty());
  }

  /** Why a surveyed wheel cannot be solved: what of it nobody has given, or where it ends. */
  Absence unsolved(Position position) {
    Optional<Quantity> missing = missing(position, rake(position));
    return missing.isPresent()
        ? Variables.absence(missing.get())
        : new Absence(
            "linkage",
            limit(position).orElse("it does not reach the proposed height"),
            Instrument.READ,
            "raise it less");
  }

  /** What keeps a wheel's linkage from the proposed height, where something does. */
  Optional<String> limit(Position position) {
    if (!surveyed(position) || missing(position, rake(position)).isPresent()) {
      return Optional.empty();
    }
    CornerModel model = model(position);
    return WheelTravel.of(model.plain(true, List.of()))
                .at(
                    new Binary64(model.travel(SurveyedAlignment.PROPOSED)),
                    new Heading.Reset<>(new Binary64(0)))
            instanceof OutOfReach<Binary64> out
        ? Optional.of(out.limit())
        : Optional.empty();
  }

  /** Whether a wheel's linkage is surveyed with the arms that it has. */
  boolean surveyed(Position position) {
    UpperArm arm = newArm(position);
    return profile.layout().solved()
        && CornerModel.complete(profile)
        && build.before(position).sameAs(build.bookAt(position), PartKind.UPPER_ARM)
        && (arm == null || (profile.layout() == Layout.DOUBLE_WISHBONE && arm.ballJoint() != null));
  }

  private Optional<Quantity> missing(Position position, Quantity rake) {
    if (!surveyed(position)) {
      return Optional.empty();
    }
    Optional<Printout> shown = asFound(position);
    List<Quantity> needed =
        new ArrayList<>(SurveyedAlignment.needed(profile.alignment(), angles(shown)));
    needed.add(rake);
    Quantity variable = model(position).variables().missing();
    if (variable != null) {
      needed.add(variable);
    }
    return needed.stream().filter(quantity -> !quantity.isKnown()).findFirst();
  }

  private CornerModel model(Position position) {
    return models.get(position, which -> model(which, asFound(which)));
  }

  private CornerModel model(Position position, Optional<Printout> shown) {
    RideChange ride = derivation.travel(position);
    Quantity asShown =
        shown
            .map(
                printout ->
                    printout.height().isKnown()
                        ? ON_RACK.linear(1, profile.fenderHeight(), -1, printout.height())
                        : ride.found())
            .orElse(ride.surveyed());
    UpperArm arm = newArm(position);
    Shift shift = arm == null ? null : arm.ballJoint();
    Angles surveyed = profile.alignment().asSurveyed();
    CornerTravel proposed = derivation.ends(position, Stage.PROPOSED);
    CornerTravel found = derivation.ends(position, Stage.FOUND);
    return new CornerModel(
        profile.linkage(),
        surveyed.camber(),
        surveyed.toe(),
        List.of(asShown, ride.proposed()),
        shift == null ? null : List.of(shift.fore(), shift.out(), shift.up()),
        adjusters(position, arm),
        List.of(
            proposed.stopRise(),
            proposed.farthestHang(),
            lock(profile.linkage().steering()),
            found.stopRise(),
            found.farthestHang()));
  }

  /** Steering from straight ahead to either lock: of a pitman arm where there is one. */
  private static Quantity lock(Linkage.Steering steering) {
    return steering.pitmanPivot() == null ? steering.rackTravel() : steering.pitmanAngle();
  }

  private Angles angles(Optional<Printout> shown) {
    return shown.map(Printout::angles).orElse(profile.alignment().asSurveyed());
  }

  private Optional<Printout> asFound(Position position) {
    return printouts(position).stream()
        .filter(printout -> printout.state() == State.AS_FOUND)
        .findFirst();
  }

  private List<Printout> printouts(Position position) {
    return build.measurements().alignment().stream()
        .filter(printout -> printout.at() == position)
        .toList();
  }

  /** The upper arm that the changes bring; null where the old one stays. */
  private @Nullable UpperArm newArm(Position position) {
    return build.changes(position, PartKind.UPPER_ARM)
        ? build.after(position).one(PartKind.UPPER_ARM, UpperArm.class).orElse(null)
        : null;
  }

  /**
   * The adjusters that still have a range: those that are there and not stuck, and the arm's own.
   */
  private List<Adjuster> adjusters(Position position, @Nullable UpperArm arm) {
    BuildSheet.AdjusterState state =
        position.axle().orElseThrow() == Axle.FRONT
            ? build.found().adjusters().front()
            : build.found().adjusters().rear();
    boolean stuck =
        state == BuildSheet.AdjusterState.SEIZED || state == BuildSheet.AdjusterState.ABSENT;
    List<Adjuster> left = new ArrayList<>();
    for (Adjuster adjuster : profile.adjusters()) {
      boolean onOldArm = arm != null && adjuster.moves() == Adjuster.Moves.UPPER_BALL_JOINT;
      boolean there = fitted(build, position, adjuster);
      if (!onOldArm && there && (!stuck || newBolts(build, position))) {
        left.add(adjuster);
      }
    }
    if (arm != null) {
      left.addAll(arm.adjusters());
    }
    return left;
  }

  /** Whether an adjuster is there: fitted by the maker, or bought apart. */
  static boolean fitted(Build build, Position position, Adjuster adjuster) {
    return !adjuster.soldApart() || !build.after(position).all(PartKind.ECCENTRIC_BOLT).isEmpty();
  }

  /** Whether the changes bring eccentric bolts, which turn whatever the old ones did. */
  static boolean newBolts(Build build, Position position) {
    return build.changes(position, PartKind.ECCENTRIC_BOLT)
        && !build.after(position).all(PartKind.ECCENTRIC_BOLT).isEmpty();
  }

  /** Camber, then caster, as proposed with nothing turned; empty where they are out of reach. */
  List<Quantity> untouched(Position position) {
    if (surveyed(position)) {
      return solvable(position)
          .map(corner -> corner.alignment().untouched(corner.solved().orElseThrow()))
          .orElse(List.of());
    }
    WheelAlignment wheel =
        rack(position, printouts(position).stream().map(RackAlignment::withoutEnds).toList());
    return List.of(wheel.camber(), wheel.caster());
  }

  /** Toe as proposed with nothing turned, from hard points; empty where they do not give it. */
  Optional<Quantity> untouchedToe(Position position) {
    return solvable(position)
        .flatMap(corner -> corner.alignment().untouchedToe(corner.solved().orElseThrow()));
  }

  private WheelAlignment rack(Position position) {
    return rack(position, printouts(position));
  }

  private WheelAlignment rack(Position position, List<Printout> printouts) {
    Quantity lift = heights.lift(position);
    Quantity height = heights.found(position);
    return RackAlignment.of(
        printouts,
        profile.alignment(),
        PROPOSED_HEIGHT.linear(1, height, 1, lift),
        lift,
        newArm(position),
        profile.layout().solved());
  }

  private static WheelAlignment unknown(@Nullable Absence absence) {
    Absence reason =
        absence == null
            ? new Absence("alignment", "a value is missing", Instrument.READ, "give it")
            : absence;
    Quantity unknown = Quantity.absent(ANGLE, reason);
    return new WheelAlignment(
        Depth.SURVEYED,
        unknown,
        unknown,
        unknown,
        true,
        unknown,
        true,
        "not known",
        true,
        Quantity.absent(Dimension.LENGTH, reason));
  }
}
