package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.catalog.PartKind;
import trammel.fact.Clearance;
import trammel.fact.RideHeight;

/** Sheets are read as they are meant, and every mistake is told at its place. */
class BooksTest {
  private static final String DEMAND = "{ value: clearance.gap, at-least: 12 mm }";
  private static final String MUD =
      """
      rule: clearance.mud-behind-front
      title: Twelve millimeters stay free behind the front wheel
      kind: caution
      says: "{value} is left at the {station}; mud takes more than that."
      reason: Mud packs.
      source: "common practice: nine vehicles of ours"
      since: 1.0
      about: clearance
      where: { value: clearance.station, is: rear-mount }
      demands: { value: clearance.gap, at-least: 12 mm }
      """
          + TestBook.cases("clearance: { station: rear-mount, gap: 20 mm }");
  private static final String SAYS =
      "\"{value} is left at the {station}; mud takes more than that.\"";

  private static SheetRule only(String rule) {
    return TestBook.read(TestBook.ofRule(rule)).get(0).rules().get(0);
  }

  private static SheetRule demanding(String demand) {
    return only(MUD.replace("demands: " + DEMAND, demand).replace(SAYS, "Mud."));
  }

  @Test
  void aRuleIsWhatItsSheetSays() {
    SheetRule rule = only(MUD);
    assertThat(rule.id()).isEqualTo("clearance.mud-behind-front");
    assertThat(rule.kind()).isEqualTo(RuleKind.CAUTION);
    assertThat(rule.about().type()).isEqualTo(Clearance.class);
    assertThat(rule.where()).hasToString("clearance.station is \"rear-mount\"");
    assertThat(rule.demand().condition()).hasToString("clearance.gap at least 12.0 mm");
    assertThat(rule.cases()).hasSize(4);
    assertThat(rule.place()).hasToString("hillside-shop/seen.rules.yaml:2:5");
  }

  @Test
  void conditionsOnOtherFactsSayWhereTheyStand() {
    SheetRule rule =
        demanding(
            "demands: { any: [{ value: ride-height.lift, of: same-wheel, below: 1 in },"
                + " { value: ride-height.after, of: any,"
                + " above: { value: ride-height.before, times: 1.5, plus: 1 cm } }] }");
    assertThat(rule.demand().condition())
        .hasToString(
            "any[some ride-height of same-wheel[ride-height.lift below 25.4 mm], some ride-height"
                + " of any[ride-height.after above 1.5 · ride-height.before + 10.0 mm]]");
  }

