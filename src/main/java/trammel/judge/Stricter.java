package trammel.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Joins what a stricter rule found with what the rule that it tightens found of the same place: one
 * finding, under the identity of the rule that is tightened, so that one waiver covers it whole.
 */
final class Stricter {
  private Stricter() {}

  /** The findings, those of stricter rules joined. */
  static List<Finding> joined(List<Finding> findings, Map<String, Rule> rules) {
    List<Finding> joined = new ArrayList<>();
    Map<String, List<Finding>> stricter = new LinkedHashMap<>();
    for (Finding finding : findings) {
      String root = root(finding.rule(), rules);
      if (root.equals(finding.rule())) {
        joined.add(finding);
      } else {
        stricter
            .computeIfAbsent(root + "@" + finding.fact().subject(), key -> new ArrayList<>())
            .add(finding);
      }
    }
    for (List<Finding> found : stricter.values()) {
      String root = root(found.get(0).rule(), rules);
      Optional<Finding> base =
          joined.stream()
              .filter(
                  finding ->
                      finding.rule().equals(root)
                          && finding.fact().subject().equals(found.get(0).fact().subject()))
              .findFirst();
      base.ifPresent(joined::remove);
      joined.add(join(root, base, found));
    }
    return joined;
  }

  /** The rule at the end of the chain of those that a rule tightens. */
  private static String root(String id, Map<String, Rule> rules) {
    Rule rule = rules.get(id);
    return rule == null || rule.stricterThan() == null ? id : root(rule.stricterThan(), rules);
  }

  /** The gravest speaks; of equals, the rule that is tightened. */
  private static Finding join(String root, Optional<Finding> base, List<Finding> found) {
    List<Finding> sorted =
        found.stream()
            .sorted(
                Comparator.comparing(Finding::kind)
                    .thenComparing(Finding::rule)
                    .thenComparing(finding -> finding.fact().toString()))
            .toList();
    Finding speaks =
        Stream.concat(base.stream(), sorted.stream())
            .min(Comparator.comparing(Finding::kind))
            .orElseThrow();
    return new Finding(
        root,
        speaks.kind(),
        speaks.fact(),
        speaks.comparison(),
        speaks.decision(),
        speaks.need(),
        new Told(
            speaks.rule(),
            sorted.stream().map(Finding::rule).distinct().toList(),
            speaks.told().results(),
            Stream.concat(base.stream(), sorted.stream())
                .flatMap(finding -> finding.told().notAccepted().stream())
                .distinct()
                .toList()));
  }
}
