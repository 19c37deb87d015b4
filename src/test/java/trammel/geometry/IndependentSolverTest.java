package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** The closed forms against a least-squares solution of the distances alone (own derivation). */
class IndependentSolverTest {
  private static final int GEOMETRIES = 1000;
  private static final double CLOSE = 1e-6;

  @Test
  void wishbonesStandWhereTheirDistancesPutThem() {
    Random random = new Random(20261125);
    int reached = 0;
    for (int i = 0; i < GEOMETRIES; i++) {
      HardPoints<Binary64> points = RandomLinkage.wishbones(random);
      DoubleWishbone<Binary64> linkage = DoubleWishbone.of(points);
      double travel = RandomLinkage.between(random, -80, 80);
      Vector3D rack = new Vector3D(0, RandomLinkage.between(random, -60, 60), 0);
      FieldVector3D<Binary64> inner = linkage.tieRodInner().add(rack);
      if (!(WheelTravel.of(linkage).at(new Binary64(travel), new Heading.ByTieRod<>(inner))
          instanceof Pose<Binary64> pose)) {
        continue;
      }
      reached++;
      Vector3D[] solved = solve(points, travel, rack);
      String which = "geometry " + i + ", travel " + travel + ", rack " + rack.getY();
      assertSame(which, pose.lowerBall(), solved[0]);
      assertSame(which, pose.upperBall(), solved[1]);
      assertSame(which, pose.tieRodOuter(), solved[2]);
      assertSame(which, pose.wheelCenter(), solved[3]);
      assertSame(which, pose.wheelCenter().add(pose.spindle().scalarMultiply(100)), solved[4]);
    }
    assertThat(reached).isGreaterThan(GEOMETRIES * 95 / 100);
  }

  /** Fifteen unknowns: both ball joints, tie rod's end, wheel center, a point on the spindle. */
  private static Vector3D[] solve(HardPoints<Binary64> points, double travel, Vector3D rack) {
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

  @Test
  void strutsStandWhereTheirDistancesPutThem() {
    Random random = new Random(20261126);
    int reached = 0;
    for (int i = 0; i < GEOMETRIES; i++) {
      StrutPoints<Binary64> points = RandomLinkage.strut(random);
      Strut<Binary64> linkage = Strut.of(points);
      double travel = RandomLinkage.between(random, -80, 80);
      Vector3D rack = new Vector3D(0, RandomLinkage.between(random, -60, 60), 0);
      FieldVector3D<Binary64> inner = linkage.tieRodInner().add(rack);
      if (!(WheelTravel.of(linkage).at(new Binary64(travel), new Heading.ByTieRod<>(inner))
          instanceof Pose<Binary64> pose)) {
        continue;
      }
      reached++;
      Vector3D[] solved = solve(points, travel, rack);
      String which = "geometry " + i + ", travel " + travel + ", rack " + rack.getY();
      assertSame(which, pose.lowerBall(), solved[0]);
      assertSame(which, pose.tieRodOuter(), solved[1]);
      assertSame(which, pose.wheelCenter(), solved[2]);
      assertSame(which, pose.wheelCenter().add(pose.spindle().scalarMultiply(100)), solved[3]);
      Vector3D along = solved[5].subtract(solved[4]).normalize();
      assertThat(linkage.direction(pose).toVector3D().distance(along)).as(which).isLessThan(1e-8);
      assertThat(pose.upperBall().toVector3D()).isEqualTo(points.strutTop().toVector3D());
    }
    assertThat(reached).isGreaterThan(GEOMETRIES * 95 / 100);
  }

  /** Eighteen unknowns; the top mount must lie on the line through two points of the upright. */
  private static Vector3D[] solve(StrutPoints<Binary64> points, double travel, Vector3D rack) {
    DistanceSolver solver = new DistanceSolver();
    int lower = solver.free(points.lowerBallJoint().toVector3D());
    int outer = solver.free(points.tieRodOuter().toVector3D());
    Vector3D wheelAt = points.wheelCenter().toVector3D();
    int wheel = solver.free(wheelAt);
    int spindle = solver.free(wheelAt.add(spindle(points.camber(), points.toe())));
    Vector3D top = points.strutTop().toVector3D();
    Vector3D foot = points.strutFoot().toVector3D();
    int low = solver.free(foot);
    int high = solver.free(foot.add(top.subtract(foot).normalize().scalarMultiply(200)));
    Vector3D front = points.lowerFrontPivot().toVector3D();
    Vector3D rear = points.lowerRearPivot().toVector3D();
    solver.held(lower, front, front);
    solver.held(lower, rear, rear);
    Vector3D inner = points.tieRodInner().toVector3D();
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

  private static void rigid(DistanceSolver solver, int... points) {
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

  private static void assertSame(String which, FieldVector3D<Binary64> closed, Vector3D solved) {
    assertThat(closed.toVector3D().distance(solved)).as(which).isLessThan(CLOSE);
  }
}
