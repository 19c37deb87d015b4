package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.change;
import static trammel.geometry.Plain.number;
import static trammel.geometry.Plain.point;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RadiusArmTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  /** Arms that lead to a front axle, level as found. */
  private static RadiusArm<Binary64> leading(double length) {
    return new RadiusArm<>(point(-length, 400, 380), point(0, 400, 380), point(0, 800, 380));
  }

  /** Own computation: arms of 900 mm lose 1.62 degrees of caster by an inch, 3.18 by 50 mm. */
  @ParameterizedTest
  @CsvSource({"25.4, -1.62", "50, -3.18"})
  void levelArmsLoseCasterAsWorked(double lift, double caster) {
    AxlePose<Binary64> pose = leading(900).at(number(lift)).orElseThrow();
    assertThat(pose.casterChange().getReal()).isCloseTo(caster, Offset.offset(0.005));
    assertThat(pose.casterChange().getReal())
        .isCloseTo(-Math.toDegrees(Math.asin(lift / 900)), EXACT);
    assertThat(pose.pinionNoseUp(Facing.REARWARD).getReal()).isPositive();
    assertThat(pose.foreShift().getReal())
        .isCloseTo(Math.sqrt(900 * 900 - lift * lift) - 900, EXACT);
  }

  @Test
  void trailingArmsTurnTheFrontUp() {
    RadiusArm<Binary64> trailing =
        new RadiusArm<>(point(900, 400, 380), point(0, 400, 380), point(0, 800, 380));
    AxlePose<Binary64> pose = trailing.at(number(50)).orElseThrow();
    assertThat(pose.pinionNoseUp(Facing.FORWARD).getReal()).isCloseTo(3.185, Offset.offset(0.001));
    assertThat(pose.foreShift().getReal()).isPositive();
  }

  @Property
  void movingEitherEndByTheLiftRestoresThePose(
      @ForAll @DoubleRange(min = -150, max = 150) double lift,
      @ForAll @DoubleRange(min = -100, max = 100) double armUp) {
    RadiusArm<Binary64> arm =
        new RadiusArm<>(point(-900, 400, 380 + armUp), point(-40, 400, 330), point(5, 800, 380));
    for (LinkChange<Binary64> moved : List.of(change(0, -lift, 0), change(0, 0, lift))) {
      AxlePose<Binary64> pose = arm.at(number(lift), moved).orElseThrow();
      assertThat(pose.frontUp().getReal()).isCloseTo(0, EXACT);
      assertThat(pose.foreShift().getReal()).isCloseTo(0, EXACT);
    }
  }

  @Test
  void aLongerLevelArmMovesTheAxleByItsGain() {
    AxlePose<Binary64> pose = leading(900).at(number(0), change(12, 0, 0)).orElseThrow();
    assertThat(pose.foreShift().getReal()).isCloseTo(12, EXACT);
    assertThat(pose.frontUp().getReal()).isCloseTo(0, EXACT);
  }

  @Test
  void whatTheArmDoesNotReachIsEmpty() {
    assertThat(leading(300).at(number(299))).isPresent();
    assertThat(leading(300).at(number(301))).isEmpty();
    assertThat(leading(300).at(number(0), change(-400, 0, 0))).isEmpty();
  }

  @Test
  void anArmOfNoLengthIsRefused() {
    assertThatThrownBy(() -> leading(0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    double[] at = {-880, 420, -60, 340, 8, 381, 60, 7, -20, 5};
    Slopes.agree(v -> pose(v).frontUp(), at);
    Slopes.agree(v -> pose(v).foreShift(), at);
  }

  private static AxlePose<Gradient> pose(Gradient[] v) {
    Gradient none = v[0].getField().getZero();
    return new RadiusArm<>(
            new FieldVector3D<>(v[0], none, v[1]),
            new FieldVector3D<>(v[2], none, v[3]),
            new FieldVector3D<>(v[4], none, v[5]))
        .at(v[6], new LinkChange<>(v[7], v[8], v[9]))
        .orElseThrow();
  }
}
