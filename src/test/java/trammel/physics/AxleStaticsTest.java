package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import trammel.physics.AxleStatics.AxleLoads;
import trammel.physics.AxleStatics.PointMass;
import trammel.physics.AxleStatics.WheelLoads;

class AxleStaticsTest {
  private static final List<PointMass> LADEN =
      List.of(
          new PointMass(1900, 1350, 0), new PointMass(85, 1500, 380), new PointMass(60, -600, 0));

  /** By hand: 100 kg a quarter of the wheelbase back leaves three quarters in front. */
  @Test
  void aMassRestsMostlyOnTheNearerAxle() {
    AxleLoads loads = AxleStatics.axles(List.of(new PointMass(100, 700, 0)), 2800);
    assertThat(loads.front()).isCloseTo(75 * 9.80665, Offset.offset(1e-9));
    assertThat(loads.rear()).isCloseTo(25 * 9.80665, Offset.offset(1e-9));
  }

  /** Forces and moments about the ground's axes, in a linear solver, on invented vehicles. */
  @Test
  void fourWheelsAreInEquilibrium() {
    Random random = new Random(20_240_503);
    for (int i = 0; i < 200; i++) {
      List<PointMass> masses = randomMasses(random);
      double wheelbase = 2200 + 1300 * random.nextDouble();
      double front = 1400 + 300 * random.nextDouble();
      double rear = 1400 + 300 * random.nextDouble();
      double share = random.nextDouble();
      double[] solved = solve(masses, wheelbase, front, rear, share);
      WheelLoads loads = AxleStatics.wheels(masses, wheelbase, front, rear, share);
      Offset<Double> close = Offset.offset(1e-9 * 9.80665 * total(masses));
      assertThat(loads.frontLeft()).isCloseTo(solved[0], close);
      assertThat(loads.frontRight()).isCloseTo(solved[1], close);
      assertThat(loads.rearLeft()).isCloseTo(solved[2], close);
      assertThat(loads.rearRight()).isCloseTo(solved[3], close);
    }
  }

  @Test
  void loadsMoveWithTheirInputsAsStated() {
    Partial.assertPartial(
        m -> AxleStatics.axles(List.of(new PointMass(m, 900, 0)), 2800).front(),
        120,
        AxleStatics.frontPerMass(900, 2800));
    Partial.assertPartial(
        m -> AxleStatics.axles(List.of(new PointMass(m, 900, 0)), 2800).rear(),
        120,
        AxleStatics.rearPerMass(900, 2800));
    Partial.assertPartial(
        x -> AxleStatics.axles(List.of(new PointMass(120, x, 0)), 2800).rear(),
        900,
        AxleStatics.rearPerBehind(120, 2800));
    Partial.assertPartial(
        l -> AxleStatics.axles(LADEN, l).rear(), 2800, AxleStatics.rearPerWheelbase(LADEN, 2800));
    Partial.assertPartial(
        l -> AxleStatics.axles(LADEN, l).front(), 2800, -AxleStatics.rearPerWheelbase(LADEN, 2800));
  }

  @Test
  void impossibleVehiclesAreRefused() {
    assertThatThrownBy(() -> new PointMass(-1, 0, 0)).hasMessageContaining("mass");
    assertThatThrownBy(() -> new PointMass(1, Double.NaN, 0)).hasMessageContaining("position");
    assertThatThrownBy(() -> AxleStatics.axles(LADEN, 0)).hasMessageContaining("wheelbase");
    assertThatThrownBy(() -> AxleStatics.wheels(LADEN, 2800, 1600, 1600, 1.1))
        .hasMessageContaining("roll moment");
  }

  private static double[] solve(
      List<PointMass> masses, double wheelbase, double front, double rear, double share) {
    double weight = 0;
    double pitch = 0;
    double roll = 0;
    for (PointMass at : masses) {
      double force = AxleStatics.GRAVITY * at.mass();
      weight += force;
      pitch += force * at.behind();
      roll += force * at.left();
    }
    double[][] equations = {
      {1, 1, 1, 1},
      {0, 0, wheelbase, wheelbase},
      {front / 2, -front / 2, rear / 2, -rear / 2},
      {(1 - share) * front, -(1 - share) * front, -share * rear, share * rear}
    };
    return new LUDecomposition(new Array2DRowRealMatrix(equations))
        .getSolver()
        .solve(new ArrayRealVector(new double[] {weight, pitch, roll, 0}))
        .toArray();
  }

  private static List<PointMass> randomMasses(Random random) {
    List<PointMass> masses = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      masses.add(
          new PointMass(
              20 + 600 * random.nextDouble(),
              -800 + 4500 * random.nextDouble(),
              1400 * (random.nextDouble() - 0.5)));
    }
    return masses;
  }

  private static double total(List<PointMass> masses) {
    return masses.stream().mapToDouble(PointMass::mass).sum();
  }
}
