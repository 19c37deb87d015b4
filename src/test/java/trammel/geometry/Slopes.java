package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.hipparchus.analysis.differentiation.Gradient;

/**
 * Holds every derivative that a function carries along against finite differences of its values.
 */
final class Slopes {
  private static final DSFactory FIRST_ORDER = new DSFactory(1, 1);

  private Slopes() {}

  /** The function takes its inputs in the order given. */
  static void agree(Function<Gradient[], Gradient> function, double... inputs) {
    Gradient carried = function.apply(variables(inputs));
    for (int input = 0; input < inputs.length; input++) {
      int varied = input;
      double step = 1e-4 * Math.max(1, Math.abs(inputs[input]));
      double difference =
          new FiniteDifferencesDifferentiator(5, step)
              .differentiate(
                  (double x) -> {
                    double[] moved = inputs.clone();
                    moved[varied] = x;
                    return function.apply(variables(moved)).getValue();
                  })
              .value(FIRST_ORDER.variable(0, inputs[input]))
              .getPartialDerivative(1);
      double slope = carried.getPartialDerivative(input);
      assertThat(slope)
          .as("derivative by input %d", input)
          .isCloseTo(difference, Offset.offset(1e-7 * Math.max(1, Math.abs(difference))));
    }
  }

  private static Gradient[] variables(double[] inputs) {
    Gradient[] variables = new Gradient[inputs.length];
    for (int i = 0; i < inputs.length; i++) {
      variables[i] = Gradient.variable(inputs.length, i, inputs[i]);
    }
    return variables;
  }
}
