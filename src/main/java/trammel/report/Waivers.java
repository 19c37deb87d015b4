package trammel.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.build.BuildSheet.Waiver;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Rule;
import trammel.read.Words;

/** Which findings somebody has decided to live with, and what is wrong with such decisions. */
final class Waivers {
  private final Map<String, Report.Waived> valid = new LinkedHashMap<>();
  private final List<String> notices = new ArrayList<>();

  Waivers(List<Waiver> waivers, List<Finding> findings, Judge judge, LocalDate on) {
    Set<String> found = findings.stream().map(Finding::identity).collect(Collectors.toSet());
    for (Waiver waiver : waivers) {
      String identity = identity(waiver, judge);
      Optional<String> refused = refusal(waiver, identity, found, judge, on);
      if (refused.isPresent()) {
        notices.add(
            "The waiver of " + waiver.finding() + " (" + waiver.place() + ") " + refused.get());
      } else {
        if (!identity.equals(waiver.finding())) {
          notices.add(
              "The waiver of "
                  + waiver.finding()
                  + " ("
                  + waiver.place()
                  + ") counts for "
                  + identity
                  + ", as the rule is called now.");
        }
        valid.put(
            identity, new Report.Waived(waiver.reason(), waiver.decidedBy(), waiver.lastDay()));
      }
    }
  }

  /** The finding that is waived, under the name that its rule has now. */
  private static String identity(Waiver waiver, Judge judge) {
    String id = ruleOf(waiver);
    String subject = waiver.finding().substring(id.length());
    return judge.ruleOnceCalled(id).map(Rule::id).orElse(id) + subject;
  }

  private static String ruleOf(Waiver waiver) {
    return waiver.finding().split("@", 2)[0];
  }

  private static Optional<String> refusal(
      Waiver waiver, String identity, Set<String> found, Judge judge, LocalDate on) {
    String id = ruleOf(waiver);
    Optional<Rule> rule = judge.ruleOnceCalled(id);
    if (rule.isEmpty()) {
      List<String> known = judge.rules().stream().map(Rule::id).toList();
      return Optional.of(
          "names no rule in force. "
              + Words.didYouMean(id, known, "Copy the identity from a report."));
    }
    if (rule.get().safetyCritical()) {
      return Optional.of("is refused: the rule is safety-critical and takes none.");
    }
    if (on.isAfter(waiver.lastDay())) {
      return Optional.of("does not count: its last day was " + waiver.lastDay() + ".");
    }
    String tightened = rule.get().stricterThan();
    if (tightened != null) {
      return Optional.of(
          "does not count: what "
              + rule.get().id()
              + " finds is told as "
              + tightened
              + waiver.finding().substring(id.length())
              + ", which it tightens. Waive that one.");
    }
    return found.contains(identity)
        ? Optional.empty()
        : Optional.of("is not needed: nothing of the kind is found.");
  }

  /** The valid waiver of a finding. */
  Optional<Report.Waived> of(Finding finding) {
    return Optional.ofNullable(valid.get(finding.identity()));
  }

  /** What is to be said of waivers that do not count. */
  List<String> notices() {
    return List.copyOf(notices);
  }
}
