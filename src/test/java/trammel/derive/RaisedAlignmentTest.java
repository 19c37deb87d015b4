package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.DAY;
import static trammel.derive.DemoSheet.alignment;
import static trammel.derive.DemoSheet.facts;
import static trammel.derive.DemoSheet.raised;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.fact.AdjusterState;
import trammel.fact.Alignment;
import trammel.fact.LinkageReach;
import trammel.fact.SideToSide;
import trammel.fact.Standing;
import trammel.quantity.Decision;
import trammel.subject.Axle;
import trammel.subject.Position;

/** A double-wishbone front with surveyed hard points, raised by its height control. */
class RaisedAlignmentTest {
  private static final double INCH = 25.4;
  private static final String ARMS = "  - { add: LB-UA-SK-S, at: front }\n";

  @TempDir private Path folder;

  private Build skerrow(String sheet) throws IOException {
    return DemoSheet.of(folder, "skerrow", sheet);
  }

  /** Common practice, no source: up to about 1¼ in an alignment is all that it takes. */
  @ParameterizedTest
  @ValueSource(doubles = {25, 32})
  void aMildRaiseNeedsAnAlignmentAndNothingMore(double raise) throws IOException {
    Build build = skerrow(raised("free", raise, raise, ""));
    for (Position position : Position.of(Axle.FRONT)) {
      Alignment wheel = alignment(build, position);
      assertThat(wheel.depth()).isEqualTo("surveyed");
      assertThat(wheel.camberReserve().value()).isPositive();
      assertThat(wheel.casterReserve().value()).isPositive();
      assertThat(wheel.camber().value()).isBetween(-0.75, 0.75);
      assertThat(wheel.caster().value()).isBetween(2.5, 4.0);
    }
    assertThat(facts(build, LinkageReach.class))
        .isNotEmpty()
        .allSatisfy(reach -> assertThat(reach.reaches()).isEqualTo(Decision.MET));
  }

  /** Common practice: beyond two inches stock arms end, and arms made for it bring it home. */
  @Test
  void aTallRaiseDoesNotComeHomeWithStockArmsAndDoesWithArmsMadeForIt() throws IOException {
    Alignment stock = alignment(skerrow(raised("free", 55, 55, "")), Position.FRONT_LEFT);
    assertThat(Math.min(stock.camberReserve().value(), stock.casterReserve().value())).isNegative();
    Alignment arms = alignment(skerrow(raised("free", 55, 55, ARMS)), Position.FRONT_LEFT);
    assertThat(Math.min(arms.camberReserve().value(), arms.casterReserve().value())).isPositive();
  }

  /** Common practice: such an arm is told to give 2 to 2.5° of caster, and leans the wheel in. */
  @Test
  void theArmAtRestTurnsTheWheelAsItsSellerSays() throws IOException {
    Alignment arm = alignment(skerrow(raised("seized", 0, 0, ARMS)), Position.FRONT_LEFT);
    assertThat(arm.camber().value() - 0.15).isCloseTo(-1.5, within(0.3));
    assertThat(arm.caster().value() - 3).isBetween(2.0, 2.5);
  }

  /**
   * Geometry.md, section 2: a maker's manual 0.53° of caster an inch, a truck's points 0.80 to
   * 0.82° and +0.53° of camber in the first inch (own), an invented corner 0.46° and +0.57° (own);
   * a later inch brings less camber than the first.
   */
  @Test
  void casterFallsAndCamberRisesByTheInchAsElsewhere() throws IOException {
    double camber = 0.15;
    double caster = 3;
    double camberGained = Double.POSITIVE_INFINITY;
    for (int inch = 1; inch <= 2; inch++) {
      Alignment wheel =
          alignment(skerrow(raised("seized", inch * INCH, inch * INCH, "")), Position.FRONT_LEFT);
      assertThat(caster - wheel.caster().value()).isBetween(0.4, 0.9);
      assertThat(wheel.camber().value() - camber).isLessThan(camberGained);
      camberGained = wheel.camber().value() - camber;
      if (inch == 1) {
        assertThat(camberGained).isBetween(0.3, 0.7);
      }
      camber = wheel.camber().value();
      caster = wheel.caster().value();
    }
  }

  @ParameterizedTest
  @CsvSource({"1, ''", "20, ''", "40, ''", "60, ARMS"})
  void leftAndRightOfOneStateAgree(double raise, String more) throws IOException {
    Build build = skerrow(raised("free", raise, raise, more.replace("ARMS", ARMS)));
    Alignment left = alignment(build, Position.FRONT_LEFT);
    Alignment right = alignment(build, Position.FRONT_RIGHT);
    assertThat(right.camber().value()).isEqualTo(left.camber().value());
    assertThat(right.caster().value()).isEqualTo(left.caster().value());
    assertThat(right.setting()).isEqualTo(left.setting());
    List<SideToSide> sides = facts(build, SideToSide.class);
    assertThat(sides).hasSize(1);
    assertThat(sides.get(0).camber().value()).isZero();
    assertThat(sides.get(0).caster().value()).isZero();
  }

