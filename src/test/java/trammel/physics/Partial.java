package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.FiniteDifferencesDifferentiator;

/** Holds a stated derivative against Hipparchus' finite differences on five points. */
final class Partial {
  private static final DSFactory FIRST_ORDER = new DSFactory(1, 1);

  private Partial() {}

  static void assertPartial(DoubleUnaryOperator function, double at, double stated) {
    double step = 1e-4 * Math.max(1, Math.abs(at));
    double difference =
        new FiniteDifferencesDifferentiator(5, step)
            .differentiate(function::applyAsDouble)
            .value(FIRST_ORDER.variable(0, at))
            .getPartialDerivative(1);
    assertThat(stated).isCloseTo(difference, Offset.offset(1e-5 * Math.max(1, Math.abs(stated))));
  }
}
