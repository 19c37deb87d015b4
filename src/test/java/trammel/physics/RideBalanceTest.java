package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.junit.jupiter.api.Test;
import trammel.physics.RidePosition.Balanced;
import trammel.physics.RidePosition.Limit;
import trammel.physics.RidePosition.Limited;

class RideBalanceTest {
  private static final SpringPath CONSTANT = new SpringPath.Constant(310, 0.62);
  private static final FittedSpring SPRING = new FittedSpring(SpringCurve.linear(92), 380, 150, 0);

  /** A path whose ratio changes; its slope is stated nowhere but in the distance. */
  private record Curved(double rest, double ratioAtRest, double gain) implements SpringPath {
    @Override
    public double seatDistance(double travel) {
      return rest - ratioAtRest * travel - gain * travel * travel / 2;
    }

    @Override
    public double ratio(double travel) {
      return ratioAtRest + gain * travel;
    }
  }

  /** Work of load and spring is stationary where both balance: an independent bisection. */
  @Test
  void forcesBalanceOnAnyPath() {
    Random random = new Random(20_240_502);
    int balanced = 0;
    for (int i = 0; i < 300; i++) {
      SpringPath path =
          new Curved(310, 0.5 + 0.3 * random.nextDouble(), 0.002 * (random.nextDouble() - 0.4));
      FittedSpring spring =
          new FittedSpring(
              SpringCurve.dualRate(60 + 60 * random.nextDouble(), 70, 120),
              370 + 30 * random.nextDouble(),
              150,
              20 * random.nextDouble());
      double load = 2500 + 4000 * random.nextDouble();
      RidePosition position = RideBalance.of(spring, path, load, -90, 90);
      if (position instanceof Balanced stands) {
        balanced++;
        double carried = path.ratio(stands.travel()) * stands.springForce();
        assertThat(carried / load - 1).isCloseTo(0, Offset.offset(1e-9));
        DoubleUnaryOperator power =
            z -> {
              double deflection = spring.freeLength() + spring.spacer() - path.seatDistance(z);
              return path.ratio(z) * spring.curve().force(deflection) - load;
            };
        double bisected = new BisectionSolver(1e-11).solve(200, power::applyAsDouble, -90, 90);
        assertThat(stands.travel()).isCloseTo(bisected, Offset.offset(1e-9));
      }
    }
    assertThat(balanced).isGreaterThan(100);
  }

  @Test
  void theClosedFormIsWhatTheSolverFinds() {
    SpringPath unnamed = new Curved(310, 0.62, 0);
    for (double load : new double[] {2900, 3813, 5200}) {
      assertThat(RideBalance.of(SPRING, CONSTANT, load, -120, 120).travel())
          .isCloseTo(
              RideBalance.of(SPRING, unnamed, load, -120, 120).travel(), Offset.offset(1e-9));
    }
  }

  /** By hand: F = W / MR, loaded length = free length − F / k. */
  @Test
  void anotherSpringLiftsByTheDifferenceOfLoadedLengthsOverTheRatio() {
    FittedSpring stiffer = new FittedSpring(SpringCurve.linear(105), 384, 150, 0);
    double load = 3813;
    double before = 380 - load / (0.62 * 92);
    double after = 384 - load / (0.62 * 105);
    assertThat(
            RideBalance.of(SPRING, CONSTANT, load, -120, 120).travel()
                - RideBalance.of(stiffer, CONSTANT, load, -120, 120).travel())
        .isCloseTo((after - before) / 0.62, Offset.offset(1e-9));
  }

  @Test
  void aSpacerAndItsRemovalCancel() {
    Random random = new Random(3);
    SpringPath path = new Curved(310, 0.62, 0.0007);
    for (int i = 0; i < 50; i++) {
      double load = 3400 + 800 * random.nextDouble();
      double spacer = 25 * random.nextDouble();
      double found = RideBalance.of(SPRING, path, load, -150, 150).travel();
      FittedSpring packed = SPRING.withSpacer(SPRING.spacer() + spacer);
      double raised = RideBalance.of(packed, path, load, -150, 150).travel();
      FittedSpring again = packed.withSpacer(packed.spacer() - spacer);
      assertThat(raised).isLessThan(found);
      assertThat(RideBalance.of(again, path, load, -150, 150).travel())
          .isCloseTo(found, Offset.offset(1e-9));
    }
  }

