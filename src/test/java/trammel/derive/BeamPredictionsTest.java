package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.DAY;

import java.io.IOException;
import java.nio.file.Path;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;

/**
 * What is foretold of beam axles and their shafts, against triangles worked out by hand from the
 * demo's points and an axle solved by Newton's method; own derivations throughout.
 */
class BeamPredictionsTest {
  @TempDir private Path folder;

  private Predictions skerrow(String changes) throws IOException {
    return Predictions.of(DemoSheet.of(folder, "skerrow", "changes:\n" + changes), DAY);
  }

  private static double slope(double rise, double run) {
    return Math.toDegrees(Math.atan(rise / run));
  }

  private static double angle(Vector3D one, Vector3D other) {
    return Math.toDegrees(Vector3D.angle(one, other));
  }

  private static Vector3D flange(double slope) {
    return new Vector3D(Math.cos(Math.toRadians(slope)), 0, Math.sin(Math.toRadians(slope)));
  }

  /**
   * The bar's ends are 85 apart in height, the frame's the higher and on the right, and 966 apart
   * sideways; 22 fore and aft. Raised by d and its axle end by r, h = 85 + d − r, and b = √(L² − h²
   * − 22²): the axle goes toward the frame end's side by 966 − b.
   */
  @ParameterizedTest
  @CsvSource({
    "28, '', 0",
    "-20, '', 0",
    "28, upper, 50",
    "28, lower, 25",
    "-60, upper, 50",
  })
  void theBarStandsAsItsTriangleSays(double lift, String hole, double raised) throws IOException {
    String bracket = hole.isEmpty() ? "" : "  - { add: LB-PK-SK, at: rear, hole: " + hole + " }\n";
    BeamPredictions rear =
        skerrow("  - { raise: " + lift + " mm, at: rear }\n" + bracket).beam(Axle.REAR);
    double rise = 85 + lift - raised;
    double span = Math.sqrt(966 * 966 + 85 * 85 - rise * rise);
    assertThat(rear.barSlope().value()).isCloseTo(slope(rise, span), within(1e-9));
    assertThat(rear.shift().value()).isCloseTo(-(966 - span), within(1e-9));
  }

  /** Both ends' heights, ±2 each, turn the bar by 2/b; the lift, ±6, by 6/b; the rest is small. */
  @Test
  void theBarsSlopeIsAsUncertainAsItsEndsAndTheLift() throws IOException {
    Quantity slope = skerrow("  - { raise: 28 mm ± 6 mm, at: rear }\n").beam(Axle.REAR).barSlope();
    double expected = Math.toDegrees(Math.sqrt(2 * 2 + 2 * 2 + 6 * 6) / 966);
    assertThat(slope.expanded()).isCloseTo(expected, within(0.01));
  }

  /** Nothing raised at the rear and the frame level: everything stands as the profile has it. */
  @Test
  void anAxleLeftAloneStandsAsItWasSurveyed() throws IOException {
    Predictions alone = skerrow("  - { raise: 0.0 mm, at: front }\n");
    BeamPredictions rear = alone.beam(Axle.REAR);
    assertThat(rear.barSlope().value()).isCloseTo(slope(85, 966), within(1e-9));
    assertThat(rear.shift().value()).isCloseTo(0, within(1e-9));
    assertThat(rear.turn().value()).isCloseTo(0, within(1e-9));
    assertThat(rear.lowerLinkSlope().value()).isCloseTo(slope(405 - 300, 850 - 15), within(1e-9));
    assertThat(rear.upperLinkSlope().value()).isCloseTo(slope(555 - 500, 480 + 25), within(1e-9));
    ShaftPredictions shaft = alone.shaft("rear shaft");
    assertThat(shaft.pinionSlope().value()).isCloseTo(3, within(1e-9));
    Vector3D along = new Vector3D(1500 - 265, -(40 - 25), 440 - 395);
    assertThat(shaft.gearboxJoint().value()).isCloseTo(angle(along, flange(3.2)), within(1e-9));
    assertThat(shaft.axleJoint().value()).isCloseTo(angle(along, flange(3)), within(1e-9));
  }

