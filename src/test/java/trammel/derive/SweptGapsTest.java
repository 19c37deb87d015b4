package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.facts;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.fact.Clearance;
import trammel.fact.ToeThread;

/** Gaps of a swept tire at surveyed stations. */
class SweptGapsTest {
  /** Of the profile's points: the tie rod's end from the steering axis (mm). */
  private static final double STEERING_ARM = 134;

  /** The tire's edge from the steering axis, radius and half width and scrub together (mm). */
  private static final double FARTHEST_EDGE = 480;

  private static final double LOCK = 38;

  @TempDir private Path folder;

  private static Map<String, Clearance> front(Build build) {
    Map<String, Clearance> front = new TreeMap<>();
    facts(build, Clearance.class).stream()
        .filter(fact -> fact.subject().where().startsWith("front"))
        .forEach(fact -> front.put(fact.subject().toString(), fact));
    assertThat(front).hasSizeGreaterThan(8);
    return front;
  }

  /**
   * Common practice: the body mount behind a front wheel is met with the wheel steered to its own
   * side, and it is met before the lock where a bump lifts the wheel.
   */
  @ParameterizedTest
  @CsvSource({"front-left:rear-mount, left", "front-right:rear-mount, right"})
  void theMountIsMetTowardTheWheelsOwnSideAndInBump(String station, String side) {
    Clearance gap = front(DemoSheet.demo("skerrow-rub-at-lock")).get(station);
    assertThat(gap).isNotNull();
    assertThat(gap.pose()).contains(side).containsAnyOf("mm of bump", "on the bump stop");
    assertThat(gap.gap().value()).isLessThan(10);
    assertThat(gap.change().value()).isNegative();
  }

  /** The liner ahead of the wheel is met the other way. Common practice. */
  @ParameterizedTest
  @CsvSource({"front-left:liner, right", "front-right:liner, left"})
  void theLinerIsMetTowardTheOtherSide(String station, String side) {
    assertThat(front(DemoSheet.demo("skerrow-rub-at-lock")).get(station).pose()).contains(side);
  }

  @Test
  void leftAndRightHaveTheSameGaps() {
    Map<String, Clearance> front = front(DemoSheet.demo("skerrow-rub-at-lock"));
    front.forEach(
        (station, gap) -> {
          Clearance other = front.get(station.replace("front-left", "front-right"));
          assertThat(other.gap().value()).isCloseTo(gap.gap().value(), within(1e-6));
        });
  }

  /**
   * A lift moves the wheel's rest within its travel, whose ends stay: what the tire sweeps stays.
   * Only the tie rod, set again for toe at the new height, turns it a little. Own derivation: a rod
   * longer by e turns the wheel by e over its steering arm, at lock by up to 1/cos of the lock
   * more, and its farthest edge goes along.
   */
  @ParameterizedTest
  @CsvSource({"10", "25", "50"})
  void aLiftAloneChangesNothingButWhatTheTieRodTurns(double lift) throws IOException {
    Build still = DemoSheet.of(folder, "skerrow", DemoSheet.raised("seized", 0.001, 0.001, ""));
    Build lifted = DemoSheet.of(folder, "skerrow", DemoSheet.raised("seized", lift, lift, ""));
    double longer = Math.abs(tieRod(lifted) - tieRod(still));
    double turned = longer / (STEERING_ARM * Math.cos(Math.toRadians(LOCK)));
    Map<String, Clearance> before = front(still);
    front(lifted)
        .forEach(
            (station, gap) ->
                assertThat(gap.gap().value())
                    .as(station)
                    .isCloseTo(
                        before.get(station).gap().value(), within(turned * FARTHEST_EDGE + 0.05)));
    assertThat(turned * FARTHEST_EDGE).isLessThan(lift / 10);
  }

