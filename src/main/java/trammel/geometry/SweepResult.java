package trammel.geometry;

import java.util.List;

/**
 * What a sweep found.
 *
 * @param approaches one for each obstacle, in their order; none at all if no pose was in reach
 * @param outOfReach share of the rectangle that the linkage cannot reach (0 to 1), told from the
 *     shared grid of poses
 * @param poses how often the linkage was asked for a pose
 * @param distances how many distances between tire and obstacle were computed
 */
public record SweepResult(
    List<ClosestApproach> approaches, double outOfReach, int poses, int distances) {
  /** Keeps its own copy. */
  public SweepResult {
    approaches = List.copyOf(approaches);
  }
}
