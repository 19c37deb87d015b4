package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static trammel.derive.DemoSheet.DAY;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.fact.GroundRoom;
import trammel.fact.RampAngle;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/** What is derived by itself is what the whole derivation has of it, to the last digit. */
class PartsOfTheFactsTest {
  private static List<String> told(List<Fact> facts, Predicate<Fact> which) {
    return facts.stream().filter(which).map(PartsOfTheFactsTest::told).toList();
  }

  private static String told(Fact fact) {
    if (fact instanceof GroundRoom room) {
      return room.subject() + room.point() + told(room.before()) + told(room.after());
    }
    if (fact instanceof RampAngle ramp) {
      return ramp.subject() + ramp.angle() + told(ramp.before()) + told(ramp.after());
    }
    FluidLoad load = (FluidLoad) fact;
    return load.subject() + told(load.pressureAfter()) + told(load.preferred());
  }

  private static String told(Quantity quantity) {
    return quantity.isKnown() ? " " + quantity.value() + " ± " + quantity.expanded() : " unknown";
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "skerrow-raised-mildly",
        "skerrow-raised-with-spacers",
        "stonecrop-raised",
        "cairnback-too-wide"
      })
  void aPartIsAsInTheWhole(String sheet) {
    Build build = DemoSheet.demo(sheet);
    List<Fact> whole = Derivation.facts(build, DAY);
    List<Fact> underbody = Ledgers.of(build, DAY).underbody();
    assertThat(underbody).isNotEmpty();
    assertThat(told(underbody, fact -> true))
        .isEqualTo(told(whole, fact -> fact instanceof GroundRoom || fact instanceof RampAngle));
    List<Fact> loads =
        Position.running().stream()
            .flatMap(position -> Ledgers.of(build, DAY).fluidLoad(position).stream())
            .map(Fact.class::cast)
            .toList();
    assertThat(told(loads, fact -> true)).isEqualTo(told(whole, FluidLoad.class::isInstance));
  }
}
