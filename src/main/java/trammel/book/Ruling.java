package trammel.book;

import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/**
 * What a rule makes of one fact, and why.
 *
 * @param decision whether what the rule asks holds: its demand, or that it does not apply
 * @param where whether it applies; null where it always does
 * @param demand whether what it demands holds
 */
public record Ruling(
    SheetRule rule, Fact fact, Decision decision, @Nullable Traced where, Traced demand) {

  /** What is reported, in the words of cases. */
  public String result() {
    return result(rule.kind(), decision, fact.standing());
  }

  /**
   * What is reported where a rule of a kind comes out so, in the words of cases: as the base book
   * has it, an open question is unproven or worded as possible; sound as found and no worse is met
   * by precedent; what is only possible is not said where the change does not bear on it, unless
   * the law asks.
   */
  static String result(RuleKind kind, Decision decision, Standing standing) {
    if (decision == Decision.MET) {
      return Case.NOTHING;
    }
    if (!decision.isOpen()) {
      return kind.toString();
    }
    if (kind.leavesUnproven()) {
      return standing == Standing.SOUND_AND_NO_WORSE ? Case.PRECEDENT : Case.UNPROVEN;
    }
    return kind == RuleKind.LAW || standing == Standing.WORSE_OR_NEW
        ? Case.POSSIBLY + kind
        : Case.NOTHING;
  }

  /**
   * The value against its limit that explains the decision: of what is demanded where that is one
   * comparison and the decision rests on it; null where a mark or an absent fact decides.
   */
  public @Nullable Comparison comparison() {
    if (demand.comparison() != null && demand.decision() == decision) {
      return demand.comparison();
    }
    if (!decision.isOpen()) {
      return demand.deciding().orElse(null);
    }
    Traced open = demand.decision() == decision || where == null ? demand : where;
    return open.deciding().orElse(null);
  }
}
