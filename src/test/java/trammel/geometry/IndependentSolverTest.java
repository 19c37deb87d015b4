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
      Vector3D[] solved = DistanceSolver.wishbones(points, travel, rack);
      String which = "geometry " + i + ", travel " + travel + ", rack " + rack.getY();
      assertSame(which, pose.lowerBall(), solved[0]);
      assertSame(which, pose.upperBall(), solved[1]);
      assertSame(which, pose.tieRodOuter(), solved[2]);
      assertSame(which, pose.wheelCenter(), solved[3]);
      assertSame(which, pose.wheelCenter().add(pose.spindle().scalarMultiply(100)), solved[4]);
    }
    assertThat(reached).isGreaterThan(GEOMETRIES * 95 / 100);
  }

  @Test
  void strutsStandWhereTheirDistancesPutThem() {
    Random random = new Random(20261126);
    int reached = 0;
    for (int i = 0; i < GEOMETRIES; i++) {
      HardPoints<Binary64> points = RandomLinkage.strut(random);
      Strut<Binary64> linkage = Strut.of(points);
      double travel = RandomLinkage.between(random, -80, 80);
      Vector3D rack = new Vector3D(0, RandomLinkage.between(random, -60, 60), 0);
      FieldVector3D<Binary64> inner = linkage.tieRodInner().add(rack);
      if (!(WheelTravel.of(linkage).at(new Binary64(travel), new Heading.ByTieRod<>(inner))
          instanceof Pose<Binary64> pose)) {
        continue;
      }
      reached++;
      Vector3D[] solved = DistanceSolver.strut(points, travel, rack);
      String which = "geometry " + i + ", travel " + travel + ", rack " + rack.getY();
      assertSame(which, pose.lowerBall(), solved[0]);
      assertSame(which, pose.tieRodOuter(), solved[1]);
      assertSame(which, pose.wheelCenter(), solved[2]);
      assertSame(which, pose.wheelCenter().add(pose.spindle().scalarMultiply(100)), solved[3]);
      Vector3D along = solved[5].subtract(solved[4]).normalize();
      assertThat(linkage.direction(pose).toVector3D().distance(along)).as(which).isLessThan(1e-8);
      assertThat(pose.upperBall().toVector3D())
          .isEqualTo(points.at(HardPoint.STRUT_TOP).toVector3D());
    }
    assertThat(reached).isGreaterThan(GEOMETRIES * 95 / 100);
  }

  private static void assertSame(String which, FieldVector3D<Binary64> closed, Vector3D solved) {
    assertThat(closed.toVector3D().distance(solved)).as(which).isLessThan(CLOSE);
  }
}
