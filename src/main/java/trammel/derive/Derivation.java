package trammel.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.build.Build;
import trammel.fact.Evidence;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.subject.Axle;
import trammel.subject.Position;

/** Everything that follows from a build, before anybody judges it. */
public final class Derivation {
  final Build build;
  final LocalDate on;
  final Surveys surveys;
  final Figures figures = new Figures();
  final List<Fact> facts = new ArrayList<>();

  private final Map<Position, WheelEnd> before = new EnumMap<>(Position.class);
  private final Map<Position, WheelEnd> after = new EnumMap<>(Position.class);
  private final Map<Axle, Corners> corners = new EnumMap<>(Axle.class);
  private final VehicleLoads loads;
  private final HeightFacts heights;
  private final Map<Axle, AxleRide> rides = new EnumMap<>(Axle.class);
  private final Map<Position, RideChange> travels = new EnumMap<>(Position.class);

  Derivation(Build build, LocalDate on) {
    this(build, on, new Surveys(build.vehicle()));
  }

  private Derivation(Build build, LocalDate on, Surveys surveys) {
    this.surveys = surveys;
    this.build = build;
    this.on = on;
    this.loads = new VehicleLoads(build);
    for (Position position : Position.values()) {
      before.put(position, new WheelEnd(build.before(position), figures));
      after.put(position, new WheelEnd(build.after(position), figures, build.trial()));
    }
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

  /**
   * Of {@link #facts} only rooms over the ground and angles under the vehicle: they ask for no
   * linkage and no gap, which is most of the work.
   */
  public static List<Fact> underbody(Build build, LocalDate on) {
    Derivation derivation = new Derivation(build, on);
    new UnderbodyFacts(derivation).add();
    return List.copyOf(derivation.facts);
  }

  /**
   * Of {@link #facts} only how spring and fluid share the load of a corner, where fluid has any.
   */
  public static Optional<FluidLoad> fluidLoad(Build build, LocalDate on, Position position) {
    return new FluidFacts(new Derivation(build, on)).load(position);
  }

  /** A build with all its facts worked out. */
  static Derivation whole(Build build, LocalDate on) {
    return whole(build, on, new Surveys(build.vehicle()));
  }

  /** The same with what surveys of the build's vehicle have said before. */
  static Derivation whole(Build build, LocalDate on, Surveys surveys) {
    Derivation derivation = new Derivation(build, on, surveys);
    new HubFacts(derivation).add();
    new TireFacts(derivation).add();
    derivation.heights.add();
    new LiftClaims(derivation, derivation.heights).add();
    new SpringSeats(derivation).add();
    new LoadFacts(derivation).add();
    new FluidFacts(derivation).add();
    new ClearanceFacts(derivation).add();
    new TravelFacts(derivation).add();
    new AlignmentFacts(derivation).add();
    new LinkageFacts(derivation).add();
    new BarFacts(derivation).add();
    new AxleFacts(derivation).add();
    new ShaftFacts(derivation).add();
    new VehicleFacts(derivation).add();
    new BodyFacts(derivation).add();
    new AirFacts(derivation).add();
    new LegalFacts(derivation).add();
    new OrderFacts(derivation).add();
    return derivation;
  }

  /** What axles and wheels carry. */
  VehicleLoads loads() {
    return loads;
  }

  /** How high each corner stands. */
  HeightFacts heights() {
    return heights;
  }

  WheelEnd before(Position position) {
    return before.get(position);
  }

  WheelEnd after(Position position) {
    return after.get(position);
  }

  /** How the seats of an axle's springs part over its travel. */
  SpringTravel springs(Axle axle) {
    return surveys.springs(axle);
  }

  /** Where a wheel stands in its suspension, worked out once. */
  RideChange travel(Position position) {
    return travels.computeIfAbsent(position, which -> RideChange.of(this, which));
  }

  /** How high the frame stands over an axle, worked out once. */
  AxleRide ride(Axle axle) {
    return rides.computeIfAbsent(axle, which -> AxleRide.of(this, which));
  }

  /** The corners of an axle, solved once. */
  Corners corners(Axle axle) {
    return corners.computeIfAbsent(axle, which -> new Corners(this, which, heights));
  }
}
