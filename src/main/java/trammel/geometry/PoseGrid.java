package trammel.geometry;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;

/**
 * The poses of a sweep that all obstacles share, seen from each part that carries obstacles: an
 * obstacle stays where it was surveyed, and the tire is moved against it. Several threads may ask.
 */
final class PoseGrid {
  private static final int TRAVELS = 5;
  private static final int STEERS = 7;

  private final Stances stances;
  final double[] travels;
  final double[] steers;
  private final @Nullable Stance[] nodes;
  private final Map<Obstacle.FixedTo, double[] @Nullable []> seen = new ConcurrentHashMap<>();
  private final LongAdder asked = new LongAdder();

  PoseGrid(Stances stances, SweepRange range) {
    this.stances = stances;
    travels = spread(range.lowestTravel(), range.highestTravel(), TRAVELS);
    steers = spread(range.fullRight(), range.fullLeft(), STEERS);
    nodes = new Stance[travels.length * steers.length];
    for (int node = 0; node < nodes.length; node++) {
      nodes[node] = ask(travelOf(node), steerOf(node));
    }
  }

  /** Evenly over a range, both ends with it; one value where it has no extent. */
  private static double[] spread(double from, double to, int count) {
    if (from == to) {
      return new double[] {from};
    }
    double[] values = new double[count];
    for (int n = 0; n < count; n++) {
      values[n] = n == count - 1 ? to : from + (to - from) * n / (count - 1);
    }
    return values;
  }

  /** The linkage's pose, or null where it cannot reach. */
  @Nullable Stance ask(double travel, double steer) {
    asked.increment();
    return stances.at(travel, steer).orElse(null);
  }

  @Nullable Stance stance(int node) {
    return nodes[node];
  }

  /** There is one wherever a sweep begins. */
  int firstInReach() {
    int node = 0;
    while (nodes[node] == null) {
      node++;
    }
    return node;
  }

  int asked() {
    return asked.intValue();
  }

  int size() {
    return nodes.length;
  }

  double travelOf(int node) {
    return travels[node / steers.length];
  }

  double steerOf(int node) {
    return steers[node % steers.length];
  }

  /** Between neighbors (mm); 0 where there is but one value. */
  double travelStep() {
    return travels.length > 1 ? travels[1] - travels[0] : 0;
  }

  double steerStep() {
    return steers.length > 1 ? steers[1] - steers[0] : 0;
  }

  double outOfReach() {
    return Arrays.stream(nodes).filter(node -> node == null).count() / (double) nodes.length;
  }

  /** Poses by node as a part sees them; null where out of reach. */
  double[] @Nullable [] seenFrom(Obstacle.FixedTo part) {
    return seen.computeIfAbsent(
        part,
        carrier -> {
          double[] @Nullable [] poses = new double[nodes.length][];
          for (int node = 0; node < nodes.length; node++) {
            Stance stance = nodes[node];
            poses[node] = stance == null ? null : seen(stance, carrier);
          }
          return poses;
        });
  }

  /** Center and axis in the surveyed coordinates of a part. */
  static double[] seen(Stance stance, Obstacle.FixedTo part) {
    Vector3D center = stance.center();
    Vector3D axis = stance.axis();
    if (part != Obstacle.FixedTo.BODY) {
      Motion motion = stance.of(part);
      center = motion.undo(center);
      axis = motion.undoDirection(axis);
    }
    return new double[] {
      center.getX(), center.getY(), center.getZ(), axis.getX(), axis.getY(), axis.getZ()
    };
  }

  /**
   * How far a point of the tire may move between a pose and the nearest node, at most (mm).
   *
   * @param reach of the tire from its center (mm)
   */
  double halfStep(Obstacle.FixedTo part, double reach) {
    double[] @Nullable [] poses = seenFrom(part);
    double perTravel = 0;
    double perSteer = 0;
    for (int node = 0; node < poses.length; node++) {
      if (node + steers.length < poses.length) {
        perTravel = Math.max(perTravel, moved(poses[node], poses[node + steers.length], reach));
      }
      if (node % steers.length + 1 < steers.length) {
        perSteer = Math.max(perSteer, moved(poses[node], poses[node + 1], reach));
      }
    }
    return (perTravel + perSteer) / 2;
  }

  private static double moved(double @Nullable [] one, double @Nullable [] other, double reach) {
    if (one == null || other == null) {
      return 0;
    }
    return distance(one, other, 0) + reach * distance(one, other, 3);
  }

  private static double distance(double[] one, double[] other, int first) {
    double sum = 0;
    for (int n = first; n < first + 3; n++) {
      sum += (one[n] - other[n]) * (one[n] - other[n]);
    }
    return Math.sqrt(sum);
  }

  /** The patch of nodes about a pose, moved to lie in the grid; null if it is not all in reach. */
  @Nullable PosePatch patchAbout(double travel, double steer, Obstacle.FixedTo part) {
    double[] @Nullable [] poses = seenFrom(part);
    int[] rows = three(travels, travel);
    int[] columns = three(steers, steer);
    double[][][] chosen = new double[3][3][];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double[] pose = poses[rows[i] * steers.length + columns[j]];
        if (pose == null) {
          return null;
        }
        chosen[i][j] = pose;
      }
    }
    return new PosePatch(pick(travels, rows), pick(steers, columns), chosen);
  }

  private static int[] three(double[] values, double at) {
    if (values.length == 1) {
      return new int[3];
    }
    double step = (values[values.length - 1] - values[0]) / (values.length - 1);
    int nearest = (int) Math.round((at - values[0]) / step);
    int middle = Math.min(Math.max(nearest, 1), values.length - 2);
    return new int[] {middle - 1, middle, middle + 1};
  }

  private static double[] pick(double[] values, int[] which) {
    return new double[] {values[which[0]], values[which[1]], values[which[2]]};
  }

  /**
   * A patch of fresh poses about a pose, within the rectangle; null if it is not all in reach. It
   * has no extent along what stands at its end, for the way down led there.
   */
  @Nullable PosePatch freshPatch(double travel, double steer, double share, Obstacle.FixedTo part) {
    double[] fineTravels = around(travels, travel, travelStep() * share);
    double[] fineSteers = around(steers, steer, steerStep() * share);
    double[][][] poses = new double[3][3][];
    for (int i = 0; i < 3; i++) {
      if (i > 0 && fineTravels[i] == fineTravels[0]) {
        poses[i] = poses[0];
        continue;
      }
      for (int j = 0; j < 3; j++) {
        if (j > 0 && fineSteers[j] == fineSteers[0]) {
          poses[i][j] = poses[i][0];
          continue;
        }
        Stance stance = ask(fineTravels[i], fineSteers[j]);
        if (stance == null) {
          return null;
        }
        poses[i][j] = seen(stance, part);
      }
    }
    return new PosePatch(fineTravels, fineSteers, poses);
  }

  private static double[] around(double[] values, double at, double step) {
    double low = values[0];
    double high = values[values.length - 1];
    if (at == low || at == high) {
      return new double[] {at, at, at};
    }
    double middle = Math.min(Math.max(at, low + step), high - step);
    return new double[] {Math.max(middle - step, low), middle, Math.min(middle + step, high)};
  }
}
