package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.hipparchus.geometry.euclidean.twod.Line;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import trammel.physics.Underbody.Breakover;
import trammel.physics.Underbody.Overhang;

class UnderbodyTest {

  /** Definition of 49 CFR 523.2: a line through the point that is tangent to the tire's arc. */
  @Test
  void theLineTouchesTheTireAndThePoint() {
    Random random = new Random(23);
    for (int i = 0; i < 300; i++) {
      double radius = 330 + 100 * random.nextDouble();
      double fore = 500 + 600 * random.nextDouble();
      double up = 700 * random.nextDouble();
      double angle = Math.toRadians(Underbody.approach(fore, up, radius).orElseThrow().degrees());
      Line slope = new Line(new Vector2D(fore, up), angle, 1e-9);
      assertThat(slope.getOffset(new Vector2D(0, radius)))
          .as("the tire above the line, touching")
          .isCloseTo(-radius, Offset.offset(1e-9 * radius));
      assertThat(Math.toDegrees(angle)).isBetween(0.0, 90.0);
    }
  }

  /** By hand: at u = 2R the tangent is a reflection, tan(θ/2) = R / d; at u = R, sin θ = R / d. */
  @Test
  void anglesByHand() {
    assertThat(Underbody.approach(800, 800, 400).orElseThrow().degrees())
        .isCloseTo(2 * Math.toDegrees(Math.atan(0.5)), Offset.offset(1e-9));
    assertThat(Underbody.approach(800, 400, 400).orElseThrow().degrees())
        .isCloseTo(30, Offset.offset(1e-9));
    assertThat(Underbody.departure(-2800 - 800, 400, 2800, 400).orElseThrow().degrees())
        .isCloseTo(30, Offset.offset(1e-9));
    assertThat(Underbody.breakover(-800, 400, 1600, 400, 400).orElseThrow().degrees())
        .isCloseTo(60, Offset.offset(1e-9));
    assertThat(Underbody.approach(800, 0, 400).orElseThrow().degrees()).isZero();
  }

  @Test
  void aBreakoverIsTheSumOfBothSides() {
    Breakover both = Underbody.breakover(-1100, 260, 2800, 390, 400).orElseThrow();
    assertThat(both.degrees())
        .isEqualTo(
            Underbody.approach(1100, 260, 390).orElseThrow().degrees()
                + Underbody.approach(1700, 260, 400).orElseThrow().degrees());
  }

  @Test
  void pointsThatDoNotLimitGiveNothing() {
    assertThat(Underbody.approach(-100, 300, 400)).isEmpty();
    assertThat(Underbody.approach(200, 300, 400)).isEmpty();
    assertThat(Underbody.departure(-1000, 300, 2800, 400)).isEmpty();
    assertThat(Underbody.breakover(-3000, 300, 2800, 400, 400)).isEmpty();
    assertThatThrownBy(() -> Underbody.approach(800, -10, 400)).hasMessageContaining("height");
    assertThatThrownBy(() -> Underbody.approach(800, 10, 0)).hasMessageContaining("radius");
  }

  @Test
  void derivativesAreThoseOfTheFormulas() {
    Overhang at = Underbody.approach(820, 480, 395).orElseThrow();
    Partial.assertPartial(x -> approach(x, 480, 395), 820, at.perDistance());
    Partial.assertPartial(u -> approach(820, u, 395), 480, at.perUp());
    Partial.assertPartial(r -> approach(820, 480, r), 395, at.perRadius());
    Breakover under = Underbody.breakover(-1100, 260, 2800, 390, 400).orElseThrow();
    Partial.assertPartial(x -> breakover(x, 260, 2800, 390, 400), -1100, under.perFore());
    Partial.assertPartial(u -> breakover(-1100, u, 2800, 390, 400), 260, under.perUp());
    Partial.assertPartial(l -> breakover(-1100, 260, l, 390, 400), 2800, under.perWheelbase());
    Partial.assertPartial(r -> breakover(-1100, 260, 2800, r, 400), 390, under.perFrontRadius());
    Partial.assertPartial(r -> breakover(-1100, 260, 2800, 390, r), 400, under.perRearRadius());
  }

  private static double approach(double fore, double up, double radius) {
    return Underbody.approach(fore, up, radius).orElseThrow().degrees();
  }

  private static double breakover(
      double fore, double up, double wheelbase, double frontRadius, double rearRadius) {
    return Underbody.breakover(fore, up, wheelbase, frontRadius, rearRadius)
        .orElseThrow()
        .degrees();
  }
}
