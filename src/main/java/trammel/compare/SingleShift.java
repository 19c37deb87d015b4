package trammel.compare;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealVector;

/**
 * The shift of one input that best explains several deviations together, by generalized least
 * squares: all else stays as uncertain as it was, with what the predictions share, and the readings
 * with their own noise. Uncertainties are standard ones.
 *
 * @param shift of the input, in units of its standard uncertainty
 * @param left sum of squares that the shift leaves, in units of what remains uncertain
 * @param settlesAll whether each deviation is then within what everything else leaves uncertain, k
 *     = 2
 */
record SingleShift(double shift, double left, boolean settlesAll) {
  /**
   * The best shift.
   *
   * <p>With deviations d = s·t + e and e of covariance W⁻¹ = C − s·sᵀ: t = sᵀWd / sᵀWs (Aitken's
   * estimator; textbook form, from memory).
   *
   * @param deviations d, measured − predicted
   * @param covariance C of the deviations: predictions' and readings', positive definite after this
   *     input's part is taken out
   * @param sensitivity s, what each prediction changes by for one standard uncertainty of the
   *     input; not all zero
   */
  static SingleShift of(double[] deviations, double[][] covariance, double[] sensitivity) {
    int count = deviations.length;
    double[] unit = new double[count];
    double[] s = new double[count];
    double[] d = new double[count];
    for (int i = 0; i < count; i++) {
      // Millimeters, degrees and kilopascals stand side by side: each by its own uncertainty.
      unit[i] = Math.sqrt(covariance[i][i]);
      s[i] = sensitivity[i] / unit[i];
      d[i] = deviations[i] / unit[i];
    }
    double[][] rest = new double[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j <= i; j++) {
        rest[i][j] = covariance[i][j] / (unit[i] * unit[j]) - s[i] * s[j];
        rest[j][i] = rest[i][j];
      }
    }
    DecompositionSolver solver =
        new CholeskyDecomposition(new Array2DRowRealMatrix(rest, false)).getSolver();
    RealVector sensitive = new ArrayRealVector(s, false);
    RealVector deviating = new ArrayRealVector(d, false);
    RealVector weighted = solver.solve(sensitive);
    double shift = weighted.dotProduct(deviating) / weighted.dotProduct(sensitive);
    RealVector remaining = deviating.subtract(sensitive.mapMultiply(shift));
    boolean settles = true;
    for (int i = 0; i < count; i++) {
      settles &= Math.abs(remaining.getEntry(i)) <= 2 * Math.sqrt(rest[i][i]);
    }
    return new SingleShift(shift, remaining.dotProduct(solver.solve(remaining)), settles);
  }

  /** How implausible shift and rest are together: smaller is likelier. */
  double implausibility() {
    return left + shift * shift;
  }
}
