package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.fact.ClaimedLift;
import trammel.quantity.Decision;

/**
 * A claimed lift counts from a height that book and load explain. In the book the invented Gimmer
 * stands at 445 mm in front, on leaves; the Cairnback's coils are balanced and go by no claim.
 */
class ClaimedLiftTest {
  @TempDir private Path folder;

  private ClaimedLift claim(String vehicle, String part, String measured) throws IOException {
    return DemoSheet.facts(
            DemoSheet.of(
                folder, vehicle, "changes:\n  - { add: " + part + ", at: front }\n" + measured),
            ClaimedLift.class)
        .get(0);
  }

  private static String heights(String left, String right) {
    return "measurements:\n  heights:\n    - { at: front-left, height: "
        + left
        + ", state: as-found }\n    - { at: front-right, height: "
        + right
        + ", state: as-found }\n";
  }

  @ParameterizedTest
  @CsvSource({
    "gimmer, CM-GM-F50, 415 mm, 416 mm, ABSENT",
    "gimmer, CM-GM-F50, 445 mm, 415 mm, ABSENT",
    "gimmer, CM-GM-F50, 475 mm, 475 mm, ABSENT",
    "gimmer, CM-GM-F50, 446 mm, 443 mm, MET",
    "gimmer, CM-GM-F40U, 415 mm, 416 mm, ABSENT",
    "cairnback, CM-CB-F45, 470 mm, 470 mm, MET"
  })
  void aHeightOffTheBookLeavesTheClaimOpen(
      String vehicle, String part, String left, String right, Decision expected)
      throws IOException {
    assertThat(claim(vehicle, part, heights(left, right)).startExplained()).isEqualTo(expected);
  }

  @Test
  void whatNobodyHasMeasuredIsTakenForTheBook() throws IOException {
    assertThat(claim("gimmer", "CM-GM-F50", "").startExplained()).isEqualTo(Decision.MET);
  }
}
