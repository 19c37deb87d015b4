package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Sweeps against every pose of a fine grid. No published example of a sweep is at hand. */
class SteeringSweepTest {
  private static final int FINE = 201;
  private static final int CORNERS = 320;

  @Test
  void theLeastGapIsThatOfEveryPoseTried() {
    SoftAssertions softly = new SoftAssertions();
    for (int seed = 0; seed < CORNERS; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Obstacle obstacle = random.obstacle(seed % 4);
      SweepResult result =
          SteeringSweep.sweep(random.tire, random.corner, random.range, List.of(obstacle));
      ClosestApproach found = result.approaches().get(0);
      double brute = everyPose(random, obstacle);
      softly
          .assertThat(found.gap())
          .as("seed %s %s", seed, obstacle)
          .isBetween(brute - 0.5, brute + 0.1);
      softly.assertThat(result.distances()).as("seed %s", seed).isLessThan(FINE * FINE / 20);
    }
    softly.assertAll();
  }

  /** A linkage that binds at lock in bump, and what it leaves. */
  @Test
  void posesOutOfReachAreLeftOutAndTold() {
    for (int seed = 0; seed < 24; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Stances binding =
          (travel, steer) ->
              travel / 90 + Math.abs(steer) / 40 > 1
                  ? Optional.empty()
                  : random.corner.at(travel, steer);
      Obstacle obstacle = random.obstacle(seed % 4);
      SweepResult result =
          SteeringSweep.sweep(random.tire, binding, random.range, List.of(obstacle));
      ClosestApproach found = result.approaches().get(0);
      double brute = everyPose(random, binding, obstacle);
      // At the border of reach the fine grid stands off by up to half a step of its own.
      assertThat(found.gap()).as("seed %s", seed).isBetween(brute - 1, brute + 0.5);
      assertThat(binding.at(found.travel(), found.steer())).isPresent();
      assertThat(result.outOfReach()).isBetween(0.05, 0.6);
    }
  }

  @Test
  void aLinkageThatReachesNothingHasNoGap() {
    RandomCorner random = new RandomCorner(1);
    SweepResult result =
        SteeringSweep.sweep(
            random.tire,
            (travel, steer) -> Optional.empty(),
            random.range,
            List.of(random.obstacle(2)));
    assertThat(result.approaches()).isEmpty();
    assertThat(result.outOfReach()).isEqualTo(1);
  }

  /** An axle that does not steer, and a single pose. */
  @Test
  void rangesWithoutExtentAreSinglePoses() {
    for (int seed = 0; seed < 40; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Obstacle obstacle = random.obstacle(seed % 4);
      ContactSearch search = new ContactSearch(random.tire, obstacle.shape());
      double brute = Double.POSITIVE_INFINITY;
      for (double travel = -80; travel <= 70; travel += 0.25) {
        Stance stance = random.corner.at(travel, 0).orElseThrow();
        brute = Math.min(brute, search.gapAt(PoseGrid.seen(stance, obstacle.fixedTo())));
      }
      SweepRange straight = new SweepRange(-80, 70, 0, 0);
      assertThat(gap(random, straight, obstacle)).isBetween(brute - 0.2, brute + 0.1);
      Stance rest = random.corner.at(0, 0).orElseThrow();
      double standing = search.gapAt(PoseGrid.seen(rest, obstacle.fixedTo()));
      assertThat(gap(random, new SweepRange(0, 0, 0, 0), obstacle))
          .isCloseTo(standing, Offset.offset(0.05));
    }
  }

  private static double gap(RandomCorner random, SweepRange range, Obstacle obstacle) {
    return SteeringSweep.sweep(random.tire, random.corner, range, List.of(obstacle))
        .approaches()
        .get(0)
        .gap();
  }

  /** The pose, the two points and the gap belong together, and the points move with their part. */
  @Test
  void whatIsReportedAgrees() {
    for (int seed = 0; seed < 100; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Obstacle obstacle = random.obstacle(seed % 4);
      ClosestApproach found =
          SteeringSweep.sweep(random.tire, random.corner, random.range, List.of(obstacle))
              .approaches()
              .get(0);
      Stance stance = random.corner.at(found.travel(), found.steer()).orElseThrow();
      assertThat(random.tire.distance(stance.center(), stance.axis(), found.onObstacle()))
          .isCloseTo(found.gap(), Offset.offset(1e-9));
      assertThat(found.onTire().distance(found.onObstacle()))
          .isCloseTo(Math.abs(found.gap()), Offset.offset(1e-9));
      assertThat(
              stance.of(obstacle.fixedTo()).undo(found.onObstacle()).distance(found.onSurveyed()))
          .isLessThan(1e-9);
    }
  }

  private static double everyPose(RandomCorner random, Obstacle obstacle) {
    return everyPose(random, random.corner, obstacle);
  }

  private static double everyPose(RandomCorner random, Stances stances, Obstacle obstacle) {
    ContactSearch search = new ContactSearch(random.tire, obstacle.shape());
    SweepRange range = random.range;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < FINE; i++) {
      double travel =
          range.lowestTravel() + (range.highestTravel() - range.lowestTravel()) * i / (FINE - 1);
      for (int j = 0; j < FINE; j++) {
        double steer = range.fullRight() + (range.fullLeft() - range.fullRight()) * j / (FINE - 1);
        Optional<Stance> stance = stances.at(travel, steer);
        if (stance.isPresent()) {
          double[] seen = PoseGrid.seen(stance.get(), obstacle.fixedTo());
          least = Math.min(least, search.gapAt(seen));
        }
      }
    }
    return least;
  }
}
