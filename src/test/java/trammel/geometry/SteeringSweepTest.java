package trammel.geometry;

import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Sweeps against every pose of a fine grid. No published example of a sweep is at hand. */
class SteeringSweepTest {
  private static final int FINE = 201;

  @Test
  void theLeastGapIsThatOfEveryPoseTried() {
    SoftAssertions softly = new SoftAssertions();
    for (int seed = 0; seed < Integer.getInteger("corners", 320); seed++) {
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

  private static double everyPose(RandomCorner random, Obstacle obstacle) {
    ContactSearch search = new ContactSearch(random.tire, obstacle.shape());
    SweepRange range = random.range;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < FINE; i++) {
      double travel =
          range.lowestTravel() + (range.highestTravel() - range.lowestTravel()) * i / (FINE - 1);
      for (int j = 0; j < FINE; j++) {
        double steer = range.fullRight() + (range.fullLeft() - range.fullRight()) * j / (FINE - 1);
        Stance stance = random.corner.at(travel, steer).orElseThrow();
        least = Math.min(least, search.gapAt(PoseGrid.seen(stance, obstacle.fixedTo())));
      }
    }
    return least;
  }
}
