package trammel.derive;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.FieldSinCos;
import org.jspecify.annotations.Nullable;
import trammel.catalog.Adjuster;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage;
import trammel.catalog.SurveyPoint;
import trammel.geometry.AdjusterRange;
import trammel.geometry.Corner;
import trammel.geometry.HardPoint;
import trammel.geometry.HardPoints;
import trammel.geometry.Heading;
import trammel.geometry.Pose;
import trammel.geometry.WheelTravel;
import trammel.quantity.Quantity;

/**
 * A surveyed corner as variables: its hard points, the pose they were surveyed in, the arm that is
 * proposed, what adjusts it, and the ride heights concerned.
 */
final class CornerModel {
  /** One adjuster, its range and the variables that give the range. */
  private record Turn(Adjuster adjuster, AdjusterRange range, int from, int to) {}

  private final Variables.Collector collector = new Variables.Collector();
  private final Map<HardPoint, int[]> points = new EnumMap<>(HardPoint.class);
  private final int camber;
  private final int toe;
  private final int[] heights;
  private final int @Nullable [] armShift;
  private final int[] ends;
  private final @Nullable Vector3D pitmanPivot;
  private final List<Turn> turns = new ArrayList<>();
  private final Set<Integer> shared = new LinkedHashSet<>();
  private final Variables variables;

  /**
   * As surveyed, with derivatives and plainly; null until asked for. Two threads may make the same
   * one twice.
   */
  private @Nullable Corner<Gradient> variedAsSurveyed;

  private @Nullable Corner<Binary64> plainAsSurveyed;

  /**
   * @param surveyedCamber what the rack showed as surveyed
   * @param surveyedToe the same
   * @param heights travels of the wheel that matter, from as surveyed
   * @param ballJoint where a replacement arm has its ball joint against the book arm's; null for
   *     the book arm
   * @param adjusters those that still have a range
   * @param ends what bounds a sweep, see {@link #BUMP}; absent ones stay out
   */
  CornerModel(
      Linkage linkage,
      Quantity surveyedCamber,
      Quantity surveyedToe,
      List<Quantity> heights,
      @Nullable List<Quantity> ballJoint,
      List<Adjuster> adjusters,
      List<Quantity> ends) {
    for (HardPoint point : joints(linkage, adjusters)) {
      SurveyPoint at = linkage.points().get(point);
      points.put(point, collector.add(at, point.words()));
    }
    camber = collector.add(surveyedCamber);
    toe = collector.add(surveyedToe);
    shared.add(camber);
    shared.add(toe);
    this.heights = new int[heights.size()];
    for (int i = 0; i < this.heights.length; i++) {
      this.heights[i] = collector.add(heights.get(i));
      shared.add(this.heights[i]);
    }
    armShift = ballJoint == null ? null : ballJoint.stream().mapToInt(collector::add).toArray();
    List<int[]> sizes = new ArrayList<>();
    for (Adjuster adjuster : adjusters) {
      boolean eccentric = adjuster.means() == Adjuster.Means.ECCENTRIC;
      sizes.add(
          new int[] {
            collector.add(eccentric ? adjuster.eccentricity() : adjuster.from()),
            collector.add(eccentric ? adjuster.eccentricity() : adjuster.to())
          });
    }
    SurveyPoint pitman = linkage.steering().pitmanPivot();
    pitmanPivot =
        pitman != null && SurveyedShape.known(pitman) ? SurveyedShape.vector(pitman) : null;
    this.ends = new int[ends.size()];
    for (int i = 0; i < this.ends.length; i++) {
      int earlier = ends.indexOf(ends.get(i));
      this.ends[i] =
          !ends.get(i).isKnown()
              ? -1
              : earlier < i ? this.ends[earlier] : collector.add(ends.get(i));
    }
    variables = collector.all();
    if (variables.missing() == null) {
      for (int i = 0; i < adjusters.size(); i++) {
        turns.add(turn(adjusters.get(i), sizes.get(i)[0], sizes.get(i)[1]));
      }
    }
  }

  /**
   * Travel to the bump stop and to droop with what is proposed, steering to either lock, and travel
   * to both ends with what is fitted today: what bounds a sweep.
   */
  static final int BUMP = 0;

  static final int DROOP = 1;
  static final int LOCK = 2;
  static final int BUMP_AS_FOUND = 3;
  static final int DROOP_AS_FOUND = 4;

