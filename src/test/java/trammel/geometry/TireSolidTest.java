package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.IntFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The distance against points all over the tire's surface; own derivation, nothing published. */
class TireSolidTest {
  private static final TireSolid WORKED = new TireSolid(407.5, 275, 40);

  /** Where the answer is seen without computing: tire in the origin, axis along y. */
  @ParameterizedTest
  @CsvSource({
    "500, 0, 0, 92.5, CROWN",
    "0, 50, -400, -7.5, CROWN",
    "100, 200, 0, 62.5, OUTER_SIDEWALL",
    "100, -130, 0, -7.5, INNER_SIDEWALL",
    // 30 beyond the core sideways and 40 upward: 50 from it.
    "407.5, 127.5, 0, 10, OUTER_SHOULDER",
    "0, -127.5, 407.5, 10, INNER_SHOULDER",
    "0, 10, 0, -127.5, OUTER_SIDEWALL",
  })
  void simpleDistances(double x, double y, double z, double distance, TireSurface surface) {
    Vector3D point = new Vector3D(x, y, z);
    assertThat(WORKED.distance(Vector3D.ZERO, Vector3D.PLUS_J, point))
        .isCloseTo(distance, Offset.offset(1e-9));
    assertThat(WORKED.surface(Vector3D.ZERO, Vector3D.PLUS_J, point)).isEqualTo(surface);
  }

  @Property(tries = 60)
  void theDistanceIsThatOfTheNearestPointOfTheSurface(@ForAll long seed) {
    RandomCorner random = new RandomCorner(seed);
    Stance stance = random.pose();
    Vector3D point = random.besideTire(-90, 120);
    double tried = nearestTried(random.tire, stance, point);
    double distance = random.tire.distance(stance.center(), stance.axis(), point);
    assertThat(Math.abs(distance)).isCloseTo(tried, Offset.offset(0.03));
    Vector3D nearest = random.tire.nearest(stance.center(), stance.axis(), point);
    assertThat(nearest.distance(point)).isCloseTo(Math.abs(distance), Offset.offset(1e-9));
    assertThat(random.tire.distance(stance.center(), stance.axis(), nearest))
        .isCloseTo(0, Offset.offset(1e-9));
  }

