package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** What sets a strut's camber and caster, against least squares of its distances (own). */
class StrutAdjustersTest {
  private static final int GEOMETRIES = 200;

  /** A strut with two bolts at its knuckle. */
  private static HardPoints<Binary64> bolted(Random random) {
    HardPoints<Binary64> strut = RandomLinkage.strut(random);
    Map<HardPoint, FieldVector3D<Binary64>> points = new EnumMap<>(strut.points());
    FieldVector3D<Binary64> foot = strut.at(HardPoint.STRUT_FOOT);
    points.put(
        HardPoint.KNUCKLE_UPPER_BOLT,
        foot.add(RandomLinkage.in(new Vector3D(0, RandomLinkage.between(random, -40, 40), 60))));
    points.put(
        HardPoint.KNUCKLE_LOWER_BOLT,
        foot.add(RandomLinkage.in(new Vector3D(0, RandomLinkage.between(random, -40, 40), 0))));
    return new HardPoints<>(points, strut.camber(), strut.toe());
  }

  private static Map<HardPoint, Vector3D> plain(HardPoints<Binary64> points) {
    Map<HardPoint, Vector3D> plain = new EnumMap<>(HardPoint.class);
    points.points().forEach((name, at) -> plain.put(name, at.toVector3D()));
    return plain;
  }

  private static Pose<Binary64> pose(
      HardPoints<Binary64> points, Map<HardPoint, Vector3D> shifts, double travel) {
    Map<HardPoint, FieldVector3D<Binary64>> moved = new EnumMap<>(HardPoint.class);
    shifts.forEach((name, shift) -> moved.put(name, RandomLinkage.in(shift)));
    if (WheelTravel.of(Corner.of(points, moved))
            .at(new Binary64(travel), new Heading.Reset<>(new Binary64(0.1)))
        instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach");
  }

  @Test
  void whatIsMovedLeavesTheWheelWhereItsDistancesPutIt() {
    Random random = new Random(20261127);
    for (int i = 0; i < GEOMETRIES; i++) {
      HardPoints<Binary64> points = bolted(random);
      Map<HardPoint, Vector3D> shifts =
          Map.of(
              HardPoint.STRUT_TOP,
              new Vector3D(
                  RandomLinkage.between(random, -10, 10),
                  RandomLinkage.between(random, -10, 10),
                  0),
              HardPoint.LOWER_REAR_PIVOT,
              new Vector3D(0, RandomLinkage.between(random, -5, 5), 0),
              HardPoint.KNUCKLE_UPPER_BOLT,
              new Vector3D(0, RandomLinkage.between(random, -3, 3), 0));
      double travel = RandomLinkage.between(random, -50, 50);
      Pose<Binary64> pose = pose(points, shifts, travel);
      StrutSolver solved =
          StrutSolver.solve(
              plain(points),
              Upright.spindle(points.camber(), points.toe()).toVector3D(),
              shifts,
              travel,
              StrutSolver.toe(0.1));
      String which = "geometry " + i;
      assertThat(pose.lowerBall().toVector3D().distance(solved.ball())).as(which).isLessThan(1e-6);
      assertThat(pose.wheelCenter().toVector3D().distance(solved.wheel()))
          .as(which)
          .isLessThan(1e-6);
      assertThat(pose.camber().getReal()).as(which).isCloseTo(solved.camber(), within(1e-7));
      assertThat(pose.caster().getReal()).as(which).isCloseTo(solved.caster(), within(1e-7));
      assertThat(pose.tieRodLength().getReal()).as(which).isCloseTo(solved.rod(), within(1e-6));
    }
  }

  /** Directions: common practice. */
  @Test
  void eachMovesTheWheelTheWayTheTradeKnows() {
    Random random = new Random(20261129);
    for (int i = 0; i < 50; i++) {
      HardPoints<Binary64> points = bolted(random);
      Pose<Binary64> before = pose(points, Map.of(), 0);
      Pose<Binary64> inboard = pose(points, Map.of(HardPoint.STRUT_TOP, new Vector3D(0, -5, 0)), 0);
      assertThat(inboard.camber().getReal()).isLessThan(before.camber().getReal());
      Pose<Binary64> rearward =
          pose(points, Map.of(HardPoint.STRUT_TOP, new Vector3D(-5, 0, 0)), 0);
      assertThat(rearward.caster().getReal()).isGreaterThan(before.caster().getReal());
      Pose<Binary64> upper =
          pose(points, Map.of(HardPoint.KNUCKLE_UPPER_BOLT, new Vector3D(0, -2, 0)), 0);
      assertThat(upper.camber().getReal()).isLessThan(before.camber().getReal());
      assertThat(upper.upperBall()).isEqualTo(before.upperBall());
      Pose<Binary64> lower =
          pose(points, Map.of(HardPoint.KNUCKLE_LOWER_BOLT, new Vector3D(0, -2, 0)), 0);
      assertThat(lower.camber().getReal()).isGreaterThan(before.camber().getReal());
    }
  }

  /** The knuckle turned one way about one bolt and as far back about the other: nearly no turn. */
  @Test
  void bothBoltsMovedAlikeTurnNothing() {
    HardPoints<Binary64> points = bolted(new Random(3));
    Vector3D out = new Vector3D(0, 2, 0);
    Map<HardPoint, FieldVector3D<Binary64>> both =
        Map.of(
            HardPoint.KNUCKLE_UPPER_BOLT,
            RandomLinkage.in(out),
            HardPoint.KNUCKLE_LOWER_BOLT,
            RandomLinkage.in(out));
    FieldVector3D<Binary64> low = points.at(HardPoint.KNUCKLE_LOWER_BOLT);
    FieldVector3D<Binary64> high = points.at(HardPoint.KNUCKLE_UPPER_BOLT);
    FieldVector3D<Binary64> axis =
        KnuckleBolts.moved(points, both, high).subtract(KnuckleBolts.moved(points, both, low));
    assertThat(FieldVector3D.angle(axis, high.subtract(low)).getReal()).isLessThan(1e-7);
  }

  @Test
  void aSlotAtTheTopReachesCamberAlone() {
    HardPoints<Binary64> points = bolted(new Random(5));
    AdjusterRange slot = new AdjusterRange(Map.of(HardPoint.STRUT_TOP, Vector3D.PLUS_J), -6, 6);
    AlignmentMap map = new AlignmentMap(points, Map.of(), List.of(slot), 0, 0);
    double in = map.at(-6).orElseThrow().camber();
    double out = map.at(6).orElseThrow().camber();
    assertThat(out - in).isBetween(0.5, 2.5);
    assertThat(map.at(6).orElseThrow().caster())
        .isCloseTo(map.at(-6).orElseThrow().caster(), within(0.1));
  }
}
