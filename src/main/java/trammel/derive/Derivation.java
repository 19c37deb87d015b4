package trammel.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import trammel.build.Build;
import trammel.fact.Evidence;
import trammel.fact.Fact;
import trammel.subject.Axle;
import trammel.subject.Position;

/** Everything that follows from a build, before anybody judges it. */
public final class Derivation {
  /**
   * All that adds facts. No part asks for the facts of another, so that they may run side by side.
   * Another core begins with the last, the most work where corners are surveyed.
   */
  private static final List<Consumer<Derivation>> PARTS =
      List.of(
          Derivation::fitment,
          part -> new FluidFacts(part).add(),
          part -> new TravelFacts(part).add(),
          Derivation::axles,
          Derivation::vehicle,
          part -> new AlignmentFacts(part).add(),
          part -> new ShaftFacts(part).add(),
          part -> new LinkageFacts(part).add(),
          Derivation::gaps);

  final Build build;
  final LocalDate on;
  final Surveys surveys;
  final Figures figures;
  final List<Fact> facts = new ArrayList<>();

  private final Memo<Position, WheelEnd> before;
  private final Memo<Position, WheelEnd> after;
  private final Memo<Axle, Corners> corners;
  private final VehicleLoads loads;
  private final Sides sides;
  private final HeightFacts heights;
  private final Memo<Axle, AxleRide> rides;
  private final Memo<Position, RideChange> travels;
  private final Memo<Fitted, CornerTravel> ends;

  /** A wheel in a state. */
  private record Fitted(Position position, Stage stage) {}

  Derivation(Build build, LocalDate on) {
    this(build, on, new Surveys(build.vehicle()));
  }

  private Derivation(Derivation same) {
    surveys = same.surveys;
    build = same.build;
    on = same.on;
    figures = same.figures;
    before = same.before;
    after = same.after;
    corners = same.corners;
    loads = same.loads;
    sides = same.sides;
    heights = same.heights;
    rides = same.rides;
    travels = same.travels;
    ends = same.ends;
  }

  /** The same with what surveys of the build's vehicle have said before. */
  Derivation(Build build, LocalDate on, Surveys surveys) {
    this.surveys = surveys;
    this.build = build;
    this.on = on;
    this.figures = new Figures();
    this.before = new Memo<>();
    this.after = new Memo<>();
    this.corners = new Memo<>();
    this.rides = new Memo<>();
    this.travels = new Memo<>();
    this.ends = new Memo<>();
    this.loads = new VehicleLoads(build);
    this.sides = new Sides(build, loads);
    this.heights = new HeightFacts(this);
  }

  /**
   * The facts of a build.
   *
   * @param on the day it is checked, for ages
   */
  public static List<Fact> facts(Build build, LocalDate on) {
    return new Derivations(on).facts(build);
  }

  /**
   * The facts of a build, and the same without what rule books assume.
   *
   * @param on the day it is checked, for ages
   */
  public static Evidence evidence(Build build, LocalDate on) {
    return new Derivations(on).evidence(build);
  }

  /** A build with all its facts worked out. */
  static Derivation whole(Build build, LocalDate on) {
    return whole(build, on, new Surveys(build.vehicle()), some -> {});
  }

  /**
   * The same with what surveys of the build's vehicle have said before.
   *
   * @param told is told the facts of each part as it is done, in the order of the parts; all at
   *     once where no corner is surveyed
   */
  static Derivation whole(Build build, LocalDate on, Surveys surveys, Consumer<List<Fact>> told) {
    Derivation derivation = new Derivation(build, on, surveys);
    if (derivation.surveyed()) {
      derivation.sideBySide(told);
    } else {
      derivation.oneByOne();
      told.accept(Collections.unmodifiableList(derivation.facts));
    }
    return derivation;
  }

  /** The same with all that is worked out already, its facts listed apart. */
  Derivation apart() {
    return new Derivation(this);
  }

  /** Works the parts out in their order. */
  void oneByOne() {
    PARTS.forEach(part -> part.accept(this));
  }

  /**
   * Works the parts out on every core, which pays where hard points make them much work.
   *
   * @param told is told the facts of each part while others are worked out
   */
  void sideBySide(Consumer<List<Fact>> told) {
    List<Derivation> parts = PARTS.stream().map(part -> apart()).toList();
    List<ForkJoinTask<?>> tasks = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Consumer<Derivation> part = PARTS.get(i);
      Derivation apart = parts.get(i);
      tasks.add(ForkJoinTask.adapt(() -> part.accept(apart)));
    }
    for (int i = tasks.size() - 1; i >= 0; i--) {
      tasks.get(i).fork();
    }
    try {
      for (int i = 0; i < parts.size(); i++) {
        tasks.get(i).join();
        List<Fact> found = Collections.unmodifiableList(parts.get(i).facts);
        facts.addAll(found);
        told.accept(found);
      }
    } finally {
      tasks.forEach(task -> task.cancel(false));
    }
  }

  /** Whether any corner is surveyed. */
  private boolean surveyed() {
    return Position.running().stream()
        .anyMatch(position -> corners(position.axle().orElseThrow()).surveyed(position));
  }

  private void fitment() {
    new HubFacts(this).add();
    new TireFacts(this).add();
    heights.add(facts);
    new LiftClaims(this, heights).add();
    new SpringSeats(this).add();
    new LoadFacts(this).add();
  }

  private void axles() {
    new BarFacts(this).add();
    new AxleFacts(this).add();
  }

  private void vehicle() {
    new VehicleFacts(this).add();
    new BodyFacts(this).add();
    new AirFacts(this).add();
    new LegalFacts(this).add();
    new OrderFacts(this).add();
  }

  private void gaps() {
    new ClearanceFacts(this).add();
    new StopFacts(this).add();
  }

  /** What axles and wheels carry. */
  VehicleLoads loads() {
    return loads;
  }

  /** Which wheels are alike. */
  Sides sides() {
    return sides;
  }

  /** How high each corner stands. */
  HeightFacts heights() {
    return heights;
  }

  /** The wheel as it is today, worked out once. */
  WheelEnd before(Position position) {
    return before.get(
        position,
        which ->
            sides.sameParts(which, Stage.FOUND)
                ? before(which.left())
                : new WheelEnd(build.before(which), figures));
  }

  /** The wheel with the changes, worked out once. */
  WheelEnd after(Position position) {
    return after.get(
        position,
        which ->
            sides.sameParts(which, Stage.PROPOSED)
                ? after(which.left())
                : new WheelEnd(build.after(which), figures, build.trial()));
  }

  /** How the seats of an axle's springs part over its travel. */
  SpringTravel springs(Axle axle) {
    return surveys.springs(axle);
  }

  /** Where a wheel stands in its suspension, worked out once. */
  RideChange travel(Position position) {
    Position like = sides.like(position);
    return travels.get(like, which -> RideChange.of(this, which));
  }

  /**
   * Where a wheel's way ends in a state, worked out once; for both sides where they have the same
   * parts.
   */
  CornerTravel ends(Position position, Stage stage) {
    return ends.get(
        new Fitted(position, stage),
        which ->
            sides.sameParts(which.position, Stage.BOOK)
                    && sides.sameParts(which.position, which.stage)
                ? ends(which.position.left(), which.stage)
                : new CornerTravel(build, which.position, which.stage));
  }

  /** How high the frame stands over an axle, worked out once. */
  AxleRide ride(Axle axle) {
    return rides.get(axle, which -> AxleRide.of(this, which));
  }

  /** The corners of an axle, solved once. */
  Corners corners(Axle axle) {
    return corners.get(axle, which -> new Corners(this, which, heights));
  }
}
