package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import trammel.physics.SpringCurve.Point;

class SpringCurveTest {
  private static final SpringCurve DUAL = SpringCurve.dualRate(30, 60, 55);
  private static final SpringCurve TABLE =
      SpringCurve.tabulated(List.of(new Point(20, 700), new Point(60, 2500), new Point(100, 5300)));

  /** G d⁴ / (8 D³ n), a page of the trade; the figures are own, the solid length from memory. */
  @Test
  void aCoilHasTheRateAndSolidLengthOfItsWire() {
    double rate = CoilSpring.rate(CoilSpring.SPRING_STEEL, 16, 110, 7);
    assertThat(rate).isCloseTo(69.0, Offset.offset(0.05));
    assertThat(CoilSpring.solidLength(16, 7)).isEqualTo(144);
    Partial.assertPartial(
        d -> CoilSpring.rate(78_500, d, 110, 7), 16, CoilSpring.ratePerWire(rate, 16));
    Partial.assertPartial(
        d -> CoilSpring.rate(78_500, 16, d, 7), 110, CoilSpring.ratePerCoil(rate, 110));
    Partial.assertPartial(
        n -> CoilSpring.rate(78_500, 16, 110, n), 7, CoilSpring.ratePerActiveCoil(rate, 7));
  }

  /** Worked by hand: 30 N/mm over 60 mm, 55 N/mm over another 20. */
  @Test
  void aDualRateSpringStiffensWhereItsSoftCoilsClose() {
    assertThat(DUAL.force(40)).isEqualTo(1200);
    assertThat(DUAL.force(80)).isCloseTo(1800 + 1100, Offset.offset(1e-9));
    assertThat(DUAL.slope(59)).isEqualTo(30);
    assertThat(DUAL.slope(60)).isEqualTo(55);
    assertThat(DUAL.deflection(2900)).isCloseTo(80, Offset.offset(1e-9));
  }

  @Test
  void aTableIsReadAsHipparchusInterpolatesIt() {
    PolynomialSplineFunction line =
        new LinearInterpolator()
            .interpolate(new double[] {0, 20, 60, 100}, new double[] {0, 700, 2500, 5300});
    Random random = new Random(20_240_501);
    for (int i = 0; i < 200; i++) {
      double deflection = 100 * random.nextDouble();
      assertThat(TABLE.force(deflection)).isCloseTo(line.value(deflection), Offset.offset(1e-9));
      assertThat(TABLE.slope(deflection))
          .isCloseTo(line.polynomialSplineDerivative().value(deflection), Offset.offset(1e-9));
      assertThat(TABLE.deflection(TABLE.force(deflection)))
          .isCloseTo(deflection, Offset.offset(1e-10));
    }
    assertThat(TABLE.force(120)).isCloseTo(5300 + 20 * 70, Offset.offset(1e-9));
  }

  @Test
  void aCoilDoesNotPull() {
    assertThat(DUAL.force(-5)).isZero();
    assertThat(DUAL.slope(-5)).isZero();
    assertThat(DUAL.deflection(0)).isZero();
    assertThatThrownBy(() -> DUAL.deflection(-1)).hasMessageContaining("spring force");
  }

  @Test
  void deflectionMovesWithForceAndRateAsStated() {
    for (double force : new double[] {300, 1500, 2600, 7000}) {
      for (SpringCurve curve : List.of(SpringCurve.linear(92), DUAL, TABLE)) {
        Partial.assertPartial(curve::deflection, force, curve.deflectionPerForce(force));
        double stated = curve.deflectionPerRelativeRate(force);
        Partial.assertPartial(error -> scaled(curve, 1 + error).deflection(force), 0, stated);
      }
    }
  }

  @Test
  void springsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> SpringCurve.linear(0)).hasMessageContaining("spring rate");
    assertThatThrownBy(() -> SpringCurve.tabulated(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SpringCurve.tabulated(List.of(new Point(20, 700), new Point(30, 650))))
        .hasMessageContaining("force of a spring point");
    assertThatThrownBy(() -> SpringCurve.tabulated(List.of(new Point(0, 300), new Point(9, 650))))
        .hasMessageContaining("0 mm, 0 N");
  }

  private static SpringCurve scaled(SpringCurve curve, double factor) {
    return new SpringCurve(
        curve.points().stream().map(p -> new Point(p.deflection(), factor * p.force())).toList());
  }
}