  @Test
  void whatMustBeThereIsAConditionLikeAnyOther() {
    assertThat(demanding("needs: { kind: bump-stop, of: same-axle }").demand())
        .satisfies(need -> assertThat(need.part()).isEqualTo(PartKind.BUMP_STOP))
        .extracting(need -> need.condition().toString())
        .isEqualTo("some part-on-vehicle of same-axle[part-on-vehicle.kind is \"bump-stop\"]");
    assertThat(demanding("excludes: { part: W-77 }").demand().condition())
        .hasToString("none[some part-on-vehicle of same-wheel[part-on-vehicle.part is \"W-77\"]]");
    assertThat(demanding("tells: yes").whole())
        .hasToString("any[any[], none[clearance.station is \"rear-mount\"]]");
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        arguments("kind: caution", "kind: cautious", "Did you mean caution?"),
        arguments("reason: Mud packs.", "raeson: Mud packs.", "Did you mean reason?"),
        arguments("about: clearance", "about: clearence", "Did you mean clearance?"),
        arguments("since: 1.0", "since: 1.3", "since 1.3 in version 1.2 of the book"),
        arguments("{station};", "{statoin};", "Did you mean station?"),
        arguments(
            "clearance.gap, at-least", "clearance.gab, at-least", "Did you mean clearance.gap?"),
        arguments("at-least: 12 mm }", "at-least: 12° }", "is an angle; expected a length"),
        arguments("at-least: 12 mm }", "at-least: 12 }", "needs a unit"),
        arguments("at-least: 12 mm }", "at-least: 12 mm ± 2 mm }", "expected a limit without ±"),
        arguments("at-least: 12 mm }", "at-leest: 12 mm }", "Did you mean at-least?"),
        arguments("at-least: 12 mm }", "is: 12 mm }", "is a quantity; expected at-least"),
        arguments("is: rear-mount", "is: rear-mont", "Did you mean rear-mount?"),
        arguments("is: rear-mount", "at-least: rear-mount", "expected a quantity before at-least"),
        arguments("is: rear-mount", "is: [rear-mount, arch]", "Ask with is-one-of"),
        arguments(
            "value: clearance.gap, at-least",
            "value: ride-height.lift, at-least",
            "Say where that fact stands"),
        arguments(
            "at-least: 12 mm }",
            "at-least: { value: clearance.per-edge } }",
            "clearance.per-edge is a ratio; expected a length"),
        arguments("demands: " + DEMAND, "", "nothing is demanded"),
        arguments(DEMAND, DEMAND + "\nneeds: { kind: bump-stop }", "expected one"),
        arguments(DEMAND, "{ all: [] }", "expected a list of conditions"),
        arguments(DEMAND, "{ value: clearance.gap }", "nothing is asked of clearance.gap"),
        arguments("kind: caution", "kind: law", "expected it in a book of the law"),
        arguments("title: Twelve", "outcome: not-lawful\ntitle: Twelve", "an outcome of a caution"),
        arguments("number 2", "number 2, clearence: {}", "Did you mean clearance?"),
        arguments("number 2, clearance: {", "number 2, clearance: { gup: 3,", "Did you mean gap?"),
        arguments(
            "number 2, clearance: { station: rear-mount,",
            "number 2, clearance: {",
            "\"station\" is missing"),
        arguments(
            "number 2, clearance: { station: rear-mount, gap: 20 mm }",
            "number 2, vehicle: { place: Lowmark }",
            "a case without clearance"),
        arguments(
            "expects: nothing }",
            "expects: conflict }",
            "expected nothing, caution or possibly caution"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeIsToldWhereItStands(String right, String wrong, String said) {
    assertThat(MUD).contains(right);
    assertThat(TestBook.problems(TestBook.ofRule(MUD.replace(right, wrong))))
        .isNotEmpty()
        .anySatisfy(problem -> assertThat(problem).contains(said))
        .allSatisfy(
            problem ->
                assertThat(problem).matches("(?s)hillside-shop/seen.rules.yaml:\\d+:\\d+: .*"));
  }

  @Test
  void fourCasesAreTheLeast() {
    String three = MUD.replaceFirst("  - \\{ case: number 4.*\n", "");
    assertThat(TestBook.problems(TestBook.ofRule(three)))
        .singleElement()
        .asString()
        .contains("3 cases; expected at least 4");
  }

  @Test
  void allMistakesAreToldAtOnce() {
    String spoiled =
        MUD.replace("at-least: 12 mm", "at-least: 12 kg").replace("is: rear-mount", "is: rear");
    TestBook book = TestBook.shop("hillside-shop", TestBook.sheet(spoiled, spoiled));
    assertThat(TestBook.problems(book)).hasSize(4);
  }

  @Test
  void anIdIsThereOnceOverAllBooksAndTheBase() {
    TestBook one = TestBook.shop("one", TestBook.sheet(MUD));
    TestBook two = TestBook.shop("two", TestBook.sheet(MUD));
    assertThat(TestBook.problems(one, two))
        .singleElement()
        .asString()
        .contains("a second rule called clearance.mud-behind-front; the first is at one/seen");
    KnownRule base = new KnownRule("clearance.mud-behind-front", Set.of(Clearance.class), false);
    assertThat(TestBook.problems(List.of(base), one))
        .singleElement()
        .asString()
        .contains("the base book has it");
  }

  @Test
  void twoBooksOfOneNameAreRefused() {
    TestBook one = TestBook.shop("one", TestBook.sheet(MUD));
    TestBook other = TestBook.shop("one", TestBook.sheet(MUD.replace("mud-behind", "mud")));
    assertThat(TestBook.problems(one, other))
        .singleElement()
        .asString()
        .contains("a second book called one");
  }

  @Test
  void whatIsStricterTightensARuleAboutTheSameFact() {
    KnownRule mount = new KnownRule("clearance.rear-mount", Set.of(Clearance.class), false);
    KnownRule height = new KnownRule("height.limit", Set.of(RideHeight.class), true);
    List<KnownRule> base = List.of(mount, height);
    assertThat(stricter(base, "clearance.rear-mount", "")).isEmpty();
    assertThat(stricter(base, "clearance.rear-mont", ""))
        .anyMatch(p -> p.contains("Did you mean clearance.rear-mount?"));
    assertThat(stricter(base, "height.limit", "")).anyMatch(p -> p.contains("not about clearance"));
    assertThat(stricter(base, "clearance.rear-mount", "safety-critical: yes\n"))
        .anyMatch(p -> p.contains("safety-critical and stricter than clearance.rear-mount"));
    assertThat(stricter(base, "clearance.mud-behind-front", ""))
        .anyMatch(p -> p.contains("stricter than itself"));
  }

  private static List<String> stricter(List<KnownRule> base, String than, String more) {
    String rule = MUD.replace("about:", more + "stricter-than: " + than + "\nabout:");
    return TestBook.problems(base, TestBook.ofRule(rule));
  }

  @Test
  void aRuleOfTheLawHasAnOutcomeAndItsBookAPlace() {
    String law = MUD.replace("kind: caution", "kind: law\noutcome: needs-certification");
    String expects = law.replace("possibly caution", "possibly law");
    Manifest manifest = TestBook.read(TestBook.law(TestBook.sheet(expects))).get(0).manifest();
    assertThat(manifest.appliesTo("skerrow", "lowmark")).isTrue();
    assertThat(manifest.appliesTo("skerrow", "xx-lm")).isTrue();
    assertThat(manifest.appliesTo("skerrow", "Highmark")).isFalse();
    assertThat(manifest.appliesTo("skerrow", "")).isFalse();
    assertThat(
            TestBook.problems(
                TestBook.law(TestBook.sheet(MUD.replace("kind: caution", "kind: conflict")))))
        .anyMatch(problem -> problem.contains("expected law or caution"));
    assertThat(
            TestBook.problems(
                TestBook.law(TestBook.sheet(MUD)).manifest("authority: the road office\n", "")))
        .anyMatch(problem -> problem.contains("a book of the law without \"authority\""));
  }

  @Test
  void aNewerVocabularyIsRefusedByName() {
    assertThat(
            TestBook.problems(TestBook.ofRule(MUD).manifest("vocabulary: 0.3", "vocabulary: 9.0")))
        .singleElement()
        .asString()
        .contains("book hillside-shop is written against vocabulary 9.0; this program knows 0.");
    assertThat(
            TestBook.problems(TestBook.ofRule(MUD).manifest("vocabulary: 0.3", "vocabulary: 0.1")))
        .isEmpty();
  }
}
