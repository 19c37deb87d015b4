package trammel.geometry;

import java.util.List;

/**
 * The least gap between a tire and what surrounds it, over the whole rectangle of travel and
 * steering.
 *
 * <p>A coarse grid of poses serves all obstacles. For each, nodes are passed over whose bound, the
 * least that the gap may be by its slope at the obstacle's middle, shows that no least gap can lie
 * near them; from the lowest of the grid's local minima the gap is followed down over poses
 * interpolated between nodes, then over nine fresh poses about what was found. The pose reported is
 * the linkage's own, its gap computed there. Where the linkage is not in reach all around, the pose
 * is closed in upon step by step instead.
 */
public final class SteeringSweep {
  private SteeringSweep() {}

  /**
   * Sweeps a tire against obstacles.
   *
   * @param tire the tire
   * @param stances where the linkage holds the wheel
   * @param range travel and steering to sweep
   * @param obstacles what may be met
   */
  public static SweepResult sweep(
      TireSolid tire, Stances stances, SweepRange range, List<Obstacle> obstacles) {
    PoseGrid grid = new PoseGrid(stances, range);
    double outOfReach = grid.outOfReach();
    List<ObstacleSweep> sweeps =
        (outOfReach < 1 ? obstacles : List.<Obstacle>of())
            .stream().map(obstacle -> new ObstacleSweep(tire, grid, obstacle)).toList();
    List<ClosestApproach> approaches = sweeps.parallelStream().map(ObstacleSweep::closest).toList();
    int distances = sweeps.stream().mapToInt(ObstacleSweep::distances).sum();
    return new SweepResult(approaches, outOfReach, grid.asked(), distances);
  }
}
