package trammel.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.compare.Predicted.input;
import static trammel.compare.Predicted.pair;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The E_n number, E_n = (x − X)/√(U(x)² + U(X)²): the form of ISO 13528 and ISO/IEC 17043, from
 * memory. The rows are own, worked by hand on triangles of whole sides.
 */
class DeviationTest {
  @ParameterizedTest
  @CsvSource({
    // measured, its U, predicted, its U, E_n, agrees
    "100.5, 0.3, 100.0, 0.4, 1.0, true",
    "99.5, 0.3, 100.0, 0.4, -1.0, true",
    "110, 3, 100, 4, 2.0, false",
    "536, 5, 562, 12, -2.0, false",
    "541, 5, 543.6, 12, -0.2, true",
    "8, 8, 0, 15, 0.470588, true"
  })
  void theDifferenceInUnitsOfItsOwnUncertainty(
      double measured, double own, double predicted, double its, double score, boolean agrees) {
    Deviation deviation = Deviation.of(pair(input("prediction", predicted, its), measured, own));
    assertThat(deviation.score()).isCloseTo(score, within(1e-6));
    // A hundredth of a millimeter aside, for 100.5 − 100.0 in binary.
    Deviation nearer =
        Deviation.of(
            pair(
                input("prediction", predicted, its),
                measured - 1e-9 * Math.signum(measured - predicted),
                own));
    assertThat(nearer.agrees()).isEqualTo(agrees);
  }
}
