package trammel.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.build.Build;
import trammel.build.BuildSheet.Waiver;
import trammel.catalog.PartKind;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Kind;
import trammel.judge.Precedent;
import trammel.judge.Rule;
import trammel.quantity.Absence;

/**
 * What a check came to, ready to be shown.
 *
 * @param findings what was found, gravest first; what says the same of several places stands once
 * @param background open questions that the change does not raise
 * @param measuring how to get what is missing, by tool
 * @param precedents what is met because the vehicle is sound there as found
 * @param notChecked kinds of part on the sheet that no rule judges
 * @param notices what became of the waivers
 */
public record Report(
    Verdict verdict,
    String build,
    String vehicle,
    LocalDate on,
    Optional<String> place,
    List<Item> findings,
    List<Item> background,
    Map<String, Set<String>> measuring,
    List<String> precedents,
    List<String> notChecked,
    List<String> notices,
    int rules) {

  /**
   * One finding.
   *
   * @param identities {@code rule-id@subject} of each place it is said of
   * @param settle what a fitter would try, in order
   */
  public record Item(
      Kind kind,
      List<String> identities,
      List<String> where,
      String sentence,
      String figures,
      String reason,
      List<String> settle,
      boolean waived) {}

  /** The report of a judged build on a day. */
  public static Report of(Build build, Judgement judgement, Judge judge, LocalDate on) {
    List<String> notices = new ArrayList<>();
    Set<String> waived = waived(build, judgement, judge, on, notices);
    Set<String> notChecked = new LinkedHashSet<>();
    for (Build.Line line : build.lines()) {
      PartKind kind = line.part().kind();
      if (!judge.judges(kind)) {
        notChecked.add(kind.words() + " " + line.part().number());
      }
    }
    Verdict verdict = notChecked.isEmpty() ? Verdict.FITS : Verdict.NOT_PROVEN;
    List<Finding> shown = new ArrayList<>();
    List<Finding> background = new ArrayList<>();
    Map<String, Set<String>> measuring = new LinkedHashMap<>();
    for (Finding finding : judgement.findings()) {
      boolean open = finding.kind() == Kind.UNPROVEN;
      (open && !finding.decides() ? background : shown).add(finding);
      if (finding.decides() && !waived.contains(finding.identity())) {
        verdict = Verdict.worst(List.of(verdict, verdict(finding.kind())));
      }
      if (open && finding.decides() && finding.comparison() != null) {
        for (Absence absence : Absences.behind(finding.comparison().margin())) {
          measuring
              .computeIfAbsent(absence.instrument().words(), tool -> new LinkedHashSet<>())
              .add(absence.what() + ": " + absence.how());
        }
      }
    }
    return new Report(
        verdict,
        build.title(),
        build.vehicle().words(),
        on,
        Optional.ofNullable(build.found().registeredAt()),
        items(shown, judge, waived),
        items(background, judge, waived),
        measuring,
        precedents(judgement.precedents()),
        List.copyOf(notChecked),
        notices,
        judge.rules().size());
  }

  private static Verdict verdict(Kind kind) {
    return switch (kind) {
      case CONFLICT, ALIGNMENT -> Verdict.DOES_NOT_FIT;
      case UNPROVEN -> Verdict.NOT_PROVEN;
      case COMPANION -> Verdict.FITS_WITH_ADDITIONS;
      case LAW, CAUTION -> Verdict.FITS;
    };
  }

  private static Set<String> waived(
      Build build, Judgement judgement, Judge judge, LocalDate on, List<String> notices) {
    Set<String> waived = new LinkedHashSet<>();
    for (Waiver waiver : build.waivers()) {
      String rule = waiver.finding().substring(0, waiver.finding().indexOf('@'));
      boolean found =
          judgement.findings().stream().anyMatch(f -> f.identity().equals(waiver.finding()));
      String said = "Waiver of " + waiver.finding() + " by " + waiver.decidedBy();
      if (!found) {
        notices.add(said + ": no longer needed.");
      } else if (judge.rule(rule).map(Rule::safetyCritical).orElse(false)) {
        notices.add(said + ": refused; the rule is safety-critical.");
      } else if (waiver.lastDay().isBefore(on)) {
        notices.add(said + ": expired on " + waiver.lastDay() + ".");
      } else {
        waived.add(waiver.finding());
        notices.add(said + ", until " + waiver.lastDay() + ": " + waiver.reason());
      }
    }
    return waived;
  }

  private static List<Item> items(List<Finding> findings, Judge judge, Set<String> waived) {
    Map<String, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding finding : findings) {
      Sentences sentences = new Sentences(finding, judge.rule(finding.rule()).orElseThrow());
      alike
          .computeIfAbsent(
              finding.rule()
                  + sentences.sentence()
                  + finding.kind()
                  + waived.contains(finding.identity()),
              key -> new ArrayList<>())
          .add(finding);
    }
    List<Item> items = new ArrayList<>();
    for (List<Finding> same : alike.values()) {
      Finding first = same.get(0);
      Rule rule = judge.rule(first.rule()).orElseThrow();
      Sentences sentences = new Sentences(first, rule);
      items.add(
          new Item(
              first.kind(),
              same.stream().map(Finding::identity).toList(),
              same.stream().map(finding -> finding.fact().subject().words()).toList(),
              sentences.sentence(),
              sentences.figures(),
              rule.reason(),
              rule.settle().stream().map(sentences::filled).toList(),
              waived.contains(first.identity())));
    }
    return items;
  }

  private static List<String> precedents(List<Precedent> precedents) {
    return precedents.stream()
        .map(precedent -> precedent.fact().subject().words() + " (" + precedent.rule() + ")")
        .toList();
  }
}
