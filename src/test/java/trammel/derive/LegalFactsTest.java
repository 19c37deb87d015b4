package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trammel.build.Build;
import trammel.fact.LegalMeasures;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;

/** What statutes measure. Expected values are worked by hand from the demo's invented figures. */
class LegalFactsTest {
  private static LegalMeasures measures(Build build) {
    return DemoSheet.facts(build, LegalMeasures.class).get(0);
  }

  private static void is(Quantity quantity, double expected) {
    assertThat(quantity.value()).as(quantity.name()).isCloseTo(expected, within(1e-9));
  }

  @Test
  void aRaiseOfTheSuspensionRaisesFrameBumpersAndLamps() {
    LegalMeasures measures = measures(DemoSheet.demo("skerrow-raised-mildly"));
    is(measures.liftFront(), 30);
    is(measures.totalRaise(), 30);
    is(measures.frameHeight(), 470 + 30);
    is(measures.lowestBody(), 445 + 30);
    is(measures.bumperBottomFront(), 480 + 30);
    is(measures.bumperBottomRear(), 495 + 30);
    is(measures.headlampCenter(), 905 + 30);
    is(measures.floorOverFrame(), 62);
    is(measures.bodyLift(), 0);
    is(measures.tireDiameterChange(), 0);
    is(measures.trackChangeRear(), 0);
    assertThat(measures.tireDiameterChange().expanded()).isZero();
    // 98 mm of droop in front lose more of their length than 118 mm behind
    is(measures.droopShare(), (98.0 - 30) / 98);
    is(measures.bumpShare(), (92.0 + 30) / 92);
    assertThat(measures.fourWheelDrive()).isTrue();
  }

  @Test
  void tiresRaiseEverythingByHalfTheirGrowth() {
    LegalMeasures measures = measures(DemoSheet.demo("stonecrop-raised"));
    double growth = 31.7 * 25.4 - 774;
    is(measures.tireDiameterChange(), growth);
    is(measures.tireLift(), growth / 2);
    is(measures.trackChangeFront(), 2 * (44.0 - 35));
    is(measures.tirePerWheelbase(), 31.7 * 25.4 / 2440);
    // a spacer acts through the spring's motion ratio
    is(measures.liftFront(), 40 / 0.9);
    is(measures.liftRear(), 40 / 0.92);
    is(measures.totalRaise(), 40 / 0.9 + growth / 2);
    is(measures.frameHeight(), 455 + (40 / 0.9 + 40 / 0.92) / 2 + growth / 2);
    assertThat(measures.coilSpacers()).isEqualTo(Decision.MET);
    assertThat(measures.wheelSpacers()).isEqualTo(Decision.NOT_MET);
    assertThat(measures.frontLiftBlock()).isEqualTo(Decision.NOT_MET);
  }

  @Test
  void aHeightThatNobodyHasMeasuredIsAbsentAndSaysHowToGetIt() {
    LegalMeasures measures = measures(DemoSheet.demo("cairnback-spacers"));
    assertThat(measures.frameHeight().isKnown()).isFalse();
    assertThat(measures.frameHeight().absence()).isNotNull();
    assertThat(measures.wheelSpacers()).isEqualTo(Decision.MET);
    is(measures.totalRaise(), 0);
  }

  @Test
  void otherWheelsAloneRaiseNothingAndTakeNoTravel() {
    LegalMeasures measures = measures(DemoSheet.demo("skerrow-cast-wheels-right-nuts"));
    is(measures.bumpShare(), 1);
    is(measures.droopShare(), 1);
    is(measures.totalRaise(), 0);
    assertThat(measures.totalRaise().expanded()).isZero();
    is(measures.frameHeight(), 470);
  }
}
