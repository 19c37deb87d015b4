package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.number;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class JointAngleLimitTest {

  /** A driveshaft maker's handbook or from memory, as the row says; acceleration: own. */
  @ParameterizedTest(name = "{0} turns: {1} degrees, {2}")
  @CsvFileSource(
      files = "shared/reference/joint-angle-by-speed.csv",
      useHeadersInDisplayName = true)
  void oneJointMayHaveThePrintedAngle(
      double turns, double angle, String source, double acceleration) {
    assertThat(source).isIn("handbook", "memory");
    assertThat(JointAngleLimit.largestAngle(number(turns)).getReal())
        .isCloseTo(angle, Offset.offset(1e-12));
    assertThat(JointAngleLimit.acceleration(number(angle), number(turns)).getReal())
        .isCloseTo(acceleration, Offset.offset(0.5));
  }

  /** A page that cites SAE AE-7, common practice: every entry to half of its last digit. */
  @ParameterizedTest(name = "{0} turns, {1} degrees: {2}")
  @CsvFileSource(files = "shared/reference/two-joint-angles.csv", useHeadersInDisplayName = true)
  void theSecondJointMayHaveThePrintedAngle(double turns, double first, double second) {
    assertThat(JointAngleLimit.largestSecondAngle(number(first), number(turns)).getReal())
        .isCloseTo(second, Offset.offset(0.05));
  }

  /** The rule behind the table lies between its rows, and the limit falls as the speed rises. */
  @Property
  void betweenAndBeyondTheRowsTheLimitFallsWithSpeedAndKeepsTheAcceleration(
      @ForAll @DoubleRange(min = 200, max = 8000) double turns) {
    double angle = JointAngleLimit.largestAngle(number(turns)).getReal();
    assertThat(JointAngleLimit.acceleration(number(angle), number(turns)).getReal())
        .isBetween(855.0 - 0.5, 1023.0 + 0.5);
    assertThat(JointAngleLimit.largestAngle(number(turns + 1)).getReal()).isLessThan(angle);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000})
  void theLimitDoesNotJumpAtARow(double turns) {
    assertThat(JointAngleLimit.largestAngle(number(turns - 1e-6)).getReal())
        .isCloseTo(
            JointAngleLimit.largestAngle(number(turns + 1e-6)).getReal(), Offset.offset(1e-7));
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    for (double turns : new double[] {900, 1700, 2250, 3333, 4800, 6000}) {
      Slopes.agree(v -> JointAngleLimit.largestAngle(v[0]), turns);
      Slopes.agree(v -> JointAngleLimit.acceleration(v[0], v[1]), 3, turns);
      Slopes.agree(v -> JointAngleLimit.largestSecondAngle(v[0], v[1]), 3, turns);
    }
  }

  @Test
  void aShaftThatStandsIsRefused() {
    assertThatThrownBy(() -> JointAngleLimit.largestAngle(number(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("found 0.0 turns");
  }
}
