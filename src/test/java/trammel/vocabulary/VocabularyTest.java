package trammel.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.fact.Clearance;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.subject.Station;
import trammel.subject.Subject;

class VocabularyTest {
  private static final Clearance GAP =
      new Clearance(
          Subject.parse("front-left:arch"),
          Standing.WORSE_OR_NEW,
          java.util.List.of("T-1"),
          Station.ARCH,
          "crown",
          "fender lip",
          Constants.mm(7),
          Constants.mm(-3),
          "at rest",
          "",
          Constants.number(1),
          Constants.number(1));

  @Test
  void everyFactHasItsNameAndNoTwoHaveOne() {
    assertThat(Vocabulary.all())
        .hasSize(Fact.class.getPermittedSubclasses().length)
        .extracting(FactType::name)
        .contains("clearance", "tire-on-rim", "vehicle", "part-on-vehicle")
        .doesNotHaveDuplicates();
  }

  @Test
  void aComponentKnowsWhatItHoldsAndReadsIt() {
    Component gap = Vocabulary.component("clearance.gap").orElseThrow();
    assertThat(gap.type()).isEqualTo(ValueType.QUANTITY);
    assertThat(gap.dimension()).isEqualTo(Dimension.LENGTH);
    assertThat(gap.of(GAP)).isSameAs(GAP.gap());
    Component station = Vocabulary.component("clearance.station").orElseThrow();
    assertThat(station.choices()).contains("rear-mount", "arch");
    assertThat(station.of(GAP)).isEqualTo(Station.ARCH);
  }

  @ParameterizedTest
  @CsvSource({
    "clearance.gaap, clearance.gap",
    "clearence.gap, clearance.gap",
    "clearance.stations, clearance.station",
  })
  void aNameThatIsNearIsOffered(String found, String meant) {
    assertThat(Vocabulary.component(found)).isEmpty();
    assertThat(Vocabulary.nearestComponent(found)).contains(meant);
  }

  @Test
  void versionsAreOrderedAsNumbers() {
    assertThat(Version.parse("0.10")).isGreaterThan(Version.parse("0.9"));
    assertThat(Version.parse("1.0")).isGreaterThan(Version.parse("0.99"));
    assertThat(Vocabulary.version()).isGreaterThanOrEqualTo(Version.parse("0.3"));
  }
}
