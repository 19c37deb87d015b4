package trammel.judge;

import java.util.List;

/**
 * What the rules made of a build's facts, sorted: kind, subject, rule.
 *
 * @param findings what was found
 * @param precedents requirements met because the vehicle is sound there as found
 */
public record Judgement(List<Finding> findings, List<Precedent> precedents) {
  static final Judgement NOTHING = new Judgement(List.of(), List.of());

  public Judgement {
    findings = List.copyOf(findings);
    precedents = List.copyOf(precedents);
  }
}