  /** What is told as the change is what the gap changes by, adjusters and toe set again too. */
  @Test
  void theChangeOfAGapIsItsChange() throws IOException {
    Map<String, Clearance> before =
        front(DemoSheet.of(folder, "skerrow", DemoSheet.raised("seized", 0.001, 0.001, "")));
    front(DemoSheet.of(folder, "skerrow", DemoSheet.raised("free", 55, 55, "")))
        .forEach(
            (station, gap) ->
                assertThat(gap.change().value())
                    .as(station)
                    .isCloseTo(gap.gap().value() - before.get(station).gap().value(), within(0.3)));
  }

  private static double tieRod(Build build) {
    return facts(build, ToeThread.class).get(0).change().value();
  }

  /** 15 mm less offset: outboard edges lose room, inboard ones gain it, by about as much. */
  @Test
  void lessOffsetTakesRoomOutsideAndGivesItInside() throws IOException {
    String nuts = "  - { add: WN-1415-C, at: all }\n";
    Map<String, Clearance> gaps =
        front(
            DemoSheet.of(
                folder, "skerrow", "changes:\n  - { add: HU-1785-15C, at: all }\n" + nuts));
    assertThat(gaps.get("front-left:rear-mount").change().value()).isNegative();
    assertThat(gaps.get("front-left:inner-side").change().value()).isPositive();
  }

  /** A body lift takes fender and bumper up with it, and leaves what is on the frame. */
  @Test
  void aBodyLiftGivesRoomWhereTheBodyIsInTheWay() throws IOException {
    Map<String, Clearance> gaps =
        front(DemoSheet.of(folder, "skerrow", "changes:\n  - { add: ST-CB-25, at: all }\n"));
    assertThat(gaps.get("front-left:arch").change().value()).isGreaterThan(10);
    assertThat(gaps.get("front-left:rear-mount").change().value()).isZero();
  }

  /**
   * A taller stop ends the way up sooner: what was met on the stop has more room, and more of it is
   * told as gained; what was met elsewhere stays. Own derivation.
   */
  @Test
  void aTallerStopGivesRoomToWhatIsMetOnTheStopAndToNothingElse() throws IOException {
    Map<String, Clearance> before = front(DemoSheet.of(folder, "skerrow", STILL));
    Map<String, Clearance> after =
        front(DemoSheet.of(folder, "skerrow", STILL + "  - { add: LB-BS-F20, at: front }\n"));
    int onTheStop = 0;
    for (Map.Entry<String, Clearance> station : after.entrySet()) {
      Clearance then = before.get(station.getKey());
      Clearance now = station.getValue();
      double gained = now.gap().value() - then.gap().value();
      if (then.pose().contains("on the bump stop")) {
        onTheStop++;
        assertThat(gained).as(station.getKey()).isGreaterThan(0.5);
        assertThat(now.change().value() - then.change().value())
            .as(station.getKey())
            .isCloseTo(gained, within(0.1));
      } else {
        assertThat(gained).as(station.getKey()).isBetween(-0.1, 0.1);
      }
    }
    assertThat(onTheStop).isPositive();
  }

  /**
   * A stop that is 20 mm taller, at a motion ratio of 0.62, takes 32.26 mm of the way up: the gaps
   * are those of a vehicle that was built so. Own derivation.
   */
  @Test
  void aTallerStopSweepsWhatAVehicleWithAsMuchLessTravelSweeps() throws IOException {
    Map<String, Clearance> taller =
        front(DemoSheet.of(folder, "skerrow", STILL + "  - { add: LB-BS-F20, at: front }\n"));
    Map<String, Clearance> built =
        front(
            DemoSheet.altered(
                folder,
                "skerrow",
                List.of("bump-travel: 82 mm"),
                List.of("bump-travel: 49.742 mm"),
                STILL));
    taller.forEach(
        (station, gap) ->
            assertThat(gap.gap().value())
                .as(station)
                .isCloseTo(built.get(station).gap().value(), within(0.01)));
  }

  /** As good as nothing, so that every gap is told. */
  private static final String STILL = DemoSheet.raised("seized", 0.001, 0.001, "");
}