  /**
   * Where the tie rod's inner end is once the steering is turned: along a rack (mm), or about a
   * pitman or idler arm's upright pivot (degrees).
   */
  <T extends CalculusFieldElement<T>> FieldVector3D<T> steered(FieldVector3D<T> straight, T steer) {
    Vector3D pivot = pitmanPivot;
    if (pivot == null) {
      return straight.add(new FieldVector3D<>(steer, Vector3D.PLUS_J));
    }
    FieldSinCos<T> turn = steer.toRadians().sinCos();
    T fore = straight.getX().subtract(pivot.getX());
    T out = straight.getY().subtract(pivot.getY());
    return new FieldVector3D<>(
        fore.multiply(turn.cos()).subtract(out.multiply(turn.sin())).add(pivot.getX()),
        fore.multiply(turn.sin()).add(out.multiply(turn.cos())).add(pivot.getY()),
        straight.getZ());
  }

  /** Whether all that bounds a sweep is known. */
  boolean bounded() {
    return Arrays.stream(ends).noneMatch(end -> end < 0);
  }

  /** One of the sweep's bounds. */
  double end(int which) {
    return value(ends[which]);
  }

  /** One of the sweep's bounds as a variable. */
  Gradient endVariable(int which) {
    return variables.variable(ends[which]);
  }

  /** Whether a linkage has all the hard points of its layout. */
  static boolean complete(AxleProfile profile) {
    return profile.linkage().points().keySet().containsAll(profile.layout().joints());
  }

  /** The hard points that take part, in the order of the variables. */
  private static List<HardPoint> joints(Linkage linkage, List<Adjuster> adjusters) {
    boolean bolts = adjusters.stream().anyMatch(adjuster -> adjuster.moves().atKnuckle());
    return Arrays.stream(HardPoint.values())
        .filter(point -> linkage.points().containsKey(point) && (bolts || !point.ofKnuckleBolt()))
        .toList();
  }

  Variables variables() {
    return variables;
  }

  /** The variables that are one and the same for both sides. */
  Set<Integer> shared() {
    return shared;
  }

  private Turn turn(Adjuster adjuster, int from, int to) {
    Map<HardPoint, Vector3D> perMillimeter = new EnumMap<>(HardPoint.class);
    for (HardPoint point : adjuster.moves().points()) {
      perMillimeter.put(
          point, adjuster.means() == Adjuster.Means.LENGTH ? alongArm(point) : along(adjuster));
    }
    double least = value(from);
    boolean eccentric = adjuster.means() == Adjuster.Means.ECCENTRIC;
    return new Turn(
        adjuster,
        new AdjusterRange(perMillimeter, eccentric ? -least : least, value(to)),
        from,
        to);
  }

  /** In plan, the way that one mm of an adjuster goes. */
  private static Vector3D along(Adjuster adjuster) {
    if (!adjuster.toward().isKnown()) {
      return Vector3D.PLUS_J;
    }
    double toward = Math.toRadians(adjuster.toward().value());
    return new Vector3D(Math.sin(toward), Math.cos(toward), 0);
  }

  /** From between an arm's pivots to its ball joint. */
  private Vector3D alongArm(HardPoint ball) {
    boolean upper = ball == HardPoint.UPPER_BALL_JOINT;
    Vector3D front = point(upper ? HardPoint.UPPER_FRONT_PIVOT : HardPoint.LOWER_FRONT_PIVOT);
    Vector3D rear = point(upper ? HardPoint.UPPER_REAR_PIVOT : HardPoint.LOWER_REAR_PIVOT);
    return point(ball).subtract(front.add(rear).scalarMultiply(0.5)).normalize();
  }

  private double value(int variable) {
    return variables.valueOf(variable);
  }

  private Vector3D point(HardPoint point) {
    int[] at = points.get(point);
    return new Vector3D(value(at[0]), value(at[1]), value(at[2]));
  }

  /** The hard points in plain numbers. */
  HardPoints<Binary64> plain() {
    Map<HardPoint, Vector3D> plain = new EnumMap<>(HardPoint.class);
    points.keySet().forEach(point -> plain.put(point, point(point)));
    return HardPoints.of(plain, value(camber), value(toe));
  }

  /** The replacement arm's shift in plain numbers (mm). */
  Map<HardPoint, Vector3D> arm() {
    return armShift == null
        ? Map.of()
        : Map.of(
            HardPoint.UPPER_BALL_JOINT,
            new Vector3D(value(armShift[0]), value(armShift[1]), value(armShift[2])));
  }

  /** The adjusters' ranges. */
  List<AdjusterRange> ranges() {
    return turns.stream().map(Turn::range).toList();
  }

  /** The adjusters, in the order of their ranges. */
  List<Adjuster> adjusters() {
    return turns.stream().map(Turn::adjuster).toList();
  }

  /** One of the ride heights (mm of travel). */
  double travel(int height) {
    return value(heights[height]);
  }

  /** The variable of one of the ride heights. */
  int heightIndex(int height) {
    return heights[height];
  }

