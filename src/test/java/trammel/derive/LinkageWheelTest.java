package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.fact.ArmRoom;

/** What an arm may meet on its way. */
class LinkageWheelTest {
  /** An arm that comes nearest where it hangs comes nearer still if the wheel hangs lower. */
  @Test
  void aGapAtAnEndOfTheTravelIsAsUncertainAsTheEnd() {
    List<ArmRoom> rooms =
        DemoSheet.facts(DemoSheet.demo("skerrow-raised-with-arms"), ArmRoom.class);
    assertThat(rooms).extracting(ArmRoom::pose).contains("hanging", "on the bump stop");
    for (ArmRoom room : rooms) {
      List<String> inputs =
          room.gap().uncertainInputs().stream()
              .filter(input -> Math.abs(room.gap().contribution(input)) > 0.1)
              .map(input -> input.path())
              .toList();
      assertThat(inputs.stream().anyMatch(path -> path.contains("droop-travel")))
          .as(room.subject() + " " + inputs)
          .isEqualTo(room.pose().equals("hanging"));
      assertThat(inputs.stream().anyMatch(path -> path.contains("bump-travel")))
          .as(room.subject() + " " + inputs)
          .isEqualTo(room.pose().equals("on the bump stop"));
    }
  }
}
