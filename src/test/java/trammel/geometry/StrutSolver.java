package trammel.geometry;

import java.util.Map;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A strut corner whose joints have been shifted, as distances kept, toe or the tie rod's length
 * given: the mathematics library's least squares, rotations and root finder, nothing of the closed
 * form (own derivation).
 *
 * @param wheel its center (mm)
 * @param spindle unit vector outboard
 * @param length from the strut's top to its foot (mm)
 * @param axis from the lower ball joint to the strut's top
 */
record StrutSolver(
    Vector3D ball,
    Vector3D outer,
    Vector3D wheel,
    Vector3D spindle,
    Vector3D axis,
    Vector3D inner,
    double length) {

  double camber() {
    return Math.toDegrees(Math.asin(-spindle.getZ()));
  }

  double toe() {
    return Math.toDegrees(Math.atan2(spindle.getX(), spindle.getY()));
  }

  double caster() {
    return Math.toDegrees(Math.atan2(-axis.getX(), axis.getZ()));
  }

  double inclination() {
    return Math.toDegrees(Math.atan2(-axis.getY(), axis.getZ()));
  }

  double rod() {
    return outer.distance(inner);
  }

  /** What gives the wheel its heading. */
  interface Held {
    void hold(DistanceSolver solver, int outer, int wheel, int spindle);
  }

  /** Toe set anew (degrees). */
  static Held toe(double degrees) {
    double turn = Math.toRadians(degrees);
    return (solver, outer, wheel, spindle) ->
        solver.zero(
            now -> {
              Vector3D along = now[spindle].subtract(now[wheel]);
              return along.getX() * Math.cos(turn) - along.getY() * Math.sin(turn);
            });
  }

  /** A tie rod of a length (mm) with its inner end at a place. */
  static Held rod(double length, Vector3D inner) {
    return (solver, outer, wheel, spindle) ->
        solver.zero(now -> now[outer].distance(inner) - length);
  }

  static StrutSolver solve(
      Map<HardPoint, Vector3D> points,
      Vector3D spindleAsSurveyed,
      Map<HardPoint, Vector3D> shifts,
      double travel,
      Held held) {
    DistanceSolver solver = new DistanceSolver();
    int ball = solver.free(points.get(HardPoint.LOWER_BALL_JOINT));
    int outer = solver.free(points.get(HardPoint.TIE_ROD_OUTER));
    Vector3D wheelAt = points.get(HardPoint.WHEEL_CENTER);
    int wheel = solver.free(wheelAt);
    int spindle = solver.free(wheelAt.add(100, spindleAsSurveyed));
    Vector3D surveyedTop = points.get(HardPoint.STRUT_TOP);
    Vector3D foot = clamped(points, shifts, points.get(HardPoint.STRUT_FOOT));
    Vector3D up = clamped(points, shifts, surveyedTop).subtract(foot).normalize();
    int low = solver.free(foot);
    int high = solver.free(foot.add(200, up));
    for (HardPoint pivot :
        new HardPoint[] {HardPoint.LOWER_FRONT_PIVOT, HardPoint.LOWER_REAR_PIVOT}) {
      solver.held(ball, points.get(pivot), points.get(pivot).add(shift(shifts, pivot)));
    }
    DistanceSolver.rigid(solver, ball, outer, wheel, spindle, low, high);
    Vector3D top = surveyedTop.add(shift(shifts, HardPoint.STRUT_TOP));
    for (Vector3D side : new Vector3D[] {Vector3D.PLUS_I, Vector3D.PLUS_J}) {
      solver.zero(
          now ->
              top.subtract(now[low])
                  .crossProduct(now[high].subtract(now[low]).normalize())
                  .dotProduct(side));
    }
    solver.zero(now -> now[wheel].getZ() - wheelAt.getZ() - travel);
    held.hold(solver, outer, wheel, spindle);
    Vector3D[] at = solver.solve();
    return new StrutSolver(
        at[ball],
        at[outer],
        at[wheel],
        at[spindle].subtract(at[wheel]).normalize(),
        top.subtract(at[ball]),
        points.get(HardPoint.TIE_ROD_INNER),
        top.distance(at[low]));
  }

  private static Vector3D shift(Map<HardPoint, Vector3D> shifts, HardPoint point) {
    return shifts.getOrDefault(point, Vector3D.ZERO);
  }

  /** A point of the strut, seen from the knuckle, once its upper bolt has been turned. */
  private static Vector3D clamped(
      Map<HardPoint, Vector3D> points, Map<HardPoint, Vector3D> shifts, Vector3D point) {
    double out = shift(shifts, HardPoint.KNUCKLE_UPPER_BOLT).getY();
    if (out == 0) {
      return point;
    }
    Vector3D about = points.get(HardPoint.KNUCKLE_LOWER_BOLT);
    Vector3D bolt = points.get(HardPoint.KNUCKLE_UPPER_BOLT).subtract(about);
    double angle =
        new BrentSolver(1e-14, 1e-14)
            .solve(200, turn -> about(turn).applyTo(bolt).getY() - (bolt.getY() - out), -0.5, 0.5);
    return about.add(about(angle).applyTo(point.subtract(about)));
  }

  private static Rotation about(double angle) {
    return new Rotation(Vector3D.PLUS_I, angle, RotationConvention.VECTOR_OPERATOR);
  }
}
