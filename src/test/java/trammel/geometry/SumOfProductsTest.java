package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.complex.Complex;
import org.hipparchus.util.Binary64;

/** In one go as term by term, by the mathematics library's own products and sums. */
class SumOfProductsTest {
  private static final int KINDS = 5;

  private static <T extends CalculusFieldElement<T>> T inOneGo(int kind, T[] n) {
    return switch (kind) {
      case 0 -> SumOfProducts.of(n[0], n[1], n[2], n[3]);
      case 1 -> SumOfProducts.difference(n[0], n[1], n[2], n[3]);
      case 2 -> SumOfProducts.of(n[0], n[1], n[2], n[3], n[4], n[5]);
      case 3 -> SumOfProducts.from(n[6], n[0], n[1], n[2], n[3]);
      default -> SumOfProducts.from(n[6], n[0], n[1], n[2], n[3], n[4], n[5]);
    };
  }

  private static <T extends CalculusFieldElement<T>> T termByTerm(int kind, T[] n) {
    T one = n[0].multiply(n[1]);
    T other = n[2].multiply(n[3]);
    T last = n[4].multiply(n[5]);
    return switch (kind) {
      case 0 -> one.add(other);
      case 1 -> one.subtract(other);
      case 2 -> one.add(other).add(last);
      case 3 -> n[6].add(one.add(other));
      default -> n[6].add(one.add(other).add(last));
    };
  }

  private static <T> T[] seven(Random random, DoubleFunction<T> number, T[] into) {
    for (int i = 0; i < into.length; i++) {
      into[i] = number.apply(random.nextGaussian() * 500);
    }
    return into;
  }

  @Property
  void plainNumbersComeOutTheSame(
      @ForAll Random random, @ForAll @IntRange(max = KINDS - 1) int kind) {
    Binary64[] numbers = seven(random, Binary64::new, new Binary64[7]);
    assertThat(inOneGo(kind, numbers)).isEqualTo(termByTerm(kind, numbers));
  }

  @Property
  void derivativesComeOutTheSame(
      @ForAll Random random,
      @ForAll @IntRange(max = KINDS - 1) int kind,
      @ForAll @IntRange(max = 40) int variables) {
    Gradient[] numbers =
        seven(
            random,
            value -> new Gradient(value, random.doubles(variables, -3, 3).toArray()),
            new Gradient[7]);
    double[] start = numbers[6].getGradient();
    Gradient found = inOneGo(kind, numbers);
    Gradient wanted = termByTerm(kind, numbers);
    assertThat(found.getValue()).isEqualTo(wanted.getValue());
    assertThat(found.getFreeParameters()).isEqualTo(variables);
    for (int i = 0; i < variables; i++) {
      assertThat(found.getPartialDerivative(i))
          .isCloseTo(wanted.getPartialDerivative(i), within(1e-11));
    }
    assertThat(numbers[6].getGradient()).isEqualTo(start);
  }

  /** Numbers of a kind that nothing is known of. */
  @Property
  void otherNumbersGoTermByTerm(
      @ForAll Random random, @ForAll @IntRange(max = KINDS - 1) int kind) {
    Complex[] numbers =
        seven(random, value -> new Complex(value, random.nextGaussian()), new Complex[7]);
    assertThat(inOneGo(kind, numbers)).isEqualTo(termByTerm(kind, numbers));
  }
}
