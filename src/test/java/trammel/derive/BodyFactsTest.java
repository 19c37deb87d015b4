package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.fact.BodyBlocks;
import trammel.fact.BodyCrossing;
import trammel.fact.Fact;
import trammel.quantity.Decision;

/** Blocks under the body against what ties it to the frame; sums worked out by hand. */
class BodyFactsTest {
  @TempDir private Path folder;

  private <T extends Fact> List<T> facts(String vehicle, String text, Class<T> type)
      throws IOException {
    return Derivation.facts(DemoSheet.of(folder, vehicle, text), DemoSheet.DAY).stream()
        .filter(type::isInstance)
        .map(type::cast)
        .toList();
  }

  /** Straps give 15 mm under blocks of 25; the fan has 18 and the kit's brackets add 25. */
  @Test
  void whatTheKitBringsCountsBesideTheSlack() throws IOException {
    List<BodyCrossing> all =
        facts("cairnback", "changes:\n  - { add: ST-CB-25, at: all }\n", BodyCrossing.class);
    assertThat(all)
        .extracting(BodyCrossing::crossing)
        .containsExactly(
            "steering-shaft",
            "shift-linkage",
            "filler-neck",
            "wires",
            "radiator-hoses",
            "fan",
            "bumpers");
    assertThat(all.get(3).left().value()).isCloseTo(-10, within(1e-9));
    assertThat(all.get(5).left().value()).isCloseTo(18, within(1e-9));
  }

  /** A profile that says nothing of the body leaves every question open. */
  @Test
  void whereNobodyHasLookedEverythingIsOpen() throws IOException {
    String text = "changes:\n  - { add: ST-SC-32, at: all }\n";
    assertThat(facts("stonecrop", text, BodyCrossing.class))
        .hasSize(8)
        .noneMatch(crossing -> crossing.left().isKnown());
    assertThat(facts("stonecrop", text, BodyBlocks.class))
        .singleElement()
        .returns(Decision.ABSENT, BodyBlocks::mountsAgree)
        .returns(Decision.MET, BodyBlocks::alone);
  }

  @Test
  void blocksThatAreThereAreNamed() throws IOException {
    String text =
        """
        as-found:
          fitted:
            - { part: ST-SC-32, at: all }
        changes:
          - { add: ST-CB-25, at: all }
        """;
    assertThat(facts("cairnback", text, BodyBlocks.class))
        .singleElement()
        .returns("ST-SC-32", BodyBlocks::beneath)
        .returns(Decision.NOT_MET, BodyBlocks::alone);
  }

  @Test
  void withoutNewBlocksNothingIsAsked() throws IOException {
    assertThat(
            facts(
                "cairnback",
                """
                as-found:
                  fitted:
                    - { part: ST-CB-25, at: all }
                changes:
                  - { add: HR-2656517, at: all }
                """,
                BodyCrossing.class))
        .isEmpty();
  }
}
