package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.number;
import static trammel.geometry.Plain.point;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

class ShaftJointsTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  /** A rear shaft along the center plane: angles of the output and the pinion in side view. */
  private static ShaftJoints<Binary64> inSideView(double shaftFall, double output, double pinion) {
    double fall = Math.toRadians(shaftFall);
    return new ShaftJoints<>(
        point(0, 0, 600),
        point(-Math.cos(Math.toRadians(output)), 0, -Math.sin(Math.toRadians(output))),
        point(-1000 * Math.cos(fall), 0, 600 - 1000 * Math.sin(fall)),
        point(Math.cos(Math.toRadians(pinion)), 0, Math.sin(Math.toRadians(pinion))));
  }

  /** Worked by hand: a shaft that falls 7 degrees between axes that fall 3 and rise 5. */
  @Test
  void anglesInOnePlaneAreDifferencesOfSlopes() {
    ShaftJoints<Binary64> joints = inSideView(7, 3, 5);
    assertThat(joints.outputAngle().getReal()).isCloseTo(4, EXACT);
    assertThat(joints.pinionAngle().getReal()).isCloseTo(2, EXACT);
    assertThat(joints.difference().getReal()).isCloseTo(2, EXACT);
    assertThat(joints.length().getReal()).isCloseTo(1000, EXACT);
    assertThat(joints.turnToAimPinion().getReal()).isCloseTo(2, EXACT);
    assertThat(inSideView(7, 3, 9).turnToAimPinion().getReal()).isCloseTo(-2, EXACT);
    assertThat(joints.residualAngleSquared().getReal()).isCloseTo(16 - 4, EXACT);
  }

  /** Own computation from the vectors: 12 degrees in side view and 9 in plan make 14.846. */
  @Test
  void anglesInSpaceCompound() {
    ShaftJoints<Binary64> joints =
        new ShaftJoints<>(
            point(0, 0, 0),
            point(-1, 0, 0),
            point(-1, Math.tan(Math.toRadians(9)), -Math.tan(Math.toRadians(12))),
            point(1, 0, 0));
    assertThat(joints.outputAngle().getReal()).isCloseTo(14.846, Offset.offset(0.0005));
    assertThat(joints.pinionAngle().getReal()).isCloseTo(14.846, Offset.offset(0.0005));
    assertThat(joints.residualAngleSquared().getReal()).isCloseTo(0, EXACT);
  }

  @Property
  void itDoesNotMatterWhichWayAnAxisIsDrawn(
      @ForAll @DoubleRange(min = -15, max = 15) double fall,
      @ForAll @DoubleRange(min = -15, max = 15) double output,
      @ForAll @DoubleRange(min = -15, max = 15) double pinion) {
    ShaftJoints<Binary64> joints = inSideView(fall, output, pinion);
    ShaftJoints<Binary64> drawnBack =
        new ShaftJoints<>(
            joints.outputCenter(),
            joints.outputAxis().negate(),
            joints.pinionCenter(),
            joints.pinionAxis().scalarMultiply(-40));
    assertThat(drawnBack.outputAngle().getReal()).isCloseTo(joints.outputAngle().getReal(), EXACT);
    assertThat(drawnBack.pinionAngle().getReal()).isCloseTo(joints.pinionAngle().getReal(), EXACT);
    assertThat(drawnBack.turnToAimPinion().getReal())
        .isCloseTo(joints.turnToAimPinion().getReal(), EXACT);
    assertThat(drawnBack.residualAngleSquared().getReal())
        .isCloseTo(joints.residualAngleSquared().getReal(), EXACT);
  }

  /**
   * Two joints turned in space, cross by cross: the output swings about even running as one joint
   * of the residual angle would, up to terms of the fourth order.
   */
  @Property(tries = 200)
  void twoJointsInSpaceSwingLikeOneOfTheResidualAngle(
      @ForAll @DoubleRange(min = -8, max = 8) double outputSide,
      @ForAll @DoubleRange(min = -8, max = 8) double outputPlan,
      @ForAll @DoubleRange(min = -8, max = 8) double pinionSide,
      @ForAll @DoubleRange(min = -8, max = 8) double pinionPlan) {
    Vector3D output = axis(outputSide, outputPlan);
    Vector3D pinion = axis(pinionSide, pinionPlan);
    ShaftJoints<Binary64> joints =
        new ShaftJoints<>(
            point(0, 0, 0),
            point(output.getX(), output.getY(), output.getZ()),
            point(-1000, 0, 0),
            point(pinion.getX(), pinion.getY(), pinion.getZ()));
    double residual = Math.sqrt(joints.residualAngleSquared().getReal());
    double lead = CardanMotion.largestLead(number(residual)).getReal();
    double larger =
        Math.toRadians(Math.max(joints.outputAngle().getReal(), joints.pinionAngle().getReal()));
    double fourthOrder = Math.toDegrees(Math.pow(larger, 4)) / 8;
    assertThat(swing(output, pinion)).isCloseTo(lead, Offset.offset(fourthOrder + 1e-9));
  }

  private static Vector3D axis(double side, double plan) {
    return new Vector3D(-1, Math.tan(Math.toRadians(plan)), Math.tan(Math.toRadians(side)))
        .normalize();
  }

  /** Amplitude (degrees) of output less input at twice the speed, the shaft's forks in line. */
  private static double swing(Vector3D output, Vector3D pinion) {
    Vector3D shaft = new Vector3D(-1, 0, 0);
    Vector3D start = output.orthogonal();
    Vector3D across = Vector3D.crossProduct(output, start);
    Vector3D outStart = follow(follow(start, shaft), pinion);
    Vector3D outAcross = Vector3D.crossProduct(pinion, outStart);
    int steps = 360;
    double cosines = 0;
    double sines = 0;
    for (int i = 0; i < steps; i++) {
      double turn = 2 * Math.PI * i / steps;
      Vector3D fork = new Vector3D(Math.cos(turn), start, Math.sin(turn), across);
      Vector3D out = follow(follow(fork, shaft), pinion);
      double outTurn = Math.atan2(out.dotProduct(outAcross), out.dotProduct(outStart));
      double lead = Math.IEEEremainder(outTurn - turn, 2 * Math.PI);
      cosines += lead * Math.cos(2 * turn);
      sines += lead * Math.sin(2 * turn);
    }
    return Math.toDegrees(2 * Math.hypot(cosines, sines) / steps);
  }

  /** The driven fork: across its own shaft and across the driving fork. */
  private static Vector3D follow(Vector3D driving, Vector3D drivenShaft) {
    return Vector3D.crossProduct(drivenShaft, driving).normalize();
  }

  /** Worked by hand: a level shaft of 1000 mm whose axle drops 50 mm and goes back 10. */
  @Test
  void slipIsTheChangeOfTheDistance() {
    ShaftJoints<Binary64> before =
        new ShaftJoints<>(point(0, 0, 0), point(1, 0, 0), point(-1000, 0, 0), point(1, 0, 0));
    ShaftJoints<Binary64> after =
        new ShaftJoints<>(point(0, 0, 0), point(1, 0, 0), point(-1010, 0, -50), point(1, 0, 0));
    assertThat(before.slip(after).getReal()).isCloseTo(Math.hypot(1010, 50) - 1000, EXACT);
    assertThat(after.slip(before).getReal()).isNegative();
  }

  @Test
  void aStraightShaftHasNoAnglesAndNoResidual() {
    ShaftJoints<Gradient> straight =
        new ShaftJoints<>(vector(0, 0, 0), vector(1, 0, 0), vector(-900, 0, 0), vector(1, 0, 0));
    assertThat(straight.outputAngle().getValue()).isZero();
    assertThat(straight.residualAngleSquared().getValue()).isZero();
    assertThat(straight.outputAngle().getGradient()).containsOnly(0);
    assertThat(straight.residualAngleSquared().getGradient()).containsOnly(0);
  }

  private static FieldVector3D<Gradient> vector(double x, double y, double z) {
    return new FieldVector3D<>(
        Gradient.variable(3, 0, x), Gradient.variable(3, 1, y), Gradient.variable(3, 2, z));
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    double[] at = {20, 30, 610, -1, 0.02, -0.06, -950, 80, 480, 1, 0.01, 0.08};
    Slopes.agree(v -> joints(v).outputAngle(), at);
    Slopes.agree(v -> joints(v).pinionAngle(), at);
    Slopes.agree(v -> joints(v).length(), at);
    Slopes.agree(v -> joints(v).turnToAimPinion(), at);
    Slopes.agree(v -> joints(v).residualAngleSquared(), at);
  }

  private static ShaftJoints<Gradient> joints(Gradient[] v) {
    return new ShaftJoints<>(
        new FieldVector3D<>(v[0], v[1], v[2]),
        new FieldVector3D<>(v[3], v[4], v[5]),
        new FieldVector3D<>(v[6], v[7], v[8]),
        new FieldVector3D<>(v[9], v[10], v[11]));
  }

  @Test
  void aShaftOfNoLengthIsRefused() {
    assertThatThrownBy(
            () -> new ShaftJoints<>(point(1, 2, 3), point(1, 0, 0), point(1, 2, 3), point(1, 0, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("found shaft of length 0.0");
  }
}
