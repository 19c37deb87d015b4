package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.MathArrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Derivatives by every coordinate, camber, toe and travel against central differences of the plain
 * numbers (own derivation).
 */
class CornerDerivativesTest {
  private static final int COORDINATES = 3 * HardPoint.ofWishbones().size();
  private static final int CAMBER = COORDINATES;
  private static final int TOE = COORDINATES + 1;
  private static final int TRAVEL = COORDINATES + 2;
  private static final int VARIABLES = COORDINATES + 3;
  private static final double STEP = 1e-3;
  private static final double RADIUS = 400;

  /** Camber, caster, toe, center of contact. */
  private static <T extends CalculusFieldElement<T>> T[] results(Pose<T> pose) {
    T radius = pose.camber().newInstance(RADIUS);
    FieldVector3D<T> contact = pose.contact(radius);
    T[] results = MathArrays.buildArray(pose.camber().getField(), 6);
    results[0] = pose.camber();
    results[1] = pose.caster();
    results[2] = pose.toe();
    results[3] = contact.getX();
    results[4] = contact.getY();
    results[5] = contact.getZ();
    return results;
  }

  private static <T extends CalculusFieldElement<T>> HardPoints<T> points(T[] variables) {
    Map<HardPoint, FieldVector3D<T>> points = new EnumMap<>(HardPoint.class);
    int first = 0;
    for (HardPoint point : HardPoint.ofWishbones()) {
      points.put(
          point, new FieldVector3D<>(variables[first], variables[first + 1], variables[first + 2]));
      first += 3;
    }
    return new HardPoints<>(points, variables[CAMBER], variables[TOE]);
  }

  private static <T extends CalculusFieldElement<T>> T[] solve(T[] variables, boolean reset) {
    HardPoints<T> points = points(variables);
    DoubleWishbone<T> linkage = DoubleWishbone.of(points);
    Function<T, Binary64> plain = number -> new Binary64(number.getReal());
    Heading<T> heading =
        reset
            ? new Heading.Reset<>(variables[TOE])
            : new Heading.ByTieRod<>(points.at(HardPoint.TIE_ROD_INNER));
    if (WheelTravel.of(linkage, linkage.in(plain)).at(variables[TRAVEL], heading)
        instanceof Pose<T> pose) {
      return results(pose);
    }
    throw new AssertionError("out of reach");
  }

  private static double[] plain(double[] at, int moved, double by, boolean reset) {
    Binary64[] variables = new Binary64[VARIABLES];
    for (int i = 0; i < VARIABLES; i++) {
      variables[i] = new Binary64(i == moved ? at[i] + by : at[i]);
    }
    Binary64[] results = solve(variables, reset);
    double[] numbers = new double[results.length];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = results[i].getReal();
    }
    return numbers;
  }

  @ParameterizedTest(name = "toe reset: {0}")
  @ValueSource(booleans = {false, true})
  void derivativesAreTheSlopesOfThePlainNumbers(boolean reset) {
    Random random = new Random(20261127);
    for (int geometry = 0; geometry < 20; geometry++) {
      HardPoints<Binary64> corner = RandomLinkage.wishbones(random);
      double[] at = new double[VARIABLES];
      int first = 0;
      for (HardPoint point : HardPoint.ofWishbones()) {
        Vector3D place = corner.at(point).toVector3D();
        System.arraycopy(place.toArray(), 0, at, first, 3);
        first += 3;
      }
      at[CAMBER] = corner.camber().getReal();
      at[TOE] = corner.toe().getReal();
      at[TRAVEL] = RandomLinkage.between(random, -60, 60);
      Gradient[] variables = new Gradient[VARIABLES];
      for (int i = 0; i < VARIABLES; i++) {
        variables[i] = Gradient.variable(VARIABLES, i, at[i]);
      }
      Gradient[] exact = solve(variables, reset);
      double[] unmoved = plain(at, 0, 0, reset);
      for (int i = 0; i < VARIABLES; i++) {
        double[] more = plain(at, i, STEP, reset);
        double[] less = plain(at, i, -STEP, reset);
        for (int result = 0; result < exact.length; result++) {
          String which = "geometry " + geometry + ", result " + result + " by variable " + i;
          assertThat(exact[result].getValue()).as(which).isCloseTo(unmoved[result], within(1e-8));
          assertThat(exact[result].getPartialDerivative(i))
              .as(which)
              .isCloseTo((more[result] - less[result]) / (2 * STEP), within(1e-6));
        }
      }
    }
  }

  @Test
  void aWheelThatRisesByTravelHasSlopeOne() {
    HardPoints<Binary64> corner = RandomLinkage.wishbones(new Random(3));
    HardPoints<Gradient> still =
        corner.in(
            point -> new FieldVector3D<>(Gradient.constant(1, 0).getField(), point.toVector3D()),
            angle -> Gradient.constant(1, angle.getReal()));
    DoubleWishbone<Gradient> linkage = DoubleWishbone.of(still);
    Posed<Gradient> posed =
        WheelTravel.of(linkage, DoubleWishbone.of(corner))
            .at(Gradient.variable(1, 0, -37), new Heading.ByTieRod<>(linkage.tieRodInner()));
    assertThat(posed).isInstanceOf(Pose.class);
    Pose<Gradient> pose = (Pose<Gradient>) posed;
    assertThat(pose.wheelCenter().getZ().getPartialDerivative(0)).isCloseTo(1, within(1e-7));
  }
}
