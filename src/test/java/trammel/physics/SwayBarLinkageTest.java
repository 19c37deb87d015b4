package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.junit.jupiter.api.Test;
import trammel.physics.SwayBarLinkage.Closed;
import trammel.physics.SwayBarLinkage.InLine;
import trammel.physics.SwayBarLinkage.Partials;
import trammel.physics.SwayBarLinkage.TurningPoint;
import trammel.physics.SwayBarLinkage.Unreachable;

/** Own numbers by hand and by bisection: nothing published was found. */
class SwayBarLinkageTest {
  private static final SwayBarLinkage LEVEL = SwayBarLinkage.found(240, 0, 180, 0);
  private static final SwayBarLinkage LEANING = SwayBarLinkage.found(240, -8, 180, 12);

  @Test
  void bookHeightIsAsMeasured() {
    Closed book = closed(LEANING, 0);
    assertThat(book.armAngle()).isCloseTo(-8, Offset.offset(1e-9));
    assertThat(book.linkAngle()).isCloseTo(12 + 8, Offset.offset(1e-9));
  }

  /** The arm's angle at which its end is a link's length from the lower end, by bisection. */
  @Test
  void theLinkKeepsItsLength() {
    for (double travel = -100; travel <= 110; travel += 10) {
      double arm = Math.toRadians(-8);
      double out = 240 * Math.cos(arm) + 180 * Math.sin(Math.toRadians(12));
      double up = 240 * Math.sin(arm) - 180 * Math.cos(Math.toRadians(12)) + travel;
      DoubleUnaryOperator excess =
          angle -> Math.hypot(out - 240 * Math.cos(angle), up - 240 * Math.sin(angle)) - 180;
      double found =
          new BisectionSolver(1e-13)
              .solve(200, excess::applyAsDouble, Math.atan2(up, out), Math.atan2(up, out) + 1.5);
      Closed swing = closed(LEANING, travel);
      assertThat(swing.armAngle()).isCloseTo(Math.toDegrees(found), Offset.offset(1e-9));
      double linkAlongArm =
          ((out - 240 * Math.cos(found)) * Math.cos(found)
                  + (up - 240 * Math.sin(found)) * Math.sin(found))
              / 180;
      assertThat(Math.sin(Math.toRadians(swing.linkAngle())))
          .isCloseTo(linkAlongArm, Offset.offset(1e-9));
    }
  }

  /** Common practice: links longer by the lift keep the arm as it was. */
  @Test
  void aLinkLongerByTheLiftKeepsTheArmWhereItWas() {
    Closed lifted = closed(LEVEL.withLink(230), -50);
    assertThat(lifted.armAngle()).isCloseTo(0, Offset.offset(1e-9));
    assertThat(lifted.linkAngle()).isCloseTo(0, Offset.offset(1e-9));
    assertThat(closed(LEVEL, -50).armAngle()).isLessThan(-10);
  }

  /** By hand: lower end 240 out; stretched at 420 from the bar, folded at 60. */
  @Test
  void turningPointsAreLocated() {
    double drop = Math.sqrt(420 * 420 - 240 * 240);
    TurningPoint stretched = LEVEL.turningPoint(0, -200).orElseThrow();
    assertThat(stretched.inLine()).isEqualTo(InLine.STRETCHED);
    assertThat(stretched.travel()).isCloseTo(180 - drop, Offset.offset(1e-9));
    assertThat(LEVEL.turningPoint(0, -150)).isEmpty();
    Unreachable beyond = (Unreachable) LEVEL.at(-200);
    assertThat(beyond.inLine()).isEqualTo(InLine.STRETCHED);
    assertThat(beyond.missing()).isCloseTo(Math.hypot(240, 380) - 420, Offset.offset(1e-9));
    assertThat(closed(LEVEL, stretched.travel() + 1e-7).linkAngle())
        .isCloseTo(90, Offset.offset(0.01));
    assertThat(LEVEL.turningPoint(-200, 0).orElseThrow().travel()).isEqualTo(-200);
  }

  @Test
  void aLinkThatFoldsIsLocatedThoughItCouldCloseBeyond() {
    SwayBarLinkage inward = SwayBarLinkage.found(240, 0, 260, -60);
    double out = 240 - 260 * Math.sin(Math.toRadians(60));
    double up = -260 * Math.cos(Math.toRadians(60));
    double half = Math.sqrt(20 * 20 - out * out);
    TurningPoint folded = inward.turningPoint(0, 300).orElseThrow();
    assertThat(folded.inLine()).isEqualTo(InLine.FOLDED);
    assertThat(folded.travel()).isCloseTo(-half - up, Offset.offset(1e-9));
    assertThat(((Unreachable) inward.at(-up)).missing())
        .isCloseTo(20 - Math.abs(out), Offset.offset(1e-9));
    assertThat(inward.at(300)).isInstanceOf(Closed.class);
  }

  @Test
  void anglesMoveWithTheirInputsAsStated() {
    SwayBarLinkage base = new SwayBarLinkage(240, -8, 180, 12, 205);
    Closed at = closed(base, -60);
    assertPartials(Closed::armAngle, at.ofArmAngle());
    assertPartials(Closed::linkAngle, at.ofLinkAngle());
  }

  private static void assertPartials(ToDoubleFunction<Closed> angle, Partials stated) {
    assertPartial(angle, z -> closed(240, -8, 180, 12, 205, z), -60, stated.perTravel());
    assertPartial(angle, a -> closed(a, -8, 180, 12, 205, -60), 240, stated.perArmLength());
    assertPartial(angle, a -> closed(240, a, 180, 12, 205, -60), -8, stated.perArmAngle());
    assertPartial(angle, l -> closed(240, -8, l, 12, 205, -60), 180, stated.perBookLink());
    assertPartial(angle, l -> closed(240, -8, 180, l, 205, -60), 12, stated.perLean());
    assertPartial(angle, l -> closed(240, -8, 180, 12, l, -60), 205, stated.perLink());
  }

  private static void assertPartial(
      ToDoubleFunction<Closed> angle, DoubleFunction<Closed> linkage, double at, double stated) {
    Partial.assertPartial(x -> angle.applyAsDouble(linkage.apply(x)), at, stated);
  }

  @Test
  void linkagesThatCannotBeAreRefused() {
    assertThatThrownBy(() -> SwayBarLinkage.found(0, 0, 180, 0)).hasMessageContaining("arm");
    assertThatThrownBy(() -> SwayBarLinkage.found(240, 0, 180, 90)).hasMessageContaining("lean");
  }

  private static Closed closed(
      double arm, double angle, double book, double lean, double link, double travel) {
    return closed(new SwayBarLinkage(arm, angle, book, lean, link), travel);
  }

  private static Closed closed(SwayBarLinkage linkage, double travel) {
    return (Closed) linkage.at(travel);
  }
}
