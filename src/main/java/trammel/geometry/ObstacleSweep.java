package trammel.geometry;

import java.util.Arrays;
import java.util.Objects;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;

/** One obstacle's part of a sweep. */
final class ObstacleSweep {
  /** Local minima of the grid that are followed down. */
  private static final int STARTS = 3;

  /** How often a descent that runs into the edge of its patch goes on in the next one. */
  private static final int PATCHES = 4;

  /** Size of the last patch, in steps of the grid. */
  private static final double FRESH = 0.25;

  /** Steps of closing in: the last is a 256th of the grid's. */
  private static final int HALVINGS = 8;

  private final TireSolid tire;
  private final PoseGrid grid;
  private final Obstacle obstacle;
  private final ContactSearch search;
  private final double[] gaps;

  private double travel;
  private double steer;

  ObstacleSweep(TireSolid tire, PoseGrid grid, Obstacle obstacle) {
    this.tire = tire;
    this.grid = grid;
    this.obstacle = obstacle;
    search = new ContactSearch(tire, obstacle.shape());
    gaps = new double[grid.size()];
  }

  int distances() {
    return search.distances();
  }

  ClosestApproach closest() {
    if (obstacle.fixedTo() == Obstacle.FixedTo.KNUCKLE) {
      return inAnyPose();
    }
    double limit = fillGrid();
    int best = lowest();
    double least = Double.POSITIVE_INFINITY;
    double bestTravel = grid.travelOf(best);
    double bestSteer = grid.steerOf(best);
    boolean[] tried = new boolean[gaps.length];
    for (int start = 0; start < STARTS; start++) {
      int node = nextMinimum(tried, limit);
      if (node < 0) {
        break;
      }
      tried[node] = true;
      double gap = descend(node);
      if (gap < least) {
        least = gap;
        bestTravel = travel;
        bestSteer = steer;
      }
    }
    travel = bestTravel;
    steer = bestSteer;
    sharpen();
    Stance stance = grid.ask(travel, steer);
    if (stance == null || gapAt(stance) > gaps[best]) {
      travel = grid.travelOf(best);
      steer = grid.steerOf(best);
      stance = Objects.requireNonNull(grid.ask(travel, steer));
    }
    return approach(stance);
  }

  /** What the knuckle carries stands to the tire alike in every pose. */
  private ClosestApproach inAnyPose() {
    int node = grid.firstInReach();
    travel = grid.travelOf(node);
    steer = grid.steerOf(node);
    return approach(Objects.requireNonNull(grid.stance(node)));
  }

  /** Computes what may matter; returns the gap above which no node can be near the least gap. */
  private double fillGrid() {
    double[] @Nullable [] poses = grid.seenFrom(obstacle.fixedTo());
    double slack = grid.halfStep(obstacle.fixedTo(), Math.hypot(tire.radius(), tire.width() / 2));
    double[] bounds = new double[poses.length];
    int nearest = -1;
    for (int node = 0; node < poses.length; node++) {
      double[] pose = poses[node];
      bounds[node] = pose == null ? Double.POSITIVE_INFINITY : search.boundAt(pose);
      if (nearest < 0 || bounds[node] < bounds[nearest]) {
        nearest = node;
      }
    }
    Arrays.fill(gaps, Double.POSITIVE_INFINITY);
    double least = search.roughGapAt(Objects.requireNonNull(poses[nearest]));
    gaps[nearest] = least;
    for (int node = 0; node < poses.length; node++) {
      double[] pose = poses[node];
      if (pose != null && node != nearest && bounds[node] <= least + slack) {
        gaps[node] = search.roughGapAt(pose);
        least = Math.min(least, gaps[node]);
      }
    }
    return least + slack;
  }

  private int lowest() {
    int best = 0;
    for (int node = 1; node < gaps.length; node++) {
      best = gaps[node] < gaps[best] ? node : best;
    }
    return best;
  }

  private int nextMinimum(boolean[] tried, double limit) {
    int next = -1;
    for (int node = 0; node < gaps.length; node++) {
      if (!tried[node]
          && gaps[node] <= limit
          && (next < 0 || gaps[node] < gaps[next])
          && isMinimum(node)) {
        next = node;
      }
    }
    return next;
  }

