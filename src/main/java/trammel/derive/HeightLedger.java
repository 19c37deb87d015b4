package trammel.derive;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.fact.AxleLoad;
import trammel.fact.FluidLoad;
import trammel.fact.SensorRange;
import trammel.fact.SideLean;
import trammel.fact.SpringBand;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;

/**
 * How high the vehicle stands and what it stands on, corner by corner and axle by axle, today and
 * with the changes. Heights are hub to fender (mm), loads kg.
 */
public record HeightLedger(List<Corner> corners, List<AxleFigures> axles, AxleLoad gross) {

  /**
   * One corner. {@code proposed} = {@code found} + the sum of the lines + {@code bodyLift}.
   *
   * @param heightControlled whether a sensor fixes its height
   * @param book height in the book state
   * @param predicted height today by the balance of forces
   * @param measured height today as measured; absent where nobody has
   * @param rest measured less predicted: what nothing explains; absent where not measured
   * @param found height today: measured, else predicted
   * @param lines what each change adds between axle and body or frame
   * @param lift sum of the lines: suspension lift
   * @param bodyLift what blocks between body and frame add
   * @param tireLift what the tires add, which no hub-to-fender height shows
   * @param proposed height with the changes
   * @param aimed lift that the sheet aims at; absent where it aims at none
   * @param loadFound what the wheel carries today
   * @param loadProposed what it carries with the changes
   * @param fluid how spring and fluid share the load; null where no fluid carries any
   * @param sensor what is left of the height sensor's range; null where none holds the height
   */
  public record Corner(
      Position position,
      boolean heightControlled,
      Quantity book,
      Quantity predicted,
      Quantity measured,
      Quantity rest,
      Quantity found,
      List<Line> lines,
      Quantity lift,
      Quantity bodyLift,
      Quantity tireLift,
      Quantity proposed,
      Quantity aimed,
      Quantity loadFound,
      Quantity loadProposed,
      @Nullable FluidLoad fluid,
      @Nullable SensorRange sensor) {

    /** The same at a wheel that is alike, but for its own fluid and sensor. */
    private Corner at(Position other, FluidFacts facts) {
      return new Corner(
          other,
          heightControlled,
          book,
          predicted,
          measured,
          rest,
          found,
          lines,
          lift,
          bodyLift,
          tireLift,
          proposed,
          aimed,
          loadFound,
          loadProposed,
          facts.load(other).orElse(null),
          facts.sensor(other).orElse(null));
    }
  }

  /**
   * One line of a corner's ledger.
   *
   * @param what it is, in a fitter's words
   * @param lift what it adds, positive up
   */
  public record Line(String what, Quantity lift) {}

  /**
   * One axle.
   *
   * @param bands its load against each spring it stands on
   */
  public record AxleFigures(Axle axle, AxleLoad load, SideLean lean, List<SpringBand> bands) {}

  /** The ledger of a build. */
  static HeightLedger of(Derivation derivation) {
    HeightFacts heights = derivation.heights();
    LoadFacts loads = new LoadFacts(derivation);
    FluidFacts fluid = new FluidFacts(derivation);
    Map<Position, Corner> corners = new EnumMap<>(Position.class);
    for (Position position : Position.running()) {
      Corner like = corners.get(derivation.sides().like(position));
      corners.put(
          position,
          like == null ? corner(derivation, heights, fluid, position) : like.at(position, fluid));
    }
    List<AxleFigures> axles = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      axles.add(new AxleFigures(axle, loads.load(axle), loads.lean(axle), loads.bands(axle)));
    }
    return new HeightLedger(List.copyOf(corners.values()), List.copyOf(axles), loads.gross());
  }

  private static Corner corner(
      Derivation derivation, HeightFacts heights, FluidFacts fluid, Position position) {
    VehicleLoads loads = derivation.loads();
    var axle = derivation.build.vehicle().axle(position.axle().orElseThrow());
    return new Corner(
        position,
        axle.heightControlled(),
        axle.fenderHeight(),
        heights.predicted(position),
        heights.asMeasured(position),
        heights.rest(position),
        heights.found(position),
        heights.lines(position),
        heights.lift(position),
        heights.bodyLift(position),
        heights.tireLift(position),
        heights.proposed(position),
        heights.aimed(position),
        loads.wheel(position, Stage.FOUND),
        loads.wheel(position, Stage.PROPOSED),
        fluid.load(position).orElse(null),
        fluid.sensor(position).orElse(null));
  }
}
