package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;
import static trammel.subject.Position.FRONT_LEFT;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.fact.Standing;

/** Which waivers count; the sheets are checked for 2026-05-31. */
class WaiversTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          clearance.rear-mount@front-left:rear-mount,  2026-06-01, FITS,         ''
          clearance.rear-mount@front-left:rear-mount,  2026-05-31, FITS,         ''
          clearance.rear-mount@front-left:rear-mount,  2026-05-30, DOES_NOT_FIT, its last day was 2026-05-30
          clearance.rear-mount@front-right:rear-mount, 2026-06-01, DOES_NOT_FIT, is not needed
          clearance.rear-mont@front-left:rear-mount,   2026-06-01, DOES_NOT_FIT, Did you mean clearance.rear-mount?
          """)
  void aWaiverCountsForOneFindingUpToItsLastDay(
      String finding, LocalDate lastDay, Verdict verdict, String notice) {
    Report report =
        new Sheet()
            .waiving(finding, lastDay)
            .report(Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, -6.2, 3.4));
    assertThat(report.verdict()).isEqualTo(verdict);
    assertThat(report.findings()).hasSize(1);
    assertThat(report.findings().get(0).waived() != null).isEqualTo(notice.isEmpty());
    assertThat(report.notices()).hasSize(notice.isEmpty() ? 0 : 1);
    assertThat(String.join("", report.notices())).contains(notice);
  }

  @ParameterizedTest
  @CsvSource("tire.rim-code@front-left:tire")
  void aSafetyCriticalRuleTakesNoWaiver(String finding) {
    Report report =
        new Sheet()
            .waiving(finding, LocalDate.of(2030, 1, 1))
            .report(Sheet.mismatchedRim(FRONT_LEFT));
    assertThat(report.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
    assertThat(report.findings().get(0).waived()).isNull();
    assertThat(report.notices())
        .containsExactly(
            "The waiver of tire.rim-code@front-left:tire (sheet.build.yaml:9:5) is refused: the"
                + " rule is safety-critical and takes none.");
  }

  @ParameterizedTest
  @CsvSource("clearance.rear-mount@front-left:rear-mount")
  void aWaivedFindingIsShownAndMarked(String finding) {
    Report report =
        new Sheet()
            .waiving(finding, LocalDate.of(2026, 6, 1))
            .report(Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, -6.2, 3.4));
    assertThat(TextReport.of(report)).contains("WAIVED by the workshop until 2026-06-01: seen");
  }
}
