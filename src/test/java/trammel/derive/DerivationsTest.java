package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.build.Build;
import trammel.build.Trial;
import trammel.fact.Fact;
import trammel.fact.HalfShaft;
import trammel.fact.ToeThread;

/** Builds derived one after another have the facts that each has alone (own derivation). */
final class DerivationsTest {
  private static final List<String> SHEETS =
      List.of(
          "skerrow-raised-with-arms",
          "skerrow-raised-mildly",
          "skerrow-rub-at-lock",
          "skerrow-worn-fronts",
          "skerrow-raised-with-spacers",
          "stonecrop-raised",
          "linnhope-taller");

  @TempDir private Path folder;

  @Test
  void whatIsSharedChangesNoFact() {
    List<Build> builds = new ArrayList<>();
    for (String sheet : SHEETS) {
      Build build = DemoSheet.demo(sheet);
      builds.add(build);
      builds.add(build.trying(new Trial(12, 0, 0, 0, 0, 0, 0)));
      builds.add(build.trying(new Trial(0, 0, -6, 0, 0, 0, 0)));
      builds.add(build.trying(new Trial(0, 0, 0, 0, 3, 4, 0)));
    }
    // Fixed, so that a failure comes again: no order may matter.
    Random random = new Random(20261126);
    Derivations derivations = new Derivations(DemoSheet.DAY);
    for (int i = 0; i < 2 * builds.size(); i++) {
      Build build = builds.get(random.nextInt(builds.size()));
      assertThat(told(derivations.facts(build)))
          .isEqualTo(told(Derivation.facts(build, DemoSheet.DAY)));
    }
  }

  @Test
  void factsWorkedOutSideBySideAreThoseWorkedOutOneByOne() {
    for (String sheet : SHEETS) {
      Derivation alone = new Derivation(DemoSheet.demo(sheet), DemoSheet.DAY);
      alone.oneByOne();
      // Often, since what threads share would not fail each time.
      for (int i = 0; i < 25; i++) {
        Derivation beside = new Derivation(DemoSheet.demo(sheet), DemoSheet.DAY);
        List<Fact> heard = new ArrayList<>();
        beside.sideBySide(heard::addAll);
        assertThat(told(beside.facts)).isEqualTo(told(alone.facts));
        assertThat(heard).isEqualTo(beside.facts);
      }
    }
  }

  private static List<String> told(List<Fact> facts) {
    return facts.stream().map(Fact::toString).toList();
  }

  @Test
  void sidesThatDifferInToeAloneTurnTheirTieRodsEachAsFar() throws IOException {
    assertThat(turns("0.10", "0.60").get(1)).isEqualTo(turns("0.60", "0.60").get(1));
    assertThat(turns("0.10", "0.60").get(0)).isNotEqualTo(turns("0.10", "0.60").get(1));
  }

  @Test
  void shaftsOfSidesThatDifferAreBentEachByItsOwnLinkage() throws IOException {
    assertThat(bends("0.60", "0.60").get(0)).isEqualTo(bends("0.60", "0.60").get(1));
    assertThat(bends("0.10", "0.60").get(1)).isEqualTo(bends("0.60", "0.60").get(1));
    assertThat(bends("0.10", "0.60").get(0)).isEqualTo(bends("0.10", "0.10").get(0));
    assertThat(bends("0.10", "0.60").get(0)).isNotEqualTo(bends("0.10", "0.60").get(1));
  }

  /** How far the outer joints of the left and the right shaft are bent at most. */
  private List<String> bends(String left, String right) throws IOException {
    return DemoSheet.facts(raised(left, right), HalfShaft.class).stream()
        .map(shaft -> shaft.outer().toString())
        .toList();
  }

  /** What the left and the right tie rod are turned by. */
  private List<String> turns(String left, String right) throws IOException {
    return DemoSheet.facts(raised(left, right), ToeThread.class).stream()
        .map(thread -> thread.change().toString())
        .toList();
  }

  /** Raised by 20 mm, with a toe of each side on the printout (degrees). */
  private Build raised(String left, String right) throws IOException {
    String printout =
        "    - { at: front-%s, height: 512 mm, camber: 0.1°, caster: 3°, toe: %s°,"
            + " state: as-found }%n";
    return DemoSheet.of(
        folder,
        "skerrow",
        "changes:\n  - { raise: 20 mm, at: front }\nmeasurements:\n  alignment:\n"
            + printout.formatted("left", left)
            + printout.formatted("right", right));
  }
}