  @Test
  void travelMovesWithItsInputsAsStated() {
    for (SpringPath path : List.of(CONSTANT, new Curved(310, 0.62, 0.0012))) {
      Balanced at = balanced(SPRING, path, 3813);
      Partial.assertPartial(w -> balanced(SPRING, path, w).travel(), 3813, at.perLoad());
      Partial.assertPartial(
          t -> balanced(SPRING.withSpacer(t), path, 3813).travel(), 0, at.perSpacer());
      Partial.assertPartial(
          e ->
              balanced(new FittedSpring(SpringCurve.linear(92 * (1 + e)), 380, 150, 0), path, 3813)
                  .travel(),
          0,
          at.perRelativeRate());
      Partial.assertPartial(
          e -> balanced(SPRING, moved(path, e, 0, at.travel()), 3813).travel(),
          0,
          at.perSeatDistance());
      Partial.assertPartial(
          e -> balanced(SPRING, moved(path, 0, e, at.travel()), 3813).travel(), 0, at.perRatio());
      Partial.assertPartial(
          z -> path.ratio(z) * SPRING.force(path.seatDistance(z)), at.travel(), at.wheelRate());
    }
  }

  /** Stops at ±80; the numbers follow by hand from 92 N/mm, 380 mm and MR 0.62. */
  @Test
  void whatCannotBalanceIsLocated() {
    assertThat(RideBalance.of(SPRING, CONSTANT, 1000, -80, 80))
        .isEqualTo(
            new Limited(
                Limit.DROOP_STOP, -80, 92 * (380 - 359.6), 1000 - 0.62 * (92 * (380 - 359.6))));
    assertThat(limit(SPRING, 9000)).isEqualTo(Limit.BUMP_STOP);
    FittedSpring shortSpring = new FittedSpring(SpringCurve.linear(92), 255, 150, 0);
    assertThat(RideBalance.of(shortSpring, CONSTANT, 3000, -80, 80))
        .isEqualTo(new Limited(Limit.COIL_SLACK, 80, 0, 3000));
    FittedSpring longSolid = new FittedSpring(SpringCurve.linear(20), 380, 279, 0);
    RidePosition solid = RideBalance.of(longSolid, CONSTANT, 3000, -80, 80);
    assertThat(solid.travel()).isCloseTo((310 - 279) / 0.62, Offset.offset(1e-9));
    assertThat(((Limited) solid).limit()).isEqualTo(Limit.COIL_BOUND);
    assertThat(RideBalance.boundTravel(longSolid, new Curved(310, 0.62, 0), -80, 80).orElseThrow())
        .isCloseTo(50, Offset.offset(1e-9));
    assertThat(RideBalance.boundTravel(SPRING, CONSTANT, -80, 80)).isEmpty();
    assertThat(limit(SPRING.withSpacer(220), 3000)).isEqualTo(Limit.COIL_BOUND);
  }

  @Test
  void impossibleCornersAreRefused() {
    assertThatThrownBy(() -> RideBalance.of(SPRING, CONSTANT, 0, -80, 80))
        .hasMessageContaining("wheel load");
    assertThatThrownBy(() -> RideBalance.of(SPRING, CONSTANT, 3000, 80, -80))
        .hasMessageContaining("bump stop");
    assertThatThrownBy(() -> RideBalance.of(SPRING, new Curved(310, -0.6, 0), 3000, -80, 80))
        .hasMessageContaining("motion ratio");
    assertThatThrownBy(() -> new FittedSpring(SpringCurve.linear(92), 150, 380, 0))
        .hasMessageContaining("free length");
  }

  private static Limit limit(FittedSpring spring, double load) {
    return ((Limited) RideBalance.of(spring, CONSTANT, load, -80, 80)).limit();
  }

  private static Balanced balanced(FittedSpring spring, SpringPath path, double load) {
    return (Balanced) RideBalance.of(spring, path, load, -120, 120);
  }

  /** The path with an error of its distance and of its ratio, the distance held at a travel. */
  private static SpringPath moved(SpringPath path, double distance, double ratio, double at) {
    return new SpringPath() {
      @Override
      public double seatDistance(double travel) {
        return path.seatDistance(travel) + distance - ratio * (travel - at);
      }

      @Override
      public double ratio(double travel) {
        return path.ratio(travel) + ratio;
      }
    };
  }
}
