package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import trammel.physics.FittedSpring.Coil;
import trammel.physics.HeldHeight.Outcome;
import trammel.physics.HeldHeight.SpacerThickness;

/** The numbers are the own ones of the front wheel in fluid-beside-spring.csv. */
class HeldHeightTest {
  private static final double LOAD = 6400;
  private static final double AREA = 760;
  private static final double RAM = 0.58;
  private static final SpringPath CONSTANT = new SpringPath.Constant(310, 0.62);
  private static final FittedSpring SPRING =
      new FittedSpring(SpringCurve.linear(92), 310 + 6150.0 / 92, 150, 0);

  private static final SpringPath CURVED =
      new SpringPath() {
        @Override
        public double seatDistance(double travel) {
          return 310 - 0.62 * travel - 0.0004 * travel * travel;
        }

        @Override
        public double ratio(double travel) {
          return 0.62 + 0.0008 * travel;
        }
      };

  @Test
  void theBalanceGivesThePressuresOfTheSimpleFormulas() {
    assertThat(pressure(SPRING, CONSTANT, 0)).isCloseTo(5869, Offset.offset(0.5));
    assertThat(pressure(SPRING, CONSTANT, -40)).isCloseTo(9078, Offset.offset(0.5));
    assertThat(pressure(SPRING.withSpacer(15), CONSTANT, -40)).isCloseTo(7137, Offset.offset(0.5));
    assertThat(pressure(SPRING.withSpacer(24.8), CONSTANT, -40))
        .isCloseTo(pressure(SPRING, CONSTANT, 0), Offset.offset(1e-8));
  }

  @Test
  void theSpacerIsTheRatioTimesTheLiftWhereTheRatioIsConstant() {
    Random random = new Random(5);
    for (int i = 0; i < 100; i++) {
      double lift = 60 * random.nextDouble();
      double found = pressure(SPRING, CONSTANT, 0);
      SpacerThickness needed = spacer(CONSTANT, -lift, found);
      assertThat(needed.thickness()).isCloseTo(0.62 * lift, Offset.offset(1e-9));
      assertThat(pressure(SPRING, CONSTANT, -lift)).isGreaterThanOrEqualTo(found);
    }
  }

  @Test
  void theSpacerBringsThePressureOnAnyPath() {
    double found = pressure(SPRING, CURVED, 0);
    for (double travel : new double[] {-60, -40, -15, 20}) {
      SpacerThickness needed = spacer(CURVED, travel, found);
      assertThat(needed.outcome()).isEqualTo(Outcome.FOUND);
      assertThat(pressure(SPRING.withSpacer(needed.thickness()), CURVED, travel))
          .isCloseTo(found, Offset.offset(1e-9 * found));
    }
  }

  @Test
  void whatNoSpacerBringsIsLocated() {
    SpacerThickness loose = spacer(CONSTANT, -40, 20_000);
    assertThat(loose.outcome()).isEqualTo(Outcome.NO_SPRING_NEEDED);
    assertThat(held(SPRING.withSpacer(loose.thickness()), CONSTANT, -40).coil())
        .isEqualTo(Coil.SLACK);
    FittedSpring stubby = new FittedSpring(SpringCurve.linear(92), 376, 320, 0);
    SpacerThickness bound = HeldHeight.spacerFor(stubby, CONSTANT, -40, LOAD, AREA, RAM, 5869);
    assertThat(bound.outcome()).isEqualTo(Outcome.COIL_BOUND);
    assertThat(bound.thickness()).isCloseTo(310 + 24.8 - 320, Offset.offset(1e-9));
    assertThat(bound.springForce()).isCloseTo(92 * 56, Offset.offset(1e-9));
    assertThat(held(stubby, CONSTANT, 0).coil()).isEqualTo(Coil.BOUND);
  }

  /** With the coil loose the ram carries all: 6400 N on 440.8 mm². */
  @Test
  void aLooseCoilLeavesTheLoadToTheRam() {
    HeldHeight held = held(SPRING.withSpacer(-80), CONSTANT, 0);
    assertThat(held.springForce()).isZero();
    assertThat(held.pressure().value()).isCloseTo(6400 / 440.8 * 1000, Offset.offset(1e-8));
    assertThat(held.perSpacer()).isZero();
  }

  @Test
  void pressureAndSpacerMoveWithTheirInputsAsStated() {
    HeldHeight held = held(SPRING, CURVED, -40);
    Partial.assertPartial(t -> pressure(SPRING.withSpacer(t), CURVED, -40), 0, held.perSpacer());
    Partial.assertPartial(z -> pressure(SPRING, CURVED, z), -40, held.perTravel());
    Partial.assertPartial(
        e -> pressure(withRate(92 * (1 + e)), CURVED, -40), 0, held.perRelativeRate());
    SpacerThickness needed = spacer(CURVED, -40, 6000);
    Partial.assertPartial(
        w -> HeldHeight.spacerFor(SPRING, CURVED, -40, w, AREA, RAM, 6000).thickness(),
        LOAD,
        needed.perLoad());
    Partial.assertPartial(p -> spacer(CURVED, -40, p).thickness(), 6000, needed.perPressure());
    Partial.assertPartial(z -> spacer(CURVED, z, 6000).thickness(), -40, needed.perTravel());
    Partial.assertPartial(
        e ->
            HeldHeight.spacerFor(withRate(92 * (1 + e)), CURVED, -40, LOAD, AREA, RAM, 6000)
                .thickness(),
        0,
        needed.perRelativeRate());
    Partial.assertPartial(
        l ->
            HeldHeight.spacerFor(
                    new FittedSpring(SPRING.curve(), l, 150, 0), CURVED, -40, LOAD, AREA, RAM, 6000)
                .thickness(),
        SPRING.freeLength(),
        needed.perFreeLength());
  }

  private static FittedSpring withRate(double rate) {
    return new FittedSpring(SpringCurve.linear(rate), SPRING.freeLength(), 150, 0);
  }

  private static HeldHeight held(FittedSpring spring, SpringPath path, double travel) {
    return HeldHeight.of(spring, path, travel, LOAD, AREA, RAM);
  }

  private static double pressure(FittedSpring spring, SpringPath path, double travel) {
    return held(spring, path, travel).pressure().value();
  }

  private static SpacerThickness spacer(SpringPath path, double travel, double pressure) {
    return HeldHeight.spacerFor(SPRING, path, travel, LOAD, AREA, RAM, pressure);
  }
}
