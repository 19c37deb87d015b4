package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.change;
import static trammel.geometry.Plain.number;
import static trammel.geometry.Plain.point;
import static trammel.geometry.Plain.unchanged;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** Own derivation; checked against a root finder that knows only the constant length. */
class DragLinkTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static final DragLink<Binary64> LINK =
      new DragLink<>(point(350, 380, 560), point(170, -480, 500), number(165));
  private static final PanhardBar<Binary64> BAR =
      new PanhardBar<>(point(150, 430, 575), point(140, -470, 520));

  @Property
  void steerIsWhatARootFinderFinds(
      @ForAll @DoubleRange(min = -120, max = 120) double lift,
      @ForAll @DoubleRange(min = -15, max = 15) double shift,
      @ForAll @DoubleRange(min = -10, max = 10) double longer,
      @ForAll @DoubleRange(min = -60, max = 60) double dropped) {
    double length = LINK.length().getReal() + longer;
    double expected =
        new BracketingNthOrderBrentSolver(1e-13, 1e-13, 1e-13, 5)
            .solve(
                200,
                (double steer) -> {
                  double fore = 170 - 165 + 165 * Math.cos(steer);
                  double left = -480 + shift + 165 * Math.sin(steer);
                  double up = 500 - lift;
                  return Math.sqrt(
                          (350 - fore) * (350 - fore)
                              + (380 - left) * (380 - left)
                              + (560 - dropped - up) * (560 - dropped - up))
                      - length;
                },
                -0.8,
                0.8);
    assertThat(
            LINK.steer(number(lift), number(shift), change(longer, -dropped, 0))
                .orElseThrow()
                .getReal())
        .isCloseTo(Math.toDegrees(expected), Offset.offset(1e-8));
  }

  /** A longer link from the left pushes an arm ahead of the axis to the right, and steers right. */
  @Test
  void aLongerLinkSteersByWhichEndOfTheArmItPushes() {
    LinkChange<Binary64> longer = change(10, 0, 0);
    double ahead = LINK.steer(number(0), number(0), longer).orElseThrow().getReal();
    assertThat(ahead).isCloseTo(-Math.toDegrees(10 / 165.0), Offset.offset(0.2));
    DragLink<Binary64> behind =
        new DragLink<>(point(-350, 380, 560), point(-170, -480, 500), number(-165));
    assertThat(behind.steer(number(0), number(0), longer).orElseThrow().getReal()).isPositive();
  }

  @Property
  void aLinkAlikeToTheBarDoesNotSteer(
      @ForAll @DoubleRange(min = 0, max = 120) double lift,
      @ForAll @DoubleRange(min = -100, max = 100) double travel) {
    DragLink<Binary64> alike =
        new DragLink<>(point(350, 400, 700), point(340, -500, 645), number(165));
    assertThat(
            alike
                .bumpSteer(number(lift), number(travel), unchanged(), BAR, unchanged())
                .orElseThrow()
                .getReal())
        .isCloseTo(0, EXACT);
    assertThat(alike.mismatch(number(lift), unchanged(), BAR, unchanged()).orElseThrow().getReal())
        .isCloseTo(0, EXACT);
  }

  @Property
  void atRideHeightTheAdjustedLinkHoldsStraight(
      @ForAll @DoubleRange(min = 0, max = 120) double lift) {
    assertThat(
            LINK.bumpSteer(number(lift), number(0), unchanged(), BAR, unchanged())
                .orElseThrow()
                .getReal())
        .isCloseTo(0, EXACT);
  }

  @Property
  void aMirroredLinkSteersTheOtherWay(
      @ForAll @DoubleRange(min = 0, max = 120) double lift,
      @ForAll @DoubleRange(min = -100, max = 100) double travel) {
    DragLink<Binary64> link =
        new DragLink<>(point(350, -380, 560), point(170, 480, 500), number(165));
    PanhardBar<Binary64> bar = new PanhardBar<>(point(150, -430, 575), point(140, 470, 520));
    double mirrored =
        link.bumpSteer(number(lift), number(travel), unchanged(), bar, unchanged())
            .orElseThrow()
            .getReal();
    assertThat(
            LINK.bumpSteer(number(lift), number(travel), unchanged(), BAR, unchanged())
                .orElseThrow()
                .getReal())
        .isCloseTo(-mirrored, EXACT);
  }

  /**
   * For small travel the arm's end moves by travel × (difference of the slopes): raising only the
   * bar's axle end parts the slopes, and bump steers by just that.
   */
  @Test
  void bumpSteerBeginsWithTheDifferenceOfTheSlopes() {
    DragLink<Binary64> across =
        new DragLink<>(point(170, 380, 560), point(170, -480, 500), number(165));
    LinkChange<Binary64> raised = change(0, 0, 50);
    double linkSlope =
        Math.tan(
            Math.toRadians(
                across
                    .inclination(
                        number(50), BAR.shift(number(50), raised).orElseThrow(), unchanged())
                    .getReal()));
    double barSlope = BAR.slope(number(50), raised).orElseThrow().getReal();
    double travel = 0.01;
    double expected = -Math.toDegrees((linkSlope - barSlope) * travel / 165);
    assertThat(
            across
                .bumpSteer(number(50), number(travel), unchanged(), BAR, raised)
                .orElseThrow()
                .getReal())
        .isCloseTo(expected, Offset.offset(Math.abs(expected) * 1e-3));
    assertThat(across.mismatch(number(50), unchanged(), BAR, raised).orElseThrow().getReal())
        .isPositive();
  }

  @Test
  void whatTheLinkDoesNotReachIsEmpty() {
    assertThat(LINK.steer(number(0), number(0), change(210, 0, 0))).isPresent();
    assertThat(LINK.steer(number(0), number(0), change(215, 0, 0))).isEmpty();
    assertThat(LINK.steer(number(0), number(-200), unchanged())).isEmpty();
  }

  @Test
  void aLinkThatDoesNotSteerIsRefused() {
    assertThatThrownBy(() -> new DragLink<>(point(0, 1, 0), point(0, 9, 0), number(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("steering arm of 0.0 mm");
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    double[] at = {350, 380, 560, 170, -480, 500, 165, 60, 4, 3, -25, 10};
    Slopes.agree(v -> link(v).steer(v[7], v[8], changed(v)).orElseThrow(), at);
    Slopes.agree(v -> link(v).inclination(v[7], v[8], changed(v)), at);
    Slopes.agree(v -> link(v).lengthThatCenters(v[7], v[8], changed(v)), at);
    Slopes.agree(
        v -> link(v).bumpSteer(v[7], v[10].add(70), changed(v), bar(v), changed(v)).orElseThrow(),
        at);
    Slopes.agree(v -> link(v).mismatch(v[7], changed(v), bar(v), changed(v)).orElseThrow(), at);
  }

  private static DragLink<Gradient> link(Gradient[] v) {
    return new DragLink<>(
        new FieldVector3D<>(v[0], v[1], v[2]), new FieldVector3D<>(v[3], v[4], v[5]), v[6]);
  }

  /** A bar that moves with the link's own points. */
  private static PanhardBar<Gradient> bar(Gradient[] v) {
    return new PanhardBar<>(
        new FieldVector3D<>(v[0].subtract(200), v[1].add(50), v[2].add(15)),
        new FieldVector3D<>(v[3].subtract(30), v[4].add(10), v[5].add(20)));
  }

  private static LinkChange<Gradient> changed(Gradient[] v) {
    return new LinkChange<>(v[9], v[10], v[11]);
  }
}
