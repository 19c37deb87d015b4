package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** The pose told straight from the hard points is the one that the closed form comes to. */
class SurveyedPoseTest {
  private static final double CLOSE = 1e-9;

  @Test
  void itIsTheOneSolvedForTheSurveyedAngleAndTieRod() {
    Random random = new Random(20261126);
    for (int i = 0; i < 500; i++) {
      assertSolved(DoubleWishbone.of(RandomLinkage.wishbones(random)));
      assertSolved(Strut.of(RandomLinkage.strut(random)));
    }
  }

  private static void assertSolved(Corner<Binary64> corner) {
    assertSame(corner.asSurveyed(), solved(corner));
    assertThat(corner.asSurveyed().camber().getReal())
        .isCloseTo(corner.points().camber().getReal(), within(CLOSE));
    assertThat(corner.asSurveyed().toe().getReal())
        .isCloseTo(corner.points().toe().getReal(), within(CLOSE));
  }

  private static <T extends CalculusFieldElement<T>> Pose<T> solved(Corner<T> corner) {
    if (corner.pose(corner.surveyedAngle(), new Heading.ByTieRod<>(corner.tieRodInner()))
        instanceof Pose<T> pose) {
      return pose;
    }
    throw new AssertionError("out of reach");
  }

  private static <T extends CalculusFieldElement<T>> List<FieldVector3D<T>> places(Pose<T> pose) {
    return List.of(
        pose.lowerBall(),
        pose.upperBall(),
        pose.tieRodOuter(),
        pose.wheelCenter(),
        pose.kingpin(),
        pose.steeringArm(),
        pose.spindle());
  }

  private static void assertSame(Pose<Binary64> told, Pose<Binary64> solved) {
    for (int i = 0; i < places(told).size(); i++) {
      assertThat(places(told).get(i).toVector3D().distance(places(solved).get(i).toVector3D()))
          .isLessThan(CLOSE);
    }
  }

  /** By every coordinate, camber and toe. */
  @Test
  void itHasTheDerivativesOfTheOneSolved() {
    Random random = new Random(20261127);
    for (int i = 0; i < 20; i++) {
      assertSameSlopes(DoubleWishbone.of(varied(RandomLinkage.wishbones(random))));
      assertSameSlopes(Strut.of(varied(RandomLinkage.strut(random))));
    }
  }

  private static HardPoints<Gradient> varied(HardPoints<Binary64> points) {
    int all = 3 * points.points().size() + 2;
    AtomicInteger next = new AtomicInteger();
    Function<Binary64, Gradient> variable =
        number -> Gradient.variable(all, next.getAndIncrement(), number.getReal());
    return points.in(
        at ->
            new FieldVector3D<>(
                variable.apply(at.getX()), variable.apply(at.getY()), variable.apply(at.getZ())),
        variable);
  }

  private static void assertSameSlopes(Corner<Gradient> corner) {
    List<FieldVector3D<Gradient>> told = places(corner.asSurveyed());
    List<FieldVector3D<Gradient>> solved = places(solved(corner));
    for (int place = 0; place < told.size(); place++) {
      FieldVector3D<Gradient> apart = told.get(place).subtract(solved.get(place));
      for (Gradient part : apart.toArray()) {
        assertThat(part.getGradient())
            .containsExactly(new double[part.getFreeParameters()], within(1e-9));
      }
    }
  }

  /** A corner on shifted pivots was surveyed before anybody shifted them. */
  @Test
  void shiftsDoNotMoveIt() {
    Random random = new Random(11);
    for (HardPoint pivot :
        new HardPoint[] {HardPoint.LOWER_FRONT_PIVOT, HardPoint.UPPER_REAR_PIVOT}) {
      Corner<Binary64> corner = DoubleWishbone.of(RandomLinkage.wishbones(random));
      Pose<Binary64> shifted =
          corner.shifted(Map.of(pivot, RandomLinkage.in(new Vector3D(0, 5, 0)))).asSurveyed();
      assertThat(shifted.lowerAngle().getReal())
          .isCloseTo(corner.surveyedAngle().getReal(), within(1e-15));
      assertSame(shifted, solved(corner));
    }
  }
}
