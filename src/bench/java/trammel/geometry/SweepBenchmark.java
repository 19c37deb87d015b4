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

/** A warm sweep of one tire against twelve obstacles, three of each kind; and one pose by itself. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SweepBenchmark {
  private RandomCorner random;
  private List<Obstacle> obstacles;
  private double turned;

  @Setup
  public void choose() {
    random = new RandomCorner(7);
    obstacles = new ArrayList<>();
    for (int n = 0; n < 12; n++) {
      obstacles.add(random.obstacle(n % 4));
    }
  }

  @Benchmark
  public SweepResult sweep() {
    return SteeringSweep.sweep(random.tire, random.corner, random.range, obstacles);
  }

  @Benchmark
  public Optional<Stance> pose() {
    turned = turned > 25 ? -25 : turned + 0.1;
    return random.corner.at(turned, turned);
  }
}
