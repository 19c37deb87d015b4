package trammel.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One pose of an invented corner: closed form, with derivatives, by travel, and by iteration. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LinkageBenchmark {
  private static final int VARIABLES = 30;
  private static final double TRAVEL = -45;

  private HardPoints<Binary64> points;
  private DoubleWishbone<Binary64> plain;
  private DoubleWishbone<Gradient> derived;
  private WheelTravel<Binary64> travel;
  private WheelTravel<Gradient> derivedTravel;
  private Heading<Binary64> heading;
  private Heading<Gradient> derivedHeading;
  private Binary64 angle;
  private Gradient derivedAngle;
  private Gradient derivedRise;

  @Setup
  public void survey() {
    Map<HardPoint, Vector3D> places = new EnumMap<>(HardPoint.class);
    places.put(HardPoint.UPPER_FRONT_PIVOT, new Vector3D(120, 430, 620));
    places.put(HardPoint.UPPER_REAR_PIVOT, new Vector3D(-140, 440, 600));
    places.put(HardPoint.UPPER_BALL_JOINT, new Vector3D(-15, 690, 640));
    places.put(HardPoint.LOWER_FRONT_PIVOT, new Vector3D(180, 320, 335));
    places.put(HardPoint.LOWER_REAR_PIVOT, new Vector3D(-180, 320, 330));
    places.put(HardPoint.LOWER_BALL_JOINT, new Vector3D(5, 745, 300));
    places.put(HardPoint.TIE_ROD_INNER, new Vector3D(-150, 380, 400));
    places.put(HardPoint.TIE_ROD_OUTER, new Vector3D(-145, 740, 390));
    places.put(HardPoint.WHEEL_CENTER, new Vector3D(0, 820, 400));
    points = HardPoints.of(places, 0.2, 0.1);
    plain = DoubleWishbone.of(points);
    Map<HardPoint, FieldVector3D<Gradient>> variables = new EnumMap<>(HardPoint.class);
    places.forEach(
        (name, place) ->
            variables.put(
                name,
                new FieldVector3D<>(
                    Gradient.variable(VARIABLES, 3 * name.ordinal(), place.getX()),
                    Gradient.variable(VARIABLES, 3 * name.ordinal() + 1, place.getY()),
                    Gradient.variable(VARIABLES, 3 * name.ordinal() + 2, place.getZ()))));
    derived =
        DoubleWishbone.of(
            new HardPoints<>(
                variables,
                Gradient.variable(VARIABLES, 27, 0.2),
                Gradient.variable(VARIABLES, 28, 0.1)));
    travel = WheelTravel.of(plain);
    derivedTravel = WheelTravel.of(derived, plain);
    heading = new Heading.ByTieRod<>(plain.tieRodInner());
    derivedHeading = new Heading.ByTieRod<>(derived.tieRodInner());
    angle = plain.surveyedAngle().add(-0.1);
    derivedAngle = derived.surveyedAngle().add(-0.1);
    derivedRise = Gradient.variable(VARIABLES, 29, TRAVEL);
  }

  @Benchmark
  public Object pose() {
    return plain.pose(angle, heading);
  }

  @Benchmark
  public Object poseWithDerivatives() {
    return derived.pose(derivedAngle, derivedHeading);
  }

  @Benchmark
  public Object atTravel() {
    return travel.at(new Binary64(TRAVEL), heading);
  }

  @Benchmark
  public Object atTravelWithDerivatives() {
    return derivedTravel.at(derivedRise, derivedHeading);
  }

  /** The same pose from its distances, by the mathematics library's Levenberg–Marquardt. */
  @Benchmark
  public Object atTravelByLeastSquares() {
    return DistanceSolver.wishbones(points, TRAVEL, Vector3D.ZERO);
  }

  /** What two eccentrics reach at 40 mm of lift, as an outline. */
  @Benchmark
  public Object reachableSet() {
    return map().outline();
  }

  /** Their best setting against a window that they only just reach. */
  @Benchmark
  public Object bestSetting() {
    return map().best(new AngleWindow(-0.75, 0, 0.75), new AngleWindow(2.5, 3.25, 4));
  }

  private AlignmentMap map() {
    return new AlignmentMap(
        points,
        Map.of(),
        java.util.List.of(
            new AdjusterRange(Map.of(HardPoint.LOWER_FRONT_PIVOT, Vector3D.PLUS_J), -5, 5),
            new AdjusterRange(Map.of(HardPoint.LOWER_REAR_PIVOT, Vector3D.PLUS_J), -5, 5)),
        -40,
        0.1);
  }
}
