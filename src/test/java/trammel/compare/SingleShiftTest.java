package trammel.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.quantity.Quantity;

/** The shift that explains best, against Hipparchus' least squares in two other forms. */
class SingleShiftTest {
  /** Made-up predictions of several values from several inputs, and what was read. */
  private static final class Case {
    final int count;
    final int inputs;
    final double[][] sensitivity;
    final double[] noise;
    final double[] deviations;
    final double[][] covariance;

    Case(long seed) {
      Random random = new Random(seed);
      count = 2 + random.nextInt(7);
      inputs = 1 + random.nextInt(9);
      sensitivity = new double[count][inputs];
      noise = new double[count];
      deviations = new double[count];
      for (int i = 0; i < count; i++) {
        // Millimeters, degrees and kilopascals stand side by side.
        double scale = Math.pow(10, random.nextInt(5) - 2);
        noise[i] = scale * (0.2 + random.nextDouble());
        deviations[i] = scale * random.nextGaussian() * 3;
        for (int k = 0; k < inputs; k++) {
          sensitivity[i][k] = scale * random.nextGaussian();
        }
      }
      covariance = new double[count][count];
      for (int i = 0; i < count; i++) {
        for (int j = 0; j < count; j++) {
          for (int k = 0; k < inputs; k++) {
            covariance[i][j] += sensitivity[i][k] * sensitivity[j][k];
          }
        }
        covariance[i][i] += noise[i] * noise[i];
      }
    }

    double[] column(int input) {
      return Arrays.stream(sensitivity).mapToDouble(row -> row[input]).toArray();
    }
  }

  /** One unknown, weighted by the inverse of the covariance without the input's own part. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void isThatOfWeightedLeastSquares(long seed) {
    Case made = new Case(seed);
    for (int input = 0; input < made.inputs; input++) {
      double[] s = made.column(input);
      RealMatrix rest = new Array2DRowRealMatrix(made.covariance);
      rest = rest.subtract(new ArrayRealVector(s).outerProduct(new ArrayRealVector(s)));
      RealMatrix inverse = MatrixUtils.inverse(rest);
      // The last digit of an inverse need not be symmetrical; the optimizer wants it to be.
      RealMatrix weight = inverse.add(inverse.transpose()).scalarMultiply(0.5);
      var optimum =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(new double[] {0})
                      .target(made.deviations)
                      .weight(weight)
                      .model(
                          at ->
                              new Pair<RealVector, RealMatrix>(
                                  new ArrayRealVector(s).mapMultiply(at.getEntry(0)),
                                  new Array2DRowRealMatrix(s)))
                      .maxEvaluations(100)
                      .maxIterations(100)
                      .build());
      SingleShift found = SingleShift.of(made.deviations, made.covariance, s);
      double wanted = optimum.getPoint().getEntry(0);
      assertThat(found.shift()).isCloseTo(wanted, within(1e-6 * (1 + Math.abs(wanted))));
      double left = optimum.getCost() * optimum.getCost();
      assertThat(found.left()).isCloseTo(left, within(1e-6 * (1 + left)));
    }
  }

  /**
   * Without any covariance: every input an unknown of its own that is known to ±1, but for the one
   * that is free, and each reading an equation with its own noise.
   */
  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38})
  void isThatOfAllInputsAdjustedTogether(long seed) {
    Case made = new Case(seed);
    for (int free = 0; free < made.inputs; free++) {
      double[][] rows = new double[made.count + made.inputs][made.inputs];
      double[] target = new double[made.count + made.inputs];
      for (int i = 0; i < made.count; i++) {
        target[i] = made.deviations[i] / made.noise[i];
        for (int k = 0; k < made.inputs; k++) {
          rows[i][k] = made.sensitivity[i][k] / made.noise[i];
        }
      }
      for (int k = 0; k < made.inputs; k++) {
        rows[made.count + k][k] = k == free ? 0 : 1;
      }
      RealMatrix matrix = new Array2DRowRealMatrix(rows);
      var optimum =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(new double[made.inputs])
                      .target(target)
                      .model(at -> new Pair<RealVector, RealMatrix>(matrix.operate(at), matrix))
                      .maxEvaluations(500)
                      .maxIterations(500)
                      .build());
      double wanted = optimum.getPoint().getEntry(free);
      SingleShift found = SingleShift.of(made.deviations, made.covariance, made.column(free));
      assertThat(found.shift()).isCloseTo(wanted, within(1e-6 * (1 + Math.abs(wanted))));
    }
  }

  /** What predictions share, input by input, and readings on the diagonal only. */
  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44, 45, 46, 47, 48})
  void theCovarianceIsSymmetricalAndThatOfTheInputs(long seed) {
    Case made = new Case(seed);
    Quantity[] inputs =
        IntStream.range(0, made.inputs)
            .mapToObj(k -> Predicted.input("x" + k, 10 + k, 2))
            .toArray(Quantity[]::new);
    var deviations =
        IntStream.range(0, made.count)
            .mapToObj(
                i ->
                    Deviation.of(
                        Predicted.pair(
                            Predicted.sum(made.sensitivity[i], inputs), 0, 2 * made.noise[i])))
            .toList();
    double[][] covariance = Agreement.covariance(deviations);
    for (int i = 0; i < made.count; i++) {
      for (int j = 0; j < made.count; j++) {
        assertThat(covariance[i][j]).isEqualTo(covariance[j][i]);
        double wanted = made.covariance[i][j];
        assertThat(covariance[i][j]).isCloseTo(wanted, within(1e-12 + 1e-9 * Math.abs(wanted)));
      }
      assertThat(2 * Math.sqrt(covariance[i][i]))
          .isCloseTo(deviations.get(i).expanded(), within(1e-9 * deviations.get(i).expanded()));
    }
  }
}
