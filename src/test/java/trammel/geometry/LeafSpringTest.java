package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.number;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** Own derivation worked by hand: no published example with its lengths is at hand. */
class LeafSpringTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static LeafSpring<Binary64> spring(double fixed, double other, Facing shackle) {
    return new LeafSpring<>(number(fixed), number(other), shackle, true);
  }

  /** Half of what the shackle gains: the rule of the trade, common practice. */
  @Test
  void aCenteredAxleRisesByHalfOfTheShacklesGain() {
    Binary64 drop = LeafSpring.eyeDrop(number(90), number(130), number(0));
    assertThat(drop.getReal()).isCloseTo(40, EXACT);
    assertThat(spring(600, 600, Facing.REARWARD).liftOfShackle(drop).getReal())
        .isCloseTo(20, EXACT);
    assertThat(spring(500, 700, Facing.REARWARD).liftOfShackle(drop).getReal())
        .isCloseTo(40 * 500 / 1200.0, EXACT);
  }

  /** Common practice: a longer shackle at the rear tips the pinion of a rear axle up. */
  @Test
  void aRearShackleTurnsTheFrontUpAndAFrontShackleDown() {
    double expected = Math.toDegrees(Math.asin(40 / 1200.0));
    assertThat(spring(600, 600, Facing.REARWARD).turnOfShackle(number(40)).getReal())
        .isCloseTo(expected, EXACT);
    assertThat(spring(600, 600, Facing.FORWARD).turnOfShackle(number(40)).getReal())
        .isCloseTo(-expected, EXACT);
  }

  /** By hand: 75 mm leaning stand 45 aside and 60 high; 117 mm over the same 45 stand 108 high. */
  @Test
  void aLeaningShackleKeepsItsEyeWhereItIsForeAndAft() {
    Binary64 lean = number(Math.toDegrees(Math.asin(0.6)));
    assertThat(LeafSpring.eyeDrop(number(75), number(117), lean).getReal())
        .isCloseTo(108 - 60, EXACT);
    assertThat(LeafSpring.eyeDrop(number(75), number(75), lean).getReal()).isCloseTo(0, EXACT);
    assertThatThrownBy(() -> LeafSpring.eyeDrop(number(75), number(44), lean))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("expected one that reaches");
  }

  @Test
  void blocksAndWedgesActByWhereTheSpringLies() {
    LeafSpring<Binary64> over = spring(600, 600, Facing.REARWARD);
    LeafSpring<Binary64> under = new LeafSpring<>(number(600), number(600), Facing.REARWARD, false);
    assertThat(over.liftOfBlock(number(50)).getReal()).isEqualTo(50);
    assertThat(under.liftOfBlock(number(50)).getReal()).isEqualTo(-50);
    assertThat(over.turnOfWedge(number(3), Facing.REARWARD).getReal()).isEqualTo(3);
    assertThat(over.turnOfWedge(number(3), Facing.FORWARD).getReal()).isEqualTo(-3);
    assertThat(under.turnOfWedge(number(3), Facing.REARWARD).getReal()).isEqualTo(-3);
    assertThat(under.turnOfWedge(number(3), Facing.FORWARD).getReal()).isEqualTo(3);
  }

  /** The spring is a radius arm about its fixed eye: two ways to the same turn and lift. */
  @Property
  void theSpringSwingsLikeAnArmAboutItsFixedEye(
      @ForAll @DoubleRange(min = 400, max = 800) double fixed,
      @ForAll @DoubleRange(min = 400, max = 800) double other,
      @ForAll @DoubleRange(min = -60, max = 120) double drop) {
    LeafSpring<Binary64> spring = spring(fixed, other, Facing.REARWARD);
    RadiusArm<Binary64> arm =
        new RadiusArm<>(Plain.point(fixed, 0, 0), Plain.point(0, 0, 0), Plain.point(0, 0, 0));
    double lift = spring.liftOfShackle(number(drop)).getReal();
    assertThat(spring.turnOfShackle(number(drop)).getReal())
        .isCloseTo(arm.at(number(lift)).orElseThrow().frontUp().getReal(), EXACT);
  }

  @Test
  void impossibleLengthsAreRefused() {
    assertThatThrownBy(() -> spring(0, 600, Facing.FORWARD))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("from fixed eye to axle");
    assertThatThrownBy(() -> spring(600, 600, Facing.FORWARD).turnOfShackle(number(1200)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    Slopes.agree(v -> LeafSpring.eyeDrop(v[0], v[1], v[2]), 90, 130, 20);
    Slopes.agree(
        v -> new LeafSpring<>(v[0], v[1], Facing.FORWARD, true).turnOfShackle(v[2]), 560, 640, 41);
    Slopes.agree(
        v -> new LeafSpring<>(v[0], v[1], Facing.FORWARD, true).liftOfShackle(v[2]), 560, 640, 41);
  }
}
