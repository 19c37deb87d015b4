package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.api.SoftAssertions;
import org.assertj.core.data.Offset;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The least distance of an obstacle against an independent computation: points all over the
 * obstacle, ever closer about the nearest, each with the distance of {@link TireSolid}, whose own
 * test holds it against points all over the tire.
 */
class ContactSearchTest {

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void theLeastDistanceIsThatOfTheNearestPointTried(int kind) {
    SoftAssertions softly = new SoftAssertions();
    for (int seed = 0; seed < 400; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Stance stance = random.pose();
      Obstacle.Shape shape = random.obstacle(kind).shape();
      ContactSearch search = new ContactSearch(random.tire, shape);
      double found = search.gapAt(PoseGrid.seen(stance, Obstacle.FixedTo.BODY));
      double tried = nearestTried(random.tire, stance, shape);
      // Inside the core the lattice may hang on a ridge, so that only its failure would tell.
      boolean deep = tried < -random.tire.shoulder();
      softly
          .assertThat(found)
          .as("seed %s, %s", seed, shape)
          .isBetween(deep ? -random.tire.radius() : tried - 0.001, tried + (deep ? 0.05 : 0.001));
      Vector3D point = search.point();
      softly.assertThat(offShape(shape, point)).as("seed %s", seed).isLessThan(1e-9);
      softly
          .assertThat(random.tire.distance(stance.center(), stance.axis(), point))
          .isCloseTo(found, Offset.offset(1e-9));
    }
    softly.assertAll();
  }

  /** Shrinks a lattice over the shape about its nearest point; convexity makes that safe. */
  static double nearestTried(TireSolid tire, Stance stance, Obstacle.Shape shape) {
    double[] best = new double[3];
    double least = Double.POSITIVE_INFINITY;
    for (double size = 1; size > 1e-7; size *= 0.8) {
      double[] about = best.clone();
      for (int i = -4; i <= 4; i++) {
        for (int j = -4; j <= 4; j++) {
          for (int k = -4; k <= 4; k++) {
            double[] there = {
              within(about[0] + size * i / 4),
              within(about[1] + size * j / 4),
              within(about[2] + size * k / 4)
            };
            double distance = tire.distance(stance.center(), stance.axis(), place(shape, there));
            if (distance < least) {
              least = distance;
              best = there;
            }
          }
        }
      }
    }
    return least;
  }

  /** How far a point lies from a shape (mm). */
  private static double offShape(Obstacle.Shape shape, Vector3D point) {
    Vector3D from = point.subtract(shape.middle());
    if (shape instanceof Obstacle.Segment segment) {
      return point.distance(segment.from())
          + point.distance(segment.to())
          - segment.from().distance(segment.to());
    }
    if (shape instanceof Obstacle.Box box) {
      return Math.max(
          beyond(from, box.halfLength()),
          Math.max(beyond(from, box.halfWidth()), beyond(from, box.halfHeight())));
    }
    if (shape instanceof Obstacle.Disc disc) {
      return Math.max(Math.abs(from.dotProduct(disc.normal())), from.getNorm() - disc.radius());
    }
    return from.getNorm();
  }

  private static double beyond(Vector3D from, Vector3D edge) {
    return Math.abs(from.dotProduct(edge)) / edge.getNorm() - edge.getNorm();
  }

  private static double within(double share) {
    return Math.min(Math.max(share, -1), 1);
  }

  private static Vector3D place(Obstacle.Shape shape, double[] shares) {
    if (shape instanceof Obstacle.Segment segment) {
      return segment.middle().add(shares[0] / 2, segment.to().subtract(segment.from()));
    }
    if (shape instanceof Obstacle.Box box) {
      return box.middle()
          .add(shares[0], box.halfLength())
          .add(shares[1], box.halfWidth())
          .add(shares[2], box.halfHeight());
    }
    if (shape instanceof Obstacle.Disc disc) {
      Vector3D one = disc.normal().orthogonal();
      Vector3D other = disc.normal().crossProduct(one).normalize();
      // Beyond the rim the rim itself is meant.
      double share = disc.radius() / Math.max(1, Math.hypot(shares[0], shares[1]));
      return disc.middle().add(share * shares[0], one).add(share * shares[1], other);
    }
    return shape.middle();
  }

  /** Whatever the search began from, the least distance is the same: it is convex. */
  @Test
  void whereItBeginsDoesNotMatter() {
    for (int seed = 0; seed < 200; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Obstacle.Shape shape = random.obstacle(2 + seed % 2).shape();
      double[] pose = PoseGrid.seen(random.pose(), Obstacle.FixedTo.BODY);
      ContactSearch search = new ContactSearch(random.tire, shape);
      double first = search.gapAt(pose);
      search.gapAt(PoseGrid.seen(random.pose(), Obstacle.FixedTo.BODY));
      double offset = first < -random.tire.shoulder() ? 0.05 : 0.001;
      assertThat(search.gapAt(pose)).as("seed %s", seed).isCloseTo(first, Offset.offset(offset));
    }
  }

  @Test
  void boundsAreNeverAboveTheLeastDistance() {
    for (int seed = 0; seed < 400; seed++) {
      RandomCorner random = new RandomCorner(seed);
      Obstacle.Shape shape = random.obstacle(seed % 4).shape();
      double[] pose = PoseGrid.seen(random.pose(), Obstacle.FixedTo.BODY);
      ContactSearch search = new ContactSearch(random.tire, shape);
      double bound = search.boundAt(pose);
      assertThat(bound).isLessThanOrEqualTo(search.gapAt(pose) + 1e-9);
    }
  }
}