  /**
   * 70 mm of spacer at a motion ratio of 0.92 under the rear alone. Against level, what points
   * forward loses what the frame's nose has gone down: atan(lift / 2440).
   */
  @Test
  void linksAndPinionTurnWithTheAxleAndTiltWithTheFrame() {
    Predictions steep = Predictions.of(DemoSheet.demo("stonecrop-steep-shaft"), DAY);
    double lift = 70 / 0.92;
    double tilt = -slope(lift, 2440);
    SideViewNewton links = SideViewNewton.STONECROP_REAR;
    SideViewNewton.Moved moved = links.at(lift);
    double turn = Math.toDegrees(moved.turn());
    assertThat(Math.abs(turn)).isGreaterThan(0.2);
    BeamPredictions rear = steep.beam(Axle.REAR);
    assertThat(rear.turn().value()).isCloseTo(turn, within(1e-4));
    Vector3D lower = links.lowerFrame().subtract(moved.at(links.lowerAxle()));
    Vector3D upper = links.upperFrame().subtract(moved.at(links.upperAxle()));
    assertThat(rear.lowerLinkSlope().value())
        .isCloseTo(slope(lower.getZ(), lower.getX()) + tilt, within(1e-4));
    assertThat(rear.upperLinkSlope().value())
        .isCloseTo(slope(upper.getZ(), upper.getX()) + tilt, within(1e-4));
    assertThat(steep.shaft("rear shaft").pinionSlope().value())
        .isCloseTo(3.4 + turn + tilt, within(1e-4));
    // Of the front axle nothing has moved but the frame over it: what points rearward gains.
    assertThat(steep.beam(Axle.FRONT).lowerLinkSlope().value())
        .isCloseTo(slope(400 - 290, 760 - 20) - tilt, within(1e-4));
  }

  /**
   * 40 mm of spacer at a motion ratio of 0.9 under the front of the Stonecrop, whose maker tells
   * caster from the frame: 5° as surveyed and the turn of the axle; camber and toe stay. The nose
   * of a pinion that points rearward goes down as the axle's front comes up.
   */
  @Test
  void casterOfASteeredBeamFollowsItsLinks() throws IOException {
    Predictions raised =
        Predictions.of(
            DemoSheet.of(folder, "stonecrop", "changes:\n  - { add: LS-SC-F40P, at: front }\n"),
            DAY);
    double lift = 40 / 0.9;
    assertThat(raised.lift(Position.FRONT_LEFT).value()).isCloseTo(lift, within(1e-9));
    double turn = Math.toDegrees(SideViewNewton.STONECROP_FRONT.at(lift).turn());
    assertThat(Math.abs(turn)).isGreaterThan(0.2);
    for (Position wheel : Position.of(Axle.FRONT)) {
      assertThat(raised.caster(wheel, false).value()).isCloseTo(5 + turn, within(1e-4));
      assertThat(raised.camber(wheel, false).value()).isEqualTo(-0.25);
      assertThat(raised.toe(wheel, false).value()).isEqualTo(0.1);
      assertThat(raised.toe(wheel, true).value()).isCloseTo(0.1, within(1e-9));
    }
    assertThat(raised.beam(Axle.FRONT).turn().value()).isCloseTo(-turn, within(1e-4));
  }

  /**
   * The Stonecrop's drag link rises to the left by 62 over 890, and by the lift more; it keeps its
   * length, and its end on the arm hardly moves fore and aft.
   */
  @ParameterizedTest
  @CsvSource({"0", "44.444444"})
  void theDragLinkSlopesAsItsTriangleSays(double lift) throws IOException {
    String changes =
        lift == 0 ? "  - { add: LS-SC-R40, at: rear }\n" : "  - { add: LS-SC-F40P, at: front }\n";
    BeamPredictions front =
        Predictions.of(DemoSheet.of(folder, "stonecrop", "changes:\n" + changes), DAY)
            .beam(Axle.FRONT);
    double rise = 502 - 440 + lift;
    double span = Math.sqrt(890 * 890 + 62 * 62 - rise * rise);
    assertThat(front.dragLinkSlope().value())
        .isCloseTo(slope(rise, span), within(lift == 0 ? 1e-6 : 0.02));
  }

  @Test
  void whatNobodyHasSurveyedIsNotForetold() throws IOException {
    Predictions gimmer =
        Predictions.of(
            DemoSheet.of(folder, "gimmer", "changes:\n  - { add: CM-GM-R50, at: rear }\n"), DAY);
    BeamPredictions rear = gimmer.beam(Axle.REAR);
    for (Quantity unknown :
        new Quantity[] {
          rear.barSlope(),
          rear.shift(),
          rear.dragLinkSlope(),
          rear.lowerLinkSlope(),
          rear.upperLinkSlope(),
          gimmer.caster(Position.FRONT_LEFT, false)
        }) {
      assertThat(unknown.isKnown()).isFalse();
    }
    // A leaf spring in the middle of its span does not turn the axle (common practice).
    assertThat(rear.turn().value()).isZero();
  }
}
