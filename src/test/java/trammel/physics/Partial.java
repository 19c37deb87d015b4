package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;

/** Holds a stated derivative against a central difference. */
final class Partial {
  private Partial() {}

  static void assertPartial(DoubleUnaryOperator function, double at, double stated) {
    double step = 1e-5 * Math.max(1, Math.abs(at));
    double difference =
        (function.applyAsDouble(at + step) - function.applyAsDouble(at - step)) / (2 * step);
    assertThat(stated).isCloseTo(difference, Offset.offset(1e-5 * Math.max(1, Math.abs(stated))));
  }
}
