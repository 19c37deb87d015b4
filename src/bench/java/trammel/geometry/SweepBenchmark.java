package trammel.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A warm sweep of one tire against twelve obstacles, three of each kind, by a linkage that costs
 * about a microsecond a pose: such as stand around a wheel (least gaps from −30 to 100 mm), and such
 * as stand deep in the tire's way (below −50 mm), which cost most.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SweepBenchmark {
  private RandomCorner random;
  private List<Obstacle> around;
  private List<Obstacle> deep;
  private double turned;

  @Setup
  public void choose() {
    random = new RandomCorner(7);
    around = chosen(-30, 100);
    deep = chosen(-500, -50);
  }

  private List<Obstacle> chosen(double from, double to) {
    List<Obstacle> obstacles = new ArrayList<>();
    while (obstacles.size() < 12) {
      Obstacle obstacle = random.obstacle(obstacles.size() % 4);
      double gap =
          SteeringSweep.sweep(random.tire, random.corner, random.range, List.of(obstacle))
              .approaches()
              .get(0)
              .gap();
      if (gap > from && gap < to) {
        obstacles.add(obstacle);
      }
    }
    return obstacles;
  }

  @Benchmark
  public SweepResult aroundTheWheel() {
    return SteeringSweep.sweep(random.tire, this::pose, random.range, around);
  }

  @Benchmark
  public SweepResult deepInTheWay() {
    return SteeringSweep.sweep(random.tire, this::pose, random.range, deep);
  }

  @Benchmark
  public Optional<Stance> onePose() {
    turned = turned > 25 ? -25 : turned + 0.1;
    return pose(turned, turned);
  }

  /** The plain corner, asked four times over. */
  private Optional<Stance> pose(double travel, double steer) {
    Optional<Stance> stance = Optional.empty();
    for (int n = 0; n < 4; n++) {
      double atTravel = stance.isPresent() ? travel + 0 * stance.get().center().getX() : travel;
      stance = random.corner.at(atTravel, steer);
    }
    return stance;
  }
}