  private boolean isMinimum(int node) {
    int columns = grid.steers.length;
    int row = node / columns;
    int column = node % columns;
    for (int i = Math.max(row - 1, 0); i <= Math.min(row + 1, grid.travels.length - 1); i++) {
      for (int j = Math.max(column - 1, 0); j <= Math.min(column + 1, columns - 1); j++) {
        int other = i * columns + j;
        // Of equal ones the first counts.
        if (gaps[other] < gaps[node] || (gaps[other] == gaps[node] && other < node)) {
          return false;
        }
      }
    }
    return true;
  }

  /** From a node down to a local minimum, whose gap it returns (mm, poses interpolated). */
  private double descend(int node) {
    travel = grid.travelOf(node);
    steer = grid.steerOf(node);
    double gap = gaps[node];
    for (int turn = 0; turn < PATCHES; turn++) {
      PosePatch patch = grid.patchAbout(travel, steer, obstacle.fixedTo());
      if (patch == null) {
        return closeIn(gap);
      }
      double found = follow(patch);
      if (!(found < gap - 1e-3)) {
        return Math.min(found, gap);
      }
      gap = found;
      if (!leads(patch)) {
        return gap;
      }
    }
    return gap;
  }

  private double follow(PosePatch patch) {
    search.at[0] = travel;
    search.at[1] = steer;
    double gap = search.gapOver(patch);
    travel = search.at[0];
    steer = search.at[1];
    return gap;
  }

  /** Whether the pose lies at an edge of the patch that is none of the rectangle. */
  private boolean leads(PosePatch patch) {
    return leads(travel, patch.travel, grid.travels) || leads(steer, patch.steer, grid.steers);
  }

  private static boolean leads(double at, double[] patch, double[] all) {
    return patch[0] < patch[2]
        && ((at == patch[0] && at > all[0]) || (at == patch[2] && at < all[all.length - 1]));
  }

  private void sharpen() {
    if (atEnd(travel, grid.travels) && atEnd(steer, grid.steers)) {
      return;
    }
    for (int turn = 0; turn < PATCHES; turn++) {
      PosePatch patch = grid.freshPatch(travel, steer, FRESH, obstacle.fixedTo());
      if (patch == null) {
        return;
      }
      follow(patch);
      if (!leads(patch)) {
        return;
      }
    }
  }

  private static boolean atEnd(double at, double[] values) {
    return at == values[0] || at == values[values.length - 1];
  }

  /** To ever nearer poses of the linkage, passing over those out of reach. */
  private double closeIn(double from) {
    double gap = from;
    double travelStep = grid.travelStep() / 2;
    double steerStep = grid.steerStep() / 2;
    for (int halving = 0; halving < HALVINGS; ) {
      double better = closer(gap, travelStep, steerStep);
      if (better < gap) {
        gap = better;
      } else {
        travelStep /= 2;
        steerStep /= 2;
        halving++;
      }
    }
    return gap;
  }

  /** The first of the eight neighbors that is closer; the gap given if none is. */
  private double closer(double gap, double travelStep, double steerStep) {
    for (int i = -1; i <= 1; i++) {
      for (int j = -1; j <= 1; j++) {
        double atTravel = within(travel + i * travelStep, grid.travels);
        double atSteer = within(steer + j * steerStep, grid.steers);
        if (atTravel == travel && atSteer == steer) {
          continue;
        }
        Stance stance = grid.ask(atTravel, atSteer);
        double there = stance == null ? Double.POSITIVE_INFINITY : gapAt(stance);
        if (there < gap - 1e-6) {
          travel = atTravel;
          steer = atSteer;
          return there;
        }
      }
    }
    return gap;
  }

  private static double within(double at, double[] values) {
    return Math.min(Math.max(at, values[0]), values[values.length - 1]);
  }

  private double gapAt(Stance stance) {
    return search.gapAt(PoseGrid.seen(stance, obstacle.fixedTo()));
  }

  private ClosestApproach approach(Stance stance) {
    double gap = gapAt(stance);
    Vector3D onSurveyed = search.point();
    Vector3D onObstacle = stance.of(obstacle.fixedTo()).apply(onSurveyed);
    return new ClosestApproach(
        obstacle,
        gap,
        travel,
        steer,
        stance,
        onSurveyed,
        onObstacle,
        tire.nearest(stance.center(), stance.axis(), onObstacle),
        tire.surface(stance.center(), stance.axis(), onObstacle));
  }
}