  /** Turns the outline about the axis, in steps that grow finer about the nearest. */
  private static double nearestTried(TireSolid tire, Stance stance, Vector3D point) {
    double nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double turn = 0; turn < 360; turn++) {
      double there = fromOutline(tire, stance, point, turn, 1);
      if (there < least) {
        least = there;
        nearest = turn;
      }
    }
    for (double turn = nearest - 1; turn < nearest + 1; turn += 0.005) {
      least = Math.min(least, fromOutline(tire, stance, point, turn, 0.05));
    }
    return least;
  }

  private static double fromOutline(
      TireSolid tire, Stance stance, Vector3D point, double turn, double step) {
    Vector3D up = stance.axis().orthogonal();
    Vector3D ahead = stance.axis().crossProduct(up);
    double angle = Math.toRadians(turn);
    Vector3D outward = new Vector3D(Math.cos(angle), up, Math.sin(angle), ahead);
    Vector3D from = point.subtract(stance.center());
    double x = from.dotProduct(stance.axis());
    double y = from.dotProduct(outward);
    double aside = from.subtract(x, stance.axis()).subtract(y, outward).getNorm();
    double half = tire.width() / 2;
    double crown = half - tire.shoulder();
    double wall = tire.radius() - tire.shoulder();
    double least = Math.hypot(x - Math.min(Math.max(x, -crown), crown), y - tire.radius());
    double alongWall = y - Math.min(Math.max(y, 0), wall);
    for (int side = -1; side <= 1; side += 2) {
      least = Math.min(least, Math.hypot(x - side * half, alongWall));
      for (double arc = 0; arc <= 90; arc += step) {
        double round = Math.toRadians(arc);
        double across = side * (crown + tire.shoulder() * Math.sin(round));
        double over = wall + tire.shoulder() * Math.cos(round);
        least = Math.min(least, Math.hypot(x - across, y - over));
      }
    }
    return Math.hypot(least, aside);
  }

  @Property
  void turningAboutTheAxisChangesNothing(
      @ForAll long seed, @ForAll @DoubleRange(min = -180, max = 180) double degrees) {
    RandomCorner random = new RandomCorner(seed);
    Stance stance = random.pose();
    Vector3D point = random.besideTire(-90, 120);
    Rotation turn =
        new Rotation(stance.axis(), Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR);
    Vector3D turned = stance.center().add(turn.applyTo(point.subtract(stance.center())));
    assertThat(random.tire.distance(stance.center(), stance.axis(), turned))
        .isCloseTo(
            random.tire.distance(stance.center(), stance.axis(), point), Offset.offset(1e-9));
  }

  @Property
  void theDistanceIsConvexAlongEveryLine(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    RandomCorner random = new RandomCorner(seed);
    Stance stance = random.pose();
    Vector3D one = random.besideTire(-150, 200);
    Vector3D other = random.besideTire(-150, 200);
    double between =
        random.tire.distance(
            stance.center(), stance.axis(), new Vector3D(share, one, 1 - share, other));
    double chord =
        share * random.tire.distance(stance.center(), stance.axis(), one)
            + (1 - share) * random.tire.distance(stance.center(), stance.axis(), other);
    assertThat(between).isLessThanOrEqualTo(chord + 1e-9);
  }

  /** Center, axis, point, radius, width, shoulder in turn, against finite differences. */
  @Property(tries = 200)
  void derivativesAreThoseOfTheDistance(@ForAll long seed) {
    RandomCorner random = new RandomCorner(seed);
    Stance stance = random.pose();
    Vector3D point = random.besideTire(-10, 120);
    double[] inputs = {
      stance.center().getX(), stance.center().getY(), stance.center().getZ(),
      stance.axis().getX(), stance.axis().getY(), stance.axis().getZ(),
      point.getX(), point.getY(), point.getZ(),
      random.tire.radius(), random.tire.width(), random.tire.shoulder()
    };
    Gradient gap = gap(inputs, n -> Gradient.variable(inputs.length, n, inputs[n]));
    assertThat(gap.getValue())
        .isCloseTo(
            random.tire.distance(stance.center(), stance.axis(), point), Offset.offset(1e-9));
    for (int n = 0; n < inputs.length; n++) {
      int varied = n;
      double difference =
          new FiniteDifferencesDifferentiator(3, 1e-5)
              .differentiate(
                  (double value) ->
                      gap(inputs, k -> Gradient.constant(0, k == varied ? value : inputs[k]))
                          .getValue())
              .value(new DSFactory(1, 1).variable(0, inputs[n]))
              .getPartialDerivative(1);
      assertThat(gap.getPartialDerivative(n))
          .as("input %s", n)
          .isCloseTo(difference, Offset.offset(n >= 3 && n < 6 ? 0.02 : 1e-4));
    }
  }

  private static Gradient gap(double[] inputs, IntFunction<Gradient> input) {
    return TireSolid.gap(
        new FieldVector3D<>(input.apply(0), input.apply(1), input.apply(2)),
        new FieldVector3D<>(input.apply(3), input.apply(4), input.apply(5)),
        new FieldVector3D<>(input.apply(6), input.apply(7), input.apply(8)),
        input.apply(9),
        input.apply(10),
        input.apply(inputs.length - 1));
  }

  @Test
  void impossibleTiresAreRefused() {
    assertThatThrownBy(() -> new TireSolid(400, 60, 31)).hasMessageContaining("shoulder");
    assertThatThrownBy(() -> new TireSolid(30, 200, 30)).hasMessageContaining("shoulder");
    assertThatThrownBy(() -> new TireSolid(Double.NaN, 200, 30))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
