package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How far a limit can move before a case notices, worked out by hand: under "at least", a value is
 * good while the limit is at most value − ± and bad once it is at least value + ± (ISO 14253-1).
 */
class ThresholdTest {
  private static SheetRule rule(String first, String second, String third) {
    String sheet =
        TestBook.sheet(
            """
            rule: a.b
            title: Room stays free
            kind: caution
            says: "{gap} is left."
            reason: Mud packs.
            source: common practice
            since: 1.0
            about: clearance
            demands: { value: clearance.gap, at-least: 12 mm }
            cases:
            """
                + String.join(
                    "",
                    List.of(first, second, third, "absent").stream()
                        .map(
                            gap ->
                                "  - { case: so, clearance: { station: arch, gap: "
                                    + gap
                                    + " }, expects: nothing }\n")
                        .toList()));
    return TestBook.read(TestBook.shop("shop", sheet)).get(0).rules().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    // good at 14.5 ± 2 up to 12.5; bad at 8 ± 2 down to 10
    "14.5 mm ± 2 mm, 8 mm ± 2 mm, 100 mm ± 1 mm, 2, 0.5",
    // open at 12 ± 5 from 7 to 17, good at 40 ± 1 up to 39, bad at 2 ± 1 down to 3
    "12 mm ± 5 mm, 40 mm ± 1 mm, 2 mm ± 1 mm, 5, 5",
    // the limit itself is met by an exact 12: the least rise is noticed; 11 is bad down to 11
    "12 mm ± 0 mm, 11 mm ± 0 mm, 100 mm ± 1 mm, 1, 0"
  })
  void theNearestCaseNotices(String a, String b, String c, double lower, double higher) {
    List<Threshold> thresholds = Threshold.of(rule(a, b, c));
    assertThat(thresholds).hasSize(1);
    assertThat(thresholds.get(0).lower().orElseThrow()).isCloseTo(lower, within(1e-3));
    assertThat(thresholds.get(0).higher().orElseThrow()).isCloseTo(higher, within(1e-3));
  }

  @ParameterizedTest
  @CsvSource("200 m, 300 m, 400 m")
  void whatNoCaseNoticesIsOpen(String a, String b, String c) {
    Threshold only = Threshold.of(rule(a, b, c)).get(0);
    assertThat(only.lower()).isEmpty();
    assertThat(only.higher()).isEmpty();
  }

  /**
   * A row that rubbed with 12 mm left speaks of gaps up to 12. The case of 10 ± 1 is certain until
   * the limit falls below 11; that of 15 ± 2 is silent until it rises above 13.
   */
  @Test
  void theLimitsOfARowMoveLikeThoseOfARule() {
    String sheet =
        """
        tables:
          - table: clearance.seen
            title: What we have seen
            kind: caution
            says: "{gap} is left."
            reason: It stood on our lift.
            source: common practice
            since: 1.0
            about: clearance
            columns: [{ value: clearance.gap, reads: no-worse-than, worse: smaller }]
            results: [outcome]
            hit: collect
            rows: [[12 mm, caution], [90 mm, fits]]
            cases:
              - { case: a, clearance: { gap: 10 mm ± 1 mm }, expects: caution }
              - { case: b, clearance: { gap: 15 mm ± 2 mm }, expects: nothing }
              - { case: c, clearance: { gap: 40 mm ± 2 mm }, expects: nothing }
              - { case: d, clearance: { gap: absent }, expects: possibly caution }
        """;
    Table table = TestBook.read(TestBook.shop("shop", sheet)).get(0).tables().get(0);
    Threshold rubbed = Threshold.of(table, table.rows().get(0)).get(0);
    assertThat(rubbed.lower().orElseThrow()).isCloseTo(1, within(1e-3));
    assertThat(rubbed.higher().orElseThrow()).isCloseTo(1, within(1e-3));
    // Nothing is said of it wherever it stands.
    Threshold fits = Threshold.of(table, table.rows().get(1)).get(0);
    assertThat(fits.lower()).isEmpty();
    assertThat(fits.higher()).isEmpty();
  }
}
