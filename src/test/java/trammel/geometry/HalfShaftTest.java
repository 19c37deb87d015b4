package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.point;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** Worked by hand on right triangles; no published example with its points is at hand. */
class HalfShaftTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static HalfShaft<Binary64> lifted(double side, double lift) {
    return new HalfShaft<>(
        point(0, side * 250, 400 + lift),
        point(0, side, 0),
        point(0, side * 650, 400),
        point(0, side * 30, 0));
  }

  @Property
  void aLiftMakesTheShaftFallOutboardOnBothSides(
      @ForAll @DoubleRange(min = -100, max = 100) double lift) {
    double expected = Math.toDegrees(Math.atan(lift / 400));
    for (double side : new double[] {-1, 1}) {
      HalfShaft<Binary64> shaft = lifted(side, lift);
      assertThat(shaft.innerFall().getReal()).isCloseTo(expected, EXACT);
      assertThat(shaft.outerFall().getReal()).isCloseTo(expected, EXACT);
      assertThat(shaft.innerAngle().getReal()).isCloseTo(Math.abs(expected), EXACT);
      assertThat(shaft.outerAngle().getReal()).isCloseTo(Math.abs(expected), EXACT);
      assertThat(lifted(side, 0).plunge(shaft).getReal())
          .isCloseTo(Math.hypot(400, lift) - 400, EXACT);
    }
  }

  /** 35 degrees of steer on a level shaft bend the outer joint by 35, in plan only. */
  @Test
  void steerBendsTheOuterJoint() {
    double steer = Math.toRadians(35);
    HalfShaft<Binary64> shaft =
        new HalfShaft<>(
            point(0, 250, 400),
            point(0, 1, 0),
            point(0, 650, 400),
            point(-Math.sin(steer), Math.cos(steer), 0));
    assertThat(shaft.outerAngle().getReal()).isCloseTo(35, EXACT);
    assertThat(shaft.outerFall().getReal()).isCloseTo(0, EXACT);
    assertThat(shaft.innerAngle().getReal()).isZero();
  }

  /** Positive camber lowers the spindle outboard: as much less for the joint to bend. */
  @Test
  void camberTakesFromTheFall() {
    double camber = Math.toRadians(2);
    HalfShaft<Binary64> shaft =
        new HalfShaft<>(
            point(0, -250, 450),
            point(0, -1, 0),
            point(0, -650, 400),
            point(0, -Math.cos(camber), -Math.sin(camber)));
    assertThat(shaft.outerFall().getReal())
        .isCloseTo(Math.toDegrees(Math.atan(50 / 400.0)) - 2, EXACT);
  }

  @Test
  void anAxisThatPointsInboardIsRefused() {
    assertThatThrownBy(
            () ->
                new HalfShaft<>(
                    point(0, -250, 400), point(0, 1, 0), point(0, -650, 400), point(0, -1, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("output axis pointing inboard");
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    double[] at = {5, 250, 430, 0.01, 1, 0.02, -8, 660, 385, -0.2, 1, -0.03};
    Slopes.agree(v -> shaft(v).innerAngle(), at);
    Slopes.agree(v -> shaft(v).outerAngle(), at);
    Slopes.agree(v -> shaft(v).innerFall(), at);
    Slopes.agree(v -> shaft(v).outerFall(), at);
    Slopes.agree(v -> shaft(v).length(), at);
  }

  private static HalfShaft<Gradient> shaft(Gradient[] v) {
    return new HalfShaft<>(
        new FieldVector3D<>(v[0], v[1], v[2]),
        new FieldVector3D<>(v[3], v[4], v[5]),
        new FieldVector3D<>(v[6], v[7], v[8]),
        new FieldVector3D<>(v[9], v[10], v[11]));
  }
}
