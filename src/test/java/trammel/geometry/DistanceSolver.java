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
import org.hipparchus.util.Binary64;
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

  /**
   * A corner of wishbones at a travel and with the rack moved (mm). Fifteen unknowns: both ball
   * joints, tie rod's end, wheel center, a point on the spindle.
   */
  static Vector3D[] wishbones(HardPoints<Binary64> points, double travel, Vector3D rack) {
    DistanceSolver solver = new DistanceSolver();
    int lower = solver.free(at(points, HardPoint.LOWER_BALL_JOINT));
    int upper = solver.free(at(points, HardPoint.UPPER_BALL_JOINT));
    int outer = solver.free(at(points, HardPoint.TIE_ROD_OUTER));
    Vector3D wheelAt = at(points, HardPoint.WHEEL_CENTER);
    int wheel = solver.free(wheelAt);
    int spindle = solver.free(wheelAt.add(spindle(points.camber(), points.toe())));
    for (HardPoint pivot :
        new HardPoint[] {HardPoint.LOWER_FRONT_PIVOT, HardPoint.LOWER_REAR_PIVOT}) {
      solver.held(lower, at(points, pivot), at(points, pivot));
    }
    for (HardPoint pivot :
        new HardPoint[] {HardPoint.UPPER_FRONT_PIVOT, HardPoint.UPPER_REAR_PIVOT}) {
      solver.held(upper, at(points, pivot), at(points, pivot));
    }
    Vector3D inner = at(points, HardPoint.TIE_ROD_INNER);
    solver.held(outer, inner, inner.add(rack));
    rigid(solver, lower, upper, outer, wheel, spindle);
    solver.zero(now -> now[wheel].getZ() - wheelAt.getZ() - travel);
    return solver.solve();
  }

  /**
   * A strut corner likewise. Eighteen unknowns; the top mount must lie on the line through two
   * points of the upright.
   */
  static Vector3D[] strut(HardPoints<Binary64> points, double travel, Vector3D rack) {
    DistanceSolver solver = new DistanceSolver();
    int lower = solver.free(points.at(HardPoint.LOWER_BALL_JOINT).toVector3D());
    int outer = solver.free(points.at(HardPoint.TIE_ROD_OUTER).toVector3D());
    Vector3D wheelAt = points.at(HardPoint.WHEEL_CENTER).toVector3D();
    int wheel = solver.free(wheelAt);
    int spindle = solver.free(wheelAt.add(spindle(points.camber(), points.toe())));
    Vector3D top = points.at(HardPoint.STRUT_TOP).toVector3D();
    Vector3D foot = points.at(HardPoint.STRUT_FOOT).toVector3D();
    int low = solver.free(foot);
    int high = solver.free(foot.add(top.subtract(foot).normalize().scalarMultiply(200)));
    Vector3D front = points.at(HardPoint.LOWER_FRONT_PIVOT).toVector3D();
    Vector3D rear = points.at(HardPoint.LOWER_REAR_PIVOT).toVector3D();
    solver.held(lower, front, front);
    solver.held(lower, rear, rear);
    Vector3D inner = points.at(HardPoint.TIE_ROD_INNER).toVector3D();
    solver.held(outer, inner, inner.add(rack));
    rigid(solver, lower, outer, wheel, spindle, low, high);
    for (Vector3D side : new Vector3D[] {Vector3D.PLUS_I, Vector3D.PLUS_J}) {
      solver.zero(
          now ->
              top.subtract(now[low])
                  .crossProduct(now[high].subtract(now[low]).normalize())
                  .dotProduct(side));
    }
    solver.zero(now -> now[wheel].getZ() - wheelAt.getZ() - travel);
    return solver.solve();
  }

  static void rigid(DistanceSolver solver, int... points) {
    for (int one = 0; one < points.length; one++) {
      for (int other = 0; other < one; other++) {
        solver.held(points[one], points[other]);
      }
    }
  }

  private static Vector3D at(HardPoints<Binary64> points, HardPoint point) {
    return points.at(point).toVector3D();
  }

  /** 100 mm along the spindle, turned by toe about the vertical after it leaned by camber. */
  private static Vector3D spindle(Binary64 camber, Binary64 toe) {
    double lean = Math.toRadians(camber.getReal());
    double turn = Math.toRadians(toe.getReal());
    return new Vector3D(
            Math.sin(turn) * Math.cos(lean), Math.cos(turn) * Math.cos(lean), -Math.sin(lean))
        .scalarMultiply(100);
  }

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