  @Test
  void seizedAdjustersLeaveOnePoint() throws IOException {
    assertThat(outline("free")).hasSizeGreaterThan(4);
    assertThat(outline("seized")).hasSize(1);
    assertThat(outline("absent")).hasSize(1);
    Alignment stuck = alignment(skerrow(raised("seized", 40, 40, "")), Position.FRONT_LEFT);
    assertThat(stuck.setting()).isEqualTo("nothing can be set");
    assertThat(stuck.casterReserve().value()).isCloseTo(stuck.caster().value() - 2.5, within(1e-9));
  }

  private List<?> outline(String adjusters) throws IOException {
    return new Derivation(skerrow(raised(adjusters, 40, 40, "")), DAY)
        .corners(Axle.FRONT)
        .solve(Position.FRONT_LEFT)
        .solved()
        .orElseThrow()
        .outline();
  }

  @Test
  void nobodyAsksForAdjustersWhereNothingMustBeTurned() throws IOException {
    assertThat(facts(skerrow(raised("", 3, 3, "")), AdjusterState.class)).isEmpty();
    for (String state : List.of("", "unknown")) {
      List<AdjusterState> asked = facts(skerrow(raised(state, 35, 35, "")), AdjusterState.class);
      assertThat(asked).hasSize(1);
      assertThat(asked.get(0).free()).isEqualTo(Decision.ABSENT);
      assertThat(asked.get(0).fitted()).isEqualTo(Decision.MET);
    }
    assertThat(facts(skerrow(raised("free", 35, 35, "")), AdjusterState.class).get(0).free())
        .isEqualTo(Decision.MET);
    assertThat(facts(skerrow(raised("seized", 35, 35, "")), AdjusterState.class).get(0).free())
        .isEqualTo(Decision.NOT_MET);
    assertThat(facts(skerrow(raised("absent", 35, 35, "")), AdjusterState.class).get(0).fitted())
        .isEqualTo(Decision.NOT_MET);
  }

  /** Own derivation: the linkage adds its change to what the rack showed, whatever that was. */
  @Test
  void aPrintoutAsFoundOutranksTheProfile() throws IOException {
    String printout =
        """
        measurements:
          alignment:
            - at: front-left
              state: as-found
              height: 512 mm ± 1 mm
              camber: -0.4° ± 0.05°
              caster: 3.6° ± 0.1°
              toe: 0.08°
        """;
    String sheet = raised("seized", 20, 20, "");
    Alignment book = alignment(skerrow(sheet), Position.FRONT_LEFT);
    Build shown = skerrow(sheet + printout);
    Alignment left = alignment(shown, Position.FRONT_LEFT);
    assertThat(left.camber().value() - book.camber().value()).isCloseTo(-0.55, within(1e-6));
    assertThat(left.caster().value() - book.caster().value()).isCloseTo(0.6, within(1e-6));
    Alignment right = alignment(shown, Position.FRONT_RIGHT);
    assertThat(right.camber().value()).isCloseTo(book.camber().value(), within(1e-9));
    SideToSide sides = facts(shown, SideToSide.class).get(0);
    assertThat(sides.camber().value()).isCloseTo(0.55, within(1e-6));
    assertThat(sides.caster().value()).isCloseTo(0.6, within(1e-6));
  }

  /** A printout taken with the wheel hanging 25 mm lower than proposed starts from there. */
  @Test
  void aPrintoutCountsFromTheHeightItWasTakenAt() throws IOException {
    Alignment raisedBy20 = alignment(skerrow(raised("seized", 20, 20, "")), Position.FRONT_LEFT);
    String printout =
        String.format(
            java.util.Locale.ROOT,
            """
            measurements:
              alignment:
                - { at: front-left, state: as-found, height: 532 mm, camber: %.6f°,
                    caster: %.6f°, toe: 0.08° }
            """,
            raisedBy20.camber().value(),
            raisedBy20.caster().value());
    Alignment again = alignment(skerrow(raised("seized", 20, 20, printout)), Position.FRONT_LEFT);
    assertThat(again.camber().value()).isCloseTo(raisedBy20.camber().value(), within(1e-4));
    assertThat(again.caster().value()).isCloseTo(raisedBy20.caster().value(), within(1e-4));
  }

  @Test
  void anAlignmentIsOfTheChangesOnlyWhereTheyTouchIt() throws IOException {
    assertThat(alignment(skerrow(raised("free", 10, 0, "")), Position.FRONT_LEFT).standing())
        .isEqualTo(Standing.WORSE_OR_NEW);
    assertThat(facts(skerrow(raised("free", 0, 10, "")), Alignment.class)).isEmpty();
  }
}
