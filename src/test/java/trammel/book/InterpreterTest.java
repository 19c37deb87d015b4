package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.fact.Fact;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/** A rule says of each fact how it comes out, and which comparison makes it so. */
class InterpreterTest {
  private static final String HEAD =
      """
      rule: clearance.mud
      title: Some room stays
      kind: KIND
      says: Too close.
      reason: Mud packs.
      source: common practice
      since: 1.0
      about: clearance
      """;

  /** The ruling on the first case of a rule with this condition and these facts. */
  private static Ruling ruling(String kind, String conditions, String facts) {
    String rule = HEAD.replace("KIND", kind) + conditions + "\n" + TestBook.cases(facts);
    SheetRule read = TestBook.read(TestBook.ofRule(rule)).get(0).rules().get(0);
    List<Fact> given = read.cases().get(0).facts();
    return Interpreter.judge(read, given).get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "12 mm, MET, nothing",
    "15 mm ± 3 mm, MET, nothing",
    "14 mm ± 3 mm, UNDECIDED, unproven",
    "12 mm ± 1 mm, UNDECIDED, unproven",
    "9 mm ± 3 mm, NOT_MET, conflict",
    "absent, ABSENT, unproven"
  })
  void aLimitIsHeldAsIso14253HasIt(String gap, Decision decision, String result) {
    Ruling ruling =
        ruling(
            "conflict",
            "demands: { value: clearance.gap, at-least: 12 mm }",
            "clearance: { station: arch, gap: " + gap + " }");
    assertThat(ruling.decision()).isEqualTo(decision);
    assertThat(ruling.result()).isEqualTo(result);
    assertThat(ruling.comparison()).isNotNull();
  }

  /** Kleene's tables (S. C. Kleene, Introduction to Metamathematics, 1952, § 64; from memory). */
  @ParameterizedTest
  @CsvSource({
    "all, 20, 20, MET", "all, 20, 12 mm ± 1, UNDECIDED", "all, 12 mm ± 1, 2, NOT_MET",
    "all, absent, 2, NOT_MET", "all, absent, 20, ABSENT", "all, absent, 12 mm ± 1, ABSENT",
    "any, 20, absent, MET", "any, 2, 12 mm ± 1, UNDECIDED", "any, 2, 2, NOT_MET",
    "none, 20, absent, NOT_MET", "none, 2, 12 mm ± 1, UNDECIDED", "none, 2, 2, MET"
  })
  void conditionsAreKleenes(String group, String gap, String change, Decision decision) {
    String asked =
        "{ value: clearance.gap, at-least: 12 mm }, { value: clearance.change, at-least: 12 mm }";
    Ruling ruling =
        ruling(
            "conflict",
            "demands: { " + group + ": [" + asked + "] }",
            "clearance: { station: arch, gap: " + unit(gap) + ", change: " + unit(change) + " }");
    assertThat(ruling.decision()).isEqualTo(decision);
  }

  private static String unit(String number) {
    return number.matches("\\d+") ? number + " mm" : number;
  }

  @ParameterizedTest
  @CsvSource({"30 mm, arch, nothing", "2 mm, arch, conflict", "2 mm, liner, nothing"})
  void aRuleHoldsOnlyWhereItSays(String gap, String station, String result) {
    Ruling ruling =
        ruling(
            "conflict",
            "where: { value: clearance.station, is: arch }\n"
                + "demands: { value: clearance.gap, at-least: 12 mm }",
            "clearance: { station: " + station + ", gap: " + gap + " }");
    assertThat(ruling.result()).isEqualTo(result);
  }

  @ParameterizedTest
  @CsvSource({
    "'', NOT_MET",
    "', ride-height: { lift: 30 mm }', MET",
    "', ride-height: { subject: front-right, lift: 30 mm }', NOT_MET",
    "', ride-height: [{ lift: 1 mm }, { lift: 30 mm }]', MET",
    "', ride-height: [{ lift: 1 mm }, { lift: 20 mm ± 5 mm }]', UNDECIDED",
    "', ride-height: [{ lift: absent }, { lift: 20 mm ± 5 mm }]', ABSENT"
  })
  void someOtherFactIsEnough(String beside, Decision decision) {
    Ruling ruling =
        ruling(
            "conflict",
            "demands: { value: ride-height.lift, of: same-wheel, at-least: 20 mm }",
            "clearance: { station: arch, subject: \"front-left:arch\" }" + beside);
    assertThat(ruling.decision()).isEqualTo(decision);
  }

  @ParameterizedTest
  @CsvSource({
    "needs, front-left, MET", "needs, rear-left, NOT_MET",
    "excludes, front-left, NOT_MET", "excludes, rear-left, MET"
  })
  void aPartIsAskedForOrRefused(String asked, String where, Decision decision) {
    Ruling ruling =
        ruling(
            "companion",
            asked + ": { kind: bump-stop }",
            "clearance: { station: arch }, part-on-vehicle: { subject: \""
                + where
                + ":bump-stop\", kind: bump-stop, part: B-1 }");
    assertThat(ruling.decision()).isEqualTo(decision);
  }

  @ParameterizedTest
  @CsvSource({
    "caution, worse-or-new, possibly caution", "caution, no-worse, nothing",
    "conflict, no-worse, unproven", "conflict, sound-and-no-worse, precedent"
  })
  void anOpenQuestionIsReportedAsInTheBaseBook(String kind, String standing, String result) {
    Ruling ruling =
        ruling(
            kind,
            "demands: { value: clearance.gap, at-least: 12 mm }",
            "clearance: { station: arch, standing: " + standing + " }");
    assertThat(ruling.result()).isEqualTo(result);
  }

  @Test
  void whatDecidesIsTheComparisonThatFails() {
    Ruling ruling =
        ruling(
            "conflict",
            "demands: { all: [{ value: clearance.gap, at-least: 12 mm },"
                + " { none: [{ value: clearance.change, at-most: -5 mm }] }] }",
            "clearance: { station: arch, gap: 20 mm, change: -9 mm ± 1 mm }");
    Comparison comparison = ruling.comparison();
    assertThat(comparison).isNotNull();
    assertThat(comparison.decision()).isEqualTo(Decision.NOT_MET);
    assertThat(comparison.margin().value()).isEqualTo(-4);
    assertThat(comparison.margin().expanded()).isEqualTo(1);
  }

  @Test
  void aBlankTextIsAbsentAndNotAnotherOne() {
    String is = "demands: { value: clearance.trim, is: liner }";
    assertThat(ruling("conflict", is, "clearance: { station: arch, trim: liner }").decision())
        .isEqualTo(Decision.MET);
    assertThat(ruling("conflict", is, "clearance: { station: arch, trim: seam }").decision())
        .isEqualTo(Decision.NOT_MET);
    assertThat(ruling("conflict", is, "clearance: { station: arch }").decision())
        .isEqualTo(Decision.ABSENT);
  }

  @ParameterizedTest
  @CsvSource({
    "front, MET",
    "front-left, MET",
    "'front-left:arch', MET",
    "rear, NOT_MET",
    "front-right, NOT_MET"
  })
  void aPlaceIsNamedByWhatItBelongsTo(String place, Decision decision) {
    Ruling ruling =
        ruling(
            "conflict",
            "demands: { value: clearance.subject, is: \"" + place + "\" }",
            "clearance: { station: arch, subject: \"front-left:arch\" }");
    assertThat(ruling.decision()).isEqualTo(decision);
  }
}
