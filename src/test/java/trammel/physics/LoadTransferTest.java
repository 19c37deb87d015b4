package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import trammel.physics.LoadTransfer.Height;
import trammel.physics.LoadTransfer.Transfer;

/** Formulas of pages of the trade, common practice; the figures are own. */
class LoadTransferTest {

  @Test
  void loadMovesByTheLeverOfTheCenterOfGravity() {
    assertThat(LoadTransfer.lateral(750, 1, 520, 1580).value()).isCloseTo(247, Offset.offset(0.5));
    assertThat(LoadTransfer.longitudinal(1500, 0.9, 520, 2700).value())
        .isCloseTo(260, Offset.offset(0.5));
  }

  /** On the way over, the inner wheels carry nothing: the acceleration is T / 2h. */
  @Test
  void theInnerWheelsAreFreeAtTheStabilityFactor() {
    double tipping = StabilityFactor.of(1643, 730);
    assertThat(LoadTransfer.lateral(20_000, tipping, 730, 1643).value())
        .isCloseTo(10_000, Offset.offset(1e-8));
  }

  /** Both axles of a vehicle that is speeding up, forces and moments in a linear solver. */
  @Test
  void transferIsThatOfTheEquilibrium() {
    Random random = new Random(17);
    for (int i = 0; i < 200; i++) {
      double weight = 10_000 + 20_000 * random.nextDouble();
      double acceleration = 2 * random.nextDouble() - 1;
      double height = 500 + 400 * random.nextDouble();
      double wheelbase = 2200 + 1300 * random.nextDouble();
      double behind = wheelbase * random.nextDouble();
      double[] still = axles(weight, behind, wheelbase);
      double[] moving = axles(weight, behind + acceleration * height, wheelbase);
      double moved = LoadTransfer.longitudinal(weight, acceleration, height, wheelbase).value();
      assertThat(moving[1] - still[1]).isCloseTo(moved, Offset.offset(1e-9 * weight));
      assertThat(moving[0] - still[0]).isCloseTo(-moved, Offset.offset(1e-9 * weight));
    }
  }

  /** A vehicle of known center of gravity, turned nose up about its front wheel center. */
  @Test
  void aTiltWeighingFindsTheHeightItWasMadeWith() {
    Random random = new Random(19);
    for (int i = 0; i < 200; i++) {
      double total = 1200 + 2000 * random.nextDouble();
      double wheelbase = 2200 + 1300 * random.nextDouble();
      double behind = wheelbase * (0.3 + 0.4 * random.nextDouble());
      double above = 150 + 500 * random.nextDouble();
      double tilt = 5 + 25 * random.nextDouble();
      double cosine = Math.cos(Math.toRadians(tilt));
      double sine = Math.sin(Math.toRadians(tilt));
      double level = axles(total, behind, wheelbase)[1];
      double tilted = axles(total, behind * cosine + above * sine, wheelbase * cosine)[1];
      assertThat(LoadTransfer.byTilting(level, tilted, total, wheelbase, tilt).value())
          .isCloseTo(above, Offset.offset(1e-9 * above));
    }
  }

  @Test
  void derivativesAreThoseOfTheFormulas() {
    Transfer t = LoadTransfer.lateral(750, 0.8, 520, 1580);
    Partial.assertPartial(w -> LoadTransfer.lateral(w, 0.8, 520, 1580).value(), 750, t.perWeight());
    Partial.assertPartial(
        a -> LoadTransfer.lateral(750, a, 520, 1580).value(), 0.8, t.perAcceleration());
    Partial.assertPartial(h -> LoadTransfer.lateral(750, 0.8, h, 1580).value(), 520, t.perHeight());
    Partial.assertPartial(b -> LoadTransfer.lateral(750, 0.8, 520, b).value(), 1580, t.perBase());
    Height h = LoadTransfer.byTilting(900, 960, 2000, 2800, 15);
    Partial.assertPartial(
        w -> LoadTransfer.byTilting(w, 960, 2000, 2800, 15).value(), 900, h.perLevelLoad());
    Partial.assertPartial(
        w -> LoadTransfer.byTilting(900, w, 2000, 2800, 15).value(), 960, h.perTiltedLoad());
    Partial.assertPartial(
        m -> LoadTransfer.byTilting(900, 960, m, 2800, 15).value(), 2000, h.perTotal());
    Partial.assertPartial(
        l -> LoadTransfer.byTilting(900, 960, 2000, l, 15).value(), 2800, h.perWheelbase());
    Partial.assertPartial(
        x -> LoadTransfer.byTilting(900, 960, 2000, 2800, x).value(), 15, h.perTilt());
  }

  @Test
  void impossibleWeighingsAreRefused() {
    assertThatThrownBy(() -> LoadTransfer.byTilting(900, 960, 2000, 2800, 0))
        .hasMessageContaining("tilt");
    assertThatThrownBy(() -> LoadTransfer.lateral(750, 1, 0, 1580))
        .hasMessageContaining("center of gravity");
    assertThatThrownBy(() -> LoadTransfer.longitudinal(750, 1, 520, 0))
        .hasMessageContaining("wheelbase");
  }

  /** Loads in front and behind of a weight whose line of action lies so far behind the front. */
  private static double[] axles(double weight, double behind, double wheelbase) {
    double[][] equations = {{1, 1}, {0, wheelbase}};
    return new LUDecomposition(new Array2DRowRealMatrix(equations))
        .getSolver()
        .solve(new ArrayRealVector(new double[] {weight, weight * behind}))
        .toArray();
  }
}
