package trammel.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;

/** Adjusters as they may be met on the truck of truck-wishbones.csv, at random. */
final class RandomAdjusters {
  private static final Vector3D OUTWARD = Vector3D.PLUS_J;

  private final Random random;
  final HardPoints<Binary64> points;

  RandomAdjusters(long seed) {
    random = new Random(seed);
    points = points(random.nextBoolean() ? "front" : "rear");
  }

  static HardPoints<Binary64> points(String axle) {
    return PublishedCorner.of("truck-wishbones.csv", "point," + axle).hardPoints(0, 0);
  }

  double within(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  /** Joints that adjusters of the trade move: one pivot, both of an arm, or a ball joint. */
  private List<Map<HardPoint, Vector3D>> kinds() {
    List<Map<HardPoint, Vector3D>> kinds = new ArrayList<>();
    for (HardPoint pivot :
        List.of(
            HardPoint.UPPER_FRONT_PIVOT,
            HardPoint.UPPER_REAR_PIVOT,
            HardPoint.LOWER_FRONT_PIVOT,
            HardPoint.LOWER_REAR_PIVOT,
            HardPoint.UPPER_BALL_JOINT,
            HardPoint.LOWER_BALL_JOINT)) {
      kinds.add(Map.of(pivot, OUTWARD));
    }
    kinds.add(Map.of(HardPoint.UPPER_FRONT_PIVOT, OUTWARD, HardPoint.UPPER_REAR_PIVOT, OUTWARD));
    kinds.add(Map.of(HardPoint.LOWER_FRONT_PIVOT, OUTWARD, HardPoint.LOWER_REAR_PIVOT, OUTWARD));
    kinds.add(Map.of(HardPoint.UPPER_BALL_JOINT, new Vector3D(-1, 0, 0)));
    return kinds;
  }

  /** Some adjusters of different kinds, with 0 inside their ranges. */
  List<AdjusterRange> adjusters(int count) {
    List<Map<HardPoint, Vector3D>> kinds = kinds();
    Collections.shuffle(kinds, random);
    return kinds.subList(0, count).stream()
        .map(kind -> new AdjusterRange(kind, -within(0, 5), within(0, 5)))
        .toList();
  }

  AlignmentMap map(int adjusters) {
    return map(adjusters(adjusters));
  }

  AlignmentMap map(List<AdjusterRange> adjusters) {
    Map<HardPoint, Vector3D> arm = new EnumMap<>(HardPoint.class);
    if (random.nextBoolean()) {
      arm.put(HardPoint.UPPER_BALL_JOINT, new Vector3D(within(-12, 2), within(-10, 2), 0));
    }
    return new AlignmentMap(points, arm, adjusters, within(-60, 20), within(-0.2, 0.2));
  }

  /** Settings anywhere in a share of the ranges. */
  double[] settings(List<AdjusterRange> adjusters, double share) {
    return adjusters.stream()
        .mapToDouble(range -> share * within(range.from(), range.to()))
        .toArray();
  }

  /** A window about an angle, the angle anywhere in it. */
  AngleWindow windowAbout(double angle) {
    double from = angle - within(0.1, 0.8);
    double to = angle + within(0.1, 0.8);
    return new AngleWindow(from, within(from, to), to);
  }
}
