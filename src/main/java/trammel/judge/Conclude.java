package trammel.judge;

import org.jspecify.annotations.Nullable;
import org.kie.api.runtime.rule.RuleContext;
import trammel.catalog.PartKind;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/**
 * The one consequence that all rules share. A rule's pattern lets through what is possibly
 * violated; here it is decided again, and what is inserted is the rule's own kind or {@code
 * unproven}.
 */
public final class Conclude {
  private Conclude() {}

  /** Concludes from a quantity held against its limit. */
  public static void conclude(RuleContext drools, Fact fact, Comparison comparison) {
    conclude(drools, fact, comparison, comparison.decision());
  }

  /** Concludes from tokens that agree or do not. */
  public static void conclude(RuleContext drools, Fact fact, Decision agreement) {
    conclude(drools, fact, null, agreement);
  }

  /** Concludes what the pattern alone has made certain. */
  public static void conclude(RuleContext drools, Fact fact) {
    conclude(drools, fact, null, Decision.NOT_MET);
  }

  /**
   * Asks for a part of a kind where the limit is not met, unless a supply is there that certainly
   * suits.
   */
  public static void need(RuleContext drools, Fact fact, Comparison comparison, PartKind kind) {
    need(drools, fact, comparison, comparison.decision(), kind);
  }

  /** Asks for a part of a kind where it is not certain that one is there already. */
  public static void need(RuleContext drools, Fact fact, Decision there, PartKind kind) {
    need(drools, fact, null, there, kind);
  }

  private static void need(
      RuleContext drools,
      Fact fact,
      @Nullable Comparison comparison,
      Decision decision,
      PartKind kind) {
    if (decision == Decision.MET) {
      return;
    }
    Finding finding = finding(drools, fact, comparison, decision);
    if (byPrecedent(drools, finding)) {
      return;
    }
    Need need = new Need(kind, fact.subject().where());
    drools.insertLogical(need);
    drools.insertLogical(
        new Need.Reason(
            need, new Finding(finding.rule(), finding.kind(), fact, comparison, decision, need)));
  }

  private static void conclude(
      RuleContext drools, Fact fact, @Nullable Comparison comparison, Decision decision) {
    if (decision != Decision.MET) {
      insert(drools, finding(drools, fact, comparison, decision));
    }
  }

  /**
   * Inserts what a rule of any book found. What is only possible is not said where the change does
   * not bear on it; but of the law it is, for nobody may take silence for a pass.
   */
  static void insert(RuleContext drools, Finding finding) {
    boolean idle =
        finding.possibly()
            && finding.kind() != Kind.LAW
            && finding.fact().standing() != Standing.WORSE_OR_NEW;
    if (!byPrecedent(drools, finding) && !idle) {
      drools.insertLogical(finding);
    }
  }

  /** The kind of a finding under a rule of some kind: its own, or unproven where it is open. */
  static Kind kind(Kind own, Decision decision) {
    return decision.isOpen() && own.canLeaveUnproven() ? Kind.UNPROVEN : own;
  }

  /** Whether an open question is settled because the vehicle is sound there as found. */
  private static boolean byPrecedent(RuleContext drools, Finding finding) {
    boolean settled =
        finding.kind() == Kind.UNPROVEN && finding.fact().standing() == Standing.SOUND_AND_NO_WORSE;
    if (settled) {
      drools.insertLogical(new Precedent(finding.rule(), finding.fact()));
    }
    return settled;
  }

  private static Finding finding(
      RuleContext drools, Fact fact, @Nullable Comparison comparison, Decision decision) {
    Kind own = Kind.named((String) drools.getRule().getMetaData().get("kind"));
    return new Finding(
        drools.getRule().getName(), kind(own, decision), fact, comparison, decision, null);
  }
}
