package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;
import static trammel.fact.Standing.NO_WORSE;
import static trammel.fact.Standing.SOUND_AND_NO_WORSE;
import static trammel.fact.Standing.WORSE_OR_NEW;
import static trammel.subject.Position.FRONT_LEFT;
import static trammel.subject.Position.FRONT_RIGHT;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.catalog.Part;

/** From findings to the verdict and what is said of it. */
class ReporterTest {
  @Test
  void aTireThatMeetsTheMountDoesNotFitAndSaysByHowMuch() {
    Report report = new Sheet().report(Sheet.gap(FRONT_LEFT, WORSE_OR_NEW, -6.2, 3.4));
    assertThat(report.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
    assertThat(report.decidedBy())
        .isEqualTo(
            "Front left, rear mount: Full lock, on the bump stop: the tire's outer shoulder runs"
                + " into the body mount by 6.2 ± 3.4 mm (0.2 in).");
    Report.Item item = report.findings().get(0);
    assertThat(item.id()).isEqualTo("clearance.rear-mount@front-left:rear-mount");
    assertThat(item.decides()).isTrue();
    assertThat(item.margin()).isEqualTo(-6.2);
    assertThat(item.uncertainty()).isEqualTo(3.4);
    assertThat(item.unit()).isEqualTo("mm");
  }

  @Test
  void aGapThatIsSmallerThanItsUncertaintyIsNotProven() {
    Report report = new Sheet().report(Sheet.gap(FRONT_LEFT, WORSE_OR_NEW, 2, 5));
    assertThat(report.verdict()).isEqualTo(Verdict.NOT_PROVEN);
    assertThat(report.findings().get(0).sentence())
        .isEqualTo(
            "It is open whether the tire's rear shoulder passes what lies behind it at lock: gap"
                + " is 2 ± 5 mm (0.1 in) against at least 0 mm, closer than it is known.");
    assertThat(report.measuring()).isEmpty();
  }

  @Test
  void anUnmeasuredGapIsNotProvenAndIsOnTheMeasuringList() {
    Report report =
        new Sheet()
            .report(
                Sheet.unmeasuredGap(FRONT_LEFT, WORSE_OR_NEW),
                Sheet.unmeasuredGap(FRONT_RIGHT, WORSE_OR_NEW));
    assertThat(report.verdict()).isEqualTo(Verdict.NOT_PROVEN);
    assertThat(report.findings().get(0).sentence())
        .endsWith("gap at the body mount is not known (nobody has measured it).");
    assertThat(report.findings().get(0).value()).isNull();
    assertThat(report.measuring())
        .containsExactly(
            new Report.Tool(
                "tape measure at lock",
                List.of(
                    new Report.Measurement(
                        "gap at the body mount",
                        "Front, rear mount",
                        "tape between tire and mount at full lock",
                        List.of(
                            "clearance.rear-mount@front-left:rear-mount",
                            "clearance.rear-mount@front-right:rear-mount")))));
  }

  @Test
  void anOpenQuestionThatTheChangeDoesNotRaiseIsBackground() {
    Report report = new Sheet().report(Sheet.gap(FRONT_LEFT, NO_WORSE, 2, 5));
    assertThat(report.verdict()).isEqualTo(Verdict.FITS);
    assertThat(report.findings()).isEmpty();
    assertThat(report.background()).hasSize(1);
  }

  @Test
  void whatIsSoundAsFoundAndNoWorseIsMetByPrecedentAndSaysSo() {
    Report report = new Sheet().report(Sheet.unmeasuredGap(FRONT_LEFT, SOUND_AND_NO_WORSE));
    assertThat(report.verdict()).isEqualTo(Verdict.FITS);
    assertThat(report.precedents())
        .extracting(Report.Precedent::rule)
        .containsExactly("clearance.rear-mount");
  }

  @Test
  void aCautionIsShownAndChangesNothing() {
    Report report = new Sheet().report(Sheet.gap(FRONT_LEFT, WORSE_OR_NEW, 5, 1));
    assertThat(report.verdict()).isEqualTo(Verdict.FITS);
    assertThat(report.findings()).extracting(Report.Item::kind).containsExactly("caution");
    assertThat(report.findings().get(0).decides()).isFalse();
  }

  @Test
  void aCautionThatMayNotHoldIsListedApart() {
    Report report = new Sheet().report(Sheet.gap(FRONT_LEFT, WORSE_OR_NEW, 8.5, 1));
    assertThat(report.verdict()).isEqualTo(Verdict.FITS);
    assertThat(report.findings()).isEmpty();
    assertThat(report.possible()).hasSize(1);
    assertThat(report.possible().get(0).sentence()).startsWith("Possibly: Full lock");
  }

  @Test
  void twoWheelsOfWhichTheSameIsSaidShareANumber() {
    Report report =
        new Sheet()
            .report(
                Sheet.gap(FRONT_LEFT, WORSE_OR_NEW, -6.2, 3.4),
                Sheet.gap(FRONT_RIGHT, WORSE_OR_NEW, -6.2, 3.4));
    assertThat(report.findings()).extracting(Report.Item::number).containsExactly(1, 1);
    assertThat(report.findings())
        .extracting(Report.Item::where)
        .containsOnly("Both front wheels, rear mount");
  }

  @Test
  void ofOneKindTheSafetyCriticalFindingComesFirst() {
    Report report =
        new Sheet()
            .report(
                Sheet.gap(FRONT_LEFT, WORSE_OR_NEW, -6.2, 3.4), Sheet.mismatchedRim(FRONT_RIGHT));
    assertThat(report.findings())
        .extracting(Report.Item::rule)
        .containsExactly("tire.rim-code", "clearance.rear-mount");
    assertThat(report.findings().get(0).sentence())
        .isEqualTo("T-1 is made for a rim of 16.5 in; W-1 is of 16 in.");
  }

  @Test
  void anAddedPartThatNoRuleJudgesLeavesTheSheetNotProven() {
    Part unjudged =
        Sheet.CATALOG.parts().values().stream()
            .filter(part -> !Sheet.JUDGE.judges(part.kind()))
            .findFirst()
            .orElseThrow();
    Report report = new Sheet().buying(unjudged.number()).report();
    assertThat(report.verdict()).isEqualTo(Verdict.NOT_PROVEN);
    assertThat(report.decidedBy()).contains(unjudged.kind().words(), unjudged.number());
    assertThat(report.notChecked()).hasSize(1);
  }

  @Test
  void theLawIsSpokenOfOnlyWhereThePlaceIsNamed() {
    assertThat(new Sheet().report().law()).isNull();
    Report report = new Sheet().registeredAt("Lower Fenwick").report();
    assertThat(report.law()).extracting(Law::standing).isEqualTo(LegalStanding.NOT_JUDGED);
    assertThat(TextReport.of(report))
        .startsWith("FITS THE VEHICLE; LAW NOT JUDGED.")
        .contains("Law not judged (registered at Lower Fenwick).");
  }

  @Test
  void everyReportNamesItsBooksAndLeavesTheLastWordToTheLaw() {
    String text = TextReport.of(new Sheet().report());
    assertThat(text)
        .startsWith("FITS.  Nothing was found that stands against it.")
        .contains("Local law and a licensed mechanic or engineer have the last word.")
        .contains("book base");
  }
}
