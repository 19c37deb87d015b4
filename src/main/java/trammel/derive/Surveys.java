package trammel.derive;

import java.util.List;
import java.util.function.Supplier;
import trammel.catalog.VehicleProfile;
import trammel.geometry.AdjusterRange;
import trammel.subject.Axle;

/**
 * What the surveys of one vehicle's corners say, each thing worked out once for the numbers that it
 * follows from: of builds derived one after another most ask for the same corners, and all for the
 * same gaps as found. It keeps plain numbers, derivatives, and quantities of the vehicle, but none
 * of any build.
 */
final class Surveys {
  private final VehicleProfile vehicle;
  private final Memo<Axle, SpringTravel> springs = new Memo<>();
  private final Latest<CornerKey, Corners.Solution> corners = new Latest<>();
  private final Latest<SweepKey, SweptGaps.Near> sweeps = new Latest<>();
  private final Latest<GapKey, SweptGaps.Found> gaps = new Latest<>();

  Surveys(VehicleProfile vehicle) {
    this.vehicle = vehicle;
  }

  /**
   * The numbers that a solved corner follows from.
   *
   * @param newArm whether an upper arm takes the place of the surveyed one
   * @param adjusters what each that has a range left moves, and how far
   * @param values of all that the corner varies with, and of what the rack showed
   */
  record CornerKey(Axle axle, boolean newArm, List<AdjusterRange> adjusters, List<Double> values) {}

  /** The numbers that a swept tire follows from, on the linkage as surveyed. */
  record SweepKey(Axle axle, List<Double> values) {}

  /** The numbers that the gaps of a wheel, as proposed and as found, follow from. */
  record GapKey(CornerKey corner, boolean touched, List<Double> values) {}

  /** How the seats of an axle's springs part over its travel. */
  SpringTravel springs(Axle axle) {
    return springs.get(axle, which -> new SpringTravel(vehicle.axle(which)));
  }

  Corners.Solution corner(CornerKey key, Supplier<Corners.Solution> solve) {
    return corners.get(key, solve);
  }

  SweptGaps.Near asFound(SweepKey key, Supplier<SweptGaps.Near> sweep) {
    return sweeps.get(key, sweep);
  }

  SweptGaps.Found gaps(GapKey key, Supplier<SweptGaps.Found> find) {
    return gaps.get(key, find);
  }
}
