package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.read.Problem;

/** What proofreading says of books that can be read; the expected sentences follow by hand. */
class ProofTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 25);
  private static final String CASES =
      TestBook.cases("clearance: { station: rear-mount, gap: 500 mm }");

  private static String rule(String id, String kind, String conditions) {
    return "rule: "
        + id
        + "\ntitle: Room stays free\nkind: "
        + kind
        + "\nsays: \"{gap} is left.\"\nreason: Mud packs.\nsource: common practice\nsince: 1.0\n"
        + "about: clearance\n"
        + conditions
        + "\n"
        + CASES;
  }

  private static List<String> doubtful(String... rules) {
    return Proof.of(TestBook.read(TestBook.shop("shop", TestBook.sheet(rules))), ON)
        .doubtful()
        .stream()
        .map(Problem::what)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "where: { all: [{ value: clearance.station, is: arch },"
            + " { value: clearance.station, is: liner }] }\n"
            + "demands: { value: clearance.gap, at-least: 5 mm }",
        "where: { value: clearance.gap, at-least: 20 mm }\n"
            + "demands: { value: clearance.gap, above: 19 mm }",
        "where: { none: [{ value: clearance.gap, above: 5 mm },"
            + " { value: clearance.gap, at-most: 5 mm }] }\n"
            + "demands: { value: clearance.gap, at-least: 50 mm }",
        "where: { value: ride-height.lift, of: same-wheel, at-least: 20 mm, below: 20 mm }\n"
            + "demands: { value: clearance.gap, at-least: 50 mm }",
        "where: { value: ride-height.lift, of: same-wheel, at-least: 30 mm }\n"
            + "demands: { value: ride-height.lift, of: any, at-least: 25 mm }",
      })
  void aRuleThatCanNeverSpeak(String conditions) {
    assertThat(doubtful(rule("a.b", "caution", conditions)))
        .containsExactly("a.b can never speak: no values are on the wrong side of it");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "where: { value: clearance.gap, at-least: 20 mm }\n"
            + "demands: { value: clearance.gap, above: 20 mm }",
        "where: { value: ride-height.lift, of: any, at-least: 30 mm }\n"
            + "demands: { value: ride-height.lift, of: same-wheel, at-least: 25 mm }",
        "demands: { value: clearance.gap, at-least: { value: clearance.change } }",
      })
  void aRuleThatCan(String conditions) {
    assertThat(doubtful(rule("a.b", "caution", conditions))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          caution  | at-least: 12 mm | conflict | at-least: 14 mm | a.a adds nothing: b.b
          conflict | at-least: 12 mm | caution  | at-least: 14 mm |
          caution  | at-least: 14 mm | caution  | at-least: 12 mm | b.b adds nothing: a.a
          caution  | at-least: 12 mm | caution  | at-least: 12 mm | b.b adds nothing: a.a
          caution  | at-least: 12 mm | caution  | at-most: 14 mm  |
          """)
  void aRuleThatAnotherCovers(
      String firstKind, String first, String secondKind, String second, String expected) {
    List<String> found =
        doubtful(
            rule("a.a", firstKind, "demands: { value: clearance.gap, " + first + " }"),
            rule("b.b", secondKind, "demands: { value: clearance.gap, " + second + " }"));
    if (expected == null) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).singleElement().asString().startsWith(expected);
    }
  }

  @Test
  void aCaseThatComesOutOtherwiseIsWrongAndAKnownGapIsNot() {
    String sheet =
        TestBook.sheet(
            rule("a.b", "caution", "demands: { value: clearance.gap, at-least: 5 mm }")
                    .replace("number 1, ", "number 1, known-gap: to come, ")
                    .replaceFirst("expects: nothing", "expects: caution")
                + "  - { case: too low, clearance: { station: arch, gap: 4 mm },"
                + " expects: nothing }\n");
    Proof proof = Proof.of(TestBook.read(TestBook.shop("shop", sheet)), ON);
    assertThat(proof.wrong())
        .extracting(Problem::what)
        .containsExactly("a.b, case \"too low\" comes out as caution; expected nothing");
    assertThat(proof.doubtful()).isEmpty();
  }

  @Test
  void gapsAndOverlapsOfATable() {
    String table =
        """
        tables:
          - table: a.b
            title: Seen
            kind: caution
            says: "{gap} is left."
            reason: Seen.
            source: our own
            since: 1.0
            about: clearance
            columns:
              - { value: clearance.gap, reads: range }
              - { value: clearance.station, reads: equal }
            results: [outcome]
            hit: unique
            rows:
              - [0 mm..10 mm, arch, conflict]
              - ["[15 mm..20 mm)", arch, caution]
              - [20 mm..30 mm, arch, fits]
              - [0 mm..10 mm, liner, caution]
              - [25 mm..40 mm, arch, fits]
        """
            + TestBook.cases("clearance: { station: spring-side, gap: 50 mm }").indent(4);
    List<String> found =
        Proof.of(TestBook.read(TestBook.shop("shop", table)), ON).doubtful().stream()
            .map(Problem::what)
            .toList();
    assertThat(found).hasSize(2);
    assertThat(found.get(0)).contains("no row speaks of gap between 10 mm and 15 mm");
    assertThat(found.get(1)).contains("can both speak of one value");
  }

  @ParameterizedTest
  @CsvSource({"2027-11-25, 0", "2027-11-26, 1"})
  void aLawThatWasReadLongAgo(LocalDate on, int expected) {
    String sheet =
        TestBook.sheet(
            rule("a.b", "law", "demands: { value: clearance.gap, at-least: 5 mm }")
                .replace("about:", "outcome: not-lawful\nabout:"));
    assertThat(Proof.of(TestBook.read(TestBook.law(sheet)), on).doubtful()).hasSize(expected);
  }
}
