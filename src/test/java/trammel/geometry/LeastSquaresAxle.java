package trammel.geometry;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** An axle on two links, placed by Hipparchus' least squares from the lengths alone. */
final class LeastSquaresAxle {
  private LeastSquaresAxle() {}

  /**
   * Wheel center's fore and up (mm) and the turn from forward to up (radians).
   *
   * @param v lower frame and axle end, upper frame and axle end, wheel center: fore and up of each
   * @param lower longer, frame end raised, axle end raised
   */
  static double[] pose(double[] v, double lift, double[] lower, double[] upper) {
    double lowerLength = Math.hypot(v[0] - v[2], v[1] - v[3]) + lower[0];
    double upperLength = Math.hypot(v[4] - v[6], v[5] - v[7]) + upper[0];
    LevenbergMarquardtOptimizer solver =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-15)
            .withParameterRelativeTolerance(1e-15)
            .withOrthoTolerance(1e-15);
    return solver
        .optimize(
            new LeastSquaresBuilder()
                .start(new double[] {v[8], v[9] - lift, 0})
                .target(new double[] {lowerLength, upperLength, v[9] - lift})
                .model(
                    p -> {
                      double[][] rows = {
                        row(p.toArray(), v, 0, lower), row(p.toArray(), v, 4, upper)
                      };
                      return new Pair<>(
                          MatrixUtils.createRealVector(
                              new double[] {rows[0][3], rows[1][3], p.getEntry(1)}),
                          MatrixUtils.createRealMatrix(
                              new double[][] {
                                {rows[0][0], rows[0][1], rows[0][2]},
                                {rows[1][0], rows[1][1], rows[1][2]},
                                {0, 1, 0}
                              }));
                    })
                .maxEvaluations(1000)
                .maxIterations(1000)
                .build())
        .getPoint()
        .toArray();
  }

  /** Derivatives of a link's length by fore, up and turn, then the length. */
  private static double[] row(double[] p, double[] v, int at, double[] change) {
    double onAxleFore = v[at + 2] - v[8];
    double onAxleUp = v[at + 3] + change[2] - v[9];
    double cosine = Math.cos(p[2]);
    double sine = Math.sin(p[2]);
    double fore = cosine * onAxleFore - sine * onAxleUp;
    double up = sine * onAxleFore + cosine * onAxleUp;
    double linkFore = p[0] + fore - v[at];
    double linkUp = p[1] + up - (v[at + 1] + change[1]);
    double length = Math.hypot(linkFore, linkUp);
    return new double[] {
      linkFore / length, linkUp / length, (-linkFore * up + linkUp * fore) / length, length
    };
  }
}
