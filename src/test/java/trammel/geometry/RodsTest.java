package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Closest points of two rods against a search over both: the distance is convex in the shares, so
 * nested sections find its least.
 */
class RodsTest {
  private static final int SECTIONS = 90;

  @Test
  void noPairOfPointsIsCloser() {
    Random random = new Random(3);
    for (int i = 0; i < 300; i++) {
      Vector3D start = point(random);
      Vector3D end = point(random);
      Vector3D otherStart = point(random);
      Vector3D otherEnd = point(random);
      check(start, end, otherStart, otherEnd, 1e-6);
    }
  }

  /** Rods that are parallel, or nearly: many pairs are all but equally close. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 1e-7, 1e-6, 1e-5, 1e-3, 0.05})
  void nearlyParallelRodsAreAsCloseAsASearchFinds(double turned) {
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      Vector3D start = point(random);
      Vector3D along = point(random);
      Vector3D aside = along.orthogonal().scalarMultiply(along.getNorm() * turned);
      Vector3D otherStart = point(random);
      double length = 4 * random.nextDouble() - 2;
      Vector3D otherEnd = otherStart.add(length, along.add(aside));
      check(start, start.add(along), otherStart, otherEnd, 1e-3);
    }
  }

  @Test
  void crossingRodsTouch() {
    Random random = new Random(7);
    for (int i = 0; i < 100; i++) {
      Vector3D meeting = point(random);
      Vector3D along = point(random);
      Vector3D across = point(random);
      double first = random.nextDouble();
      double second = random.nextDouble();
      Vector3D start = meeting.add(-first, along);
      Vector3D otherStart = meeting.add(-second, across);
      Rods rods = Rods.closest(start, start.add(along), otherStart, otherStart.add(across));
      assertThat(rods.distance()).isCloseTo(0, within(1e-7));
      assertThat(rods.firstShare()).isCloseTo(first, within(1e-6));
      assertThat(rods.secondShare()).isCloseTo(second, within(1e-6));
    }
  }

  /** Worked by hand: a rod along x from 0 to 10, another beside it at 3 from one x to another. */
  @ParameterizedTest
  @CsvSource({
    "2, 8, 3",
    "8, 2, 3",
    "-5, 20, 3",
    "14, 20, 5",
    "20, 14, 5",
    "-9, -4, 5",
    "-4, -9, 5",
    "10, 12, 3"
  })
  void parallelRods(double from, double to, double distance) {
    Vector3D end = new Vector3D(10, 0, 0);
    Vector3D otherStart = new Vector3D(from, 3, 0);
    Vector3D otherEnd = new Vector3D(to, 3, 0);
    assertThat(Rods.closest(Vector3D.ZERO, end, otherStart, otherEnd).distance())
        .isCloseTo(distance, within(1e-12));
    assertThat(Rods.closest(end, Vector3D.ZERO, otherStart, otherEnd).distance())
        .isCloseTo(distance, within(1e-12));
    assertThat(Rods.closest(otherStart, otherEnd, Vector3D.ZERO, end).distance())
        .isCloseTo(distance, within(1e-12));
  }

  @Test
  void aRodWithoutLengthIsAPoint() {
    Random random = new Random(11);
    for (int i = 0; i < 60; i++) {
      Vector3D point = point(random);
      check(point, point, point(random), point(random), 1e-6);
      check(point(random), point(random), point, point, 1e-6);
    }
    Vector3D one = new Vector3D(1, 2, 3);
    Vector3D two = new Vector3D(4, 6, 3);
    assertThat(Rods.closest(one, one, two, two).distance()).isEqualTo(5);
    assertThat(Rods.closest(one, one, one, one).distance()).isZero();
  }

  private static Vector3D point(Random random) {
    return new Vector3D(
        600 * random.nextDouble() - 300,
        600 * random.nextDouble() - 300,
        600 * random.nextDouble() - 300);
  }

  private static void check(
      Vector3D start, Vector3D end, Vector3D otherStart, Vector3D otherEnd, double tolerance) {
    Rods rods = Rods.closest(start, end, otherStart, otherEnd);
    Vector3D along = end.subtract(start);
    Vector3D other = otherEnd.subtract(otherStart);
    double searched =
        least(
            first ->
                least(second -> start.add(first, along).distance(otherStart.add(second, other))));
    assertThat(rods.distance()).isCloseTo(searched, within(tolerance));
    assertThat(rods.firstShare()).isBetween(0.0, 1.0);
    assertThat(rods.secondShare()).isBetween(0.0, 1.0);
    assertThat(rods.onFirst().distance(start.add(rods.firstShare(), along))).isZero();
    assertThat(rods.onSecond().distance(otherStart.add(rods.secondShare(), other))).isZero();
  }

  /** The least value of a convex function from 0 to 1, by sections. */
  private static double least(DoubleUnaryOperator function) {
    double from = 0;
    double to = 1;
    for (int i = 0; i < SECTIONS; i++) {
      double third = (to - from) / 3;
      if (function.applyAsDouble(from + third) <= function.applyAsDouble(to - third)) {
        to -= third;
      } else {
        from += third;
      }
    }
    return Math.min(
        function.applyAsDouble((from + to) / 2),
        Math.min(function.applyAsDouble(0), function.applyAsDouble(1)));
  }
}
