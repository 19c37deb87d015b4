package trammel.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A mechanism as free points held at distances, solved by the mathematics library's
 * Levenberg–Marquardt from where the points were: nothing of the closed form is in it.
 */
final class DistanceSolver {
  /** Coordinates of the free points in turn (mm) to what must be zero (mm). */
  private interface Residual {
    double of(Vector3D[] points);
  }

  private final List<Vector3D> start = new ArrayList<>();
  private final List<Residual> residuals = new ArrayList<>();

  /** Another free point. */
  int free(Vector3D surveyed) {
    start.add(surveyed);
    return start.size() - 1;
  }

  /** A free point keeps its surveyed distance from a fixed one that may since have moved. */
  void held(int point, Vector3D surveyedFrom, Vector3D now) {
    double distance = start.get(point).distance(surveyedFrom);
    residuals.add(points -> points[point].distance(now) - distance);
  }

  /** Two free points keep their distance. */
  void held(int one, int other) {
    double distance = start.get(one).distance(start.get(other));
    residuals.add(points -> points[one].distance(points[other]) - distance);
  }

  /** Something else must be zero (mm). */
  void zero(ToDoubleFunction<Vector3D[]> residual) {
    residuals.add(residual::applyAsDouble);
  }

  /** The free points where all distances are kept. */
  Vector3D[] solve() {
    int unknowns = 3 * start.size();
    RealVector first = new ArrayRealVector(unknowns);
    for (int i = 0; i < unknowns; i++) {
      first.setEntry(i, start.get(i / 3).toArray()[i % 3]);
    }
    var problem =
        new LeastSquaresBuilder()
            .start(first)
            .target(new double[residuals.size()])
            .model((MultivariateJacobianFunction) this::model)
            .maxEvaluations(1000)
            .maxIterations(1000)
            .build();
    var optimum =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-15)
            .withParameterRelativeTolerance(1e-14)
            .withOrthoTolerance(0)
            .optimize(problem);
    if (!(optimum.getCost() < 1e-8)) {
      throw new IllegalStateException("distances not met: " + optimum.getCost());
    }
    return points(optimum.getPoint());
  }

  private static Vector3D[] points(RealVector at) {
    Vector3D[] points = new Vector3D[at.getDimension() / 3];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Vector3D(at.getEntry(3 * i), at.getEntry(3 * i + 1), at.getEntry(3 * i + 2));
    }
    return points;
  }

  private Pair<RealVector, RealMatrix> model(RealVector at) {
    double step = 1e-4;
    double[] values = values(at);
    double[][] slopes = new double[values.length][at.getDimension()];
    for (int i = 0; i < at.getDimension(); i++) {
      RealVector more = at.copy();
      more.addToEntry(i, step);
      RealVector less = at.copy();
      less.addToEntry(i, -step);
      double[] up = values(more);
      double[] down = values(less);
      for (int row = 0; row < values.length; row++) {
        slopes[row][i] = (up[row] - down[row]) / (2 * step);
      }
    }
    return new Pair<>(new ArrayRealVector(values), new Array2DRowRealMatrix(slopes));
  }

  private double[] values(RealVector at) {
    Vector3D[] points = points(at);
    return residuals.stream().mapToDouble(residual -> residual.of(points)).toArray();
  }
}
