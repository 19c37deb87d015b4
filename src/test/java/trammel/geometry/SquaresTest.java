package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.complex.Complex;
import org.hipparchus.util.Binary64;

/** In one go as step by step, by the mathematics library's own squares, differences and roots. */
class SquaresTest {
  private static <T extends CalculusFieldElement<T>> T cosineByArcsine(T sine) {
    return sine.asin().cos();
  }

  @Property
  void plainNumbersComeOutTheSame(@ForAll Random random) {
    Binary64 a = new Binary64(random.nextGaussian() * 500);
    Binary64 b = new Binary64(random.nextGaussian() * 500);
    Binary64 sine = new Binary64(random.nextDouble() * 1.98 - 0.99);
    assertThat(Squares.less(a, b)).isEqualTo(a.subtract(b.square()));
    assertThat(Squares.cosine(sine).getReal())
        .isCloseTo(cosineByArcsine(sine).getReal(), within(1e-14));
  }

  @Property
  void derivativesComeOutTheSame(@ForAll Random random, @ForAll @IntRange(max = 40) int variables) {
    Gradient a = new Gradient(random.nextGaussian(), slopes(random, variables));
    Gradient b = new Gradient(random.nextGaussian(), slopes(random, variables));
    Gradient sine = new Gradient(random.nextDouble() * 1.8 - 0.9, slopes(random, variables));
    double[] kept = a.getGradient();
    assertSame(Squares.less(a, b), a.subtract(b.square()));
    assertSame(Squares.cosine(sine), cosineByArcsine(sine));
    assertThat(a.getGradient()).isEqualTo(kept);
  }

  private static double[] slopes(Random random, int variables) {
    return random.doubles(variables, -3, 3).toArray();
  }

  private static void assertSame(Gradient found, Gradient wanted) {
    assertThat(found.getValue()).isCloseTo(wanted.getValue(), within(1e-14));
    assertThat(found.getFreeParameters()).isEqualTo(wanted.getFreeParameters());
    for (int i = 0; i < wanted.getFreeParameters(); i++) {
      assertThat(found.getPartialDerivative(i))
          .isCloseTo(wanted.getPartialDerivative(i), within(1e-12));
    }
  }

  /** Numbers of a kind that nothing is known of. */
  @Property
  void othersGoStepByStep(@ForAll Random random) {
    Complex a = new Complex(random.nextGaussian(), random.nextGaussian());
    Complex b = new Complex(random.nextGaussian(), random.nextGaussian());
    assertThat(Squares.less(a, b)).isEqualTo(a.subtract(b.square()));
    Complex apart = Squares.cosine(b).subtract(cosineByArcsine(b));
    assertThat(apart.getReal()).isCloseTo(0, within(1e-12));
    assertThat(apart.getImaginary()).isCloseTo(0, within(1e-12));
  }
}
