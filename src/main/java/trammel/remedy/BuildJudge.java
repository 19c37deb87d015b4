package trammel.remedy;

import trammel.build.Build;
import trammel.derive.Derivations;
import trammel.judge.Judge;
import trammel.judge.Judgement;

/**
 * Judges builds, one after another: derives the facts of each and judges by them.
 *
 * @param judge who judges
 * @param derivations where facts come from
 */
public record BuildJudge(Judge judge, Derivations derivations) {

  /**
   * What the rules make of a build. Where corners are surveyed, facts are judged while others are
   * still being worked out, unless some of the evidence is assumed: then all of it is weighed
   * twice.
   */
  public Judgement judge(Build build) {
    return build.assumed().isEmpty()
        ? judge.judge(listener -> derivations.facts(build, listener))
        : judge.judge(derivations.evidence(build));
  }
}