  /** A pivot where the settings have moved it (mm). */
  Vector3D pivot(HardPoint pivot, List<Double> settings) {
    Vector3D at = point(pivot);
    for (int i = 0; i < settings.size(); i++) {
      Vector3D shift = turns.get(i).range.perMillimeter().get(pivot);
      at = shift == null ? at : at.add(settings.get(i), shift);
    }
    return at;
  }

  /** A hard point as surveyed, as variables. */
  FieldVector3D<Gradient> pivotVariable(HardPoint point) {
    return variables.point(points.get(point));
  }

  /** The corner with derivatives, as surveyed or with the proposed arm and settings. */
  Corner<Gradient> varied(boolean proposed, List<Double> settings) {
    Map<HardPoint, FieldVector3D<Gradient>> shifts = new EnumMap<>(HardPoint.class);
    if (proposed && armShift != null) {
      shifts.put(HardPoint.UPPER_BALL_JOINT, variables.point(armShift));
    }
    for (int i = 0; proposed && i < settings.size(); i++) {
      shift(turns.get(i), settings.get(i), shifts);
    }
    Corner<Gradient> surveyed = variedAsSurveyed();
    return shifts.isEmpty() ? surveyed : surveyed.shifted(shifts);
  }

  private Corner<Gradient> variedAsSurveyed() {
    Corner<Gradient> surveyed = variedAsSurveyed;
    if (surveyed == null) {
      Map<HardPoint, FieldVector3D<Gradient>> at = new EnumMap<>(HardPoint.class);
      points.forEach((point, index) -> at.put(point, variables.point(index)));
      surveyed =
          Corner.of(
              new HardPoints<>(at, variables.variable(camber), variables.variable(toe)), Map.of());
      variedAsSurveyed = surveyed;
    }
    return surveyed;
  }

  private void shift(Turn turn, double setting, Map<HardPoint, FieldVector3D<Gradient>> shifts) {
    int size = setting < 0 ? turn.from : turn.to;
    double end = value(size);
    Gradient moved =
        end == 0 ? variables.constant(setting) : variables.variable(size).multiply(setting / end);
    turn.range
        .perMillimeter()
        .forEach(
            (point, direction) ->
                shifts.merge(point, new FieldVector3D<>(moved, direction), FieldVector3D::add));
  }

  /** The corner in plain numbers with the proposed arm and settings. */
  Corner<Binary64> plain(boolean proposed, List<Double> settings) {
    Corner<Binary64> surveyed = plainAsSurveyed();
    if (!proposed) {
      return surveyed;
    }
    Map<HardPoint, FieldVector3D<Binary64>> shifts = new EnumMap<>(HardPoint.class);
    arm().forEach((point, shift) -> add(shifts, point, shift));
    for (int i = 0; i < settings.size(); i++) {
      double setting = settings.get(i);
      turns
          .get(i)
          .range
          .perMillimeter()
          .forEach((point, shift) -> add(shifts, point, shift.scalarMultiply(setting)));
    }
    return shifts.isEmpty() ? surveyed : surveyed.shifted(shifts);
  }

  private Corner<Binary64> plainAsSurveyed() {
    Corner<Binary64> surveyed = plainAsSurveyed;
    if (surveyed == null) {
      surveyed = Corner.of(plain(), Map.of());
      plainAsSurveyed = surveyed;
    }
    return surveyed;
  }

  private static void add(
      Map<HardPoint, FieldVector3D<Binary64>> shifts, HardPoint point, Vector3D shift) {
    shifts.merge(
        point,
        new FieldVector3D<>(org.hipparchus.util.Binary64Field.getInstance(), shift),
        FieldVector3D::add);
  }

  /**
   * The pose with derivatives at one of the ride heights, toe reset; null where it is out of reach.
   */
  @Nullable Pose<Gradient> pose(boolean proposed, List<Double> settings, int height, double toe) {
    return pose(
        varied(proposed, settings),
        plain(proposed, settings),
        height,
        new Heading.Reset<>(variables.constant(toe)));
  }

  /**
   * The pose as proposed, straight ahead, with the tie rod left at a length (mm); null where it is
   * out of reach.
   */
  @Nullable Pose<Gradient> steered(List<Double> settings, int height, Gradient tieRod) {
    Corner<Gradient> linkage = varied(true, settings);
    return pose(
        linkage,
        plain(true, settings),
        height,
        new Heading.ByTieRod<>(linkage.tieRodInner(), tieRod));
  }

  private @Nullable Pose<Gradient> pose(
      Corner<Gradient> linkage, Corner<Binary64> plain, int height, Heading<Gradient> heading) {
    return WheelTravel.of(linkage, plain).at(variables.variable(heights[height]), heading)
            instanceof Pose<Gradient> pose
        ? pose
        : null;
  }
}
