package trammel.judge;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AssumedValue;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/**
 * One result of a rule.
 *
 * @param rule the rule's id
 * @param kind what it amounts to: the rule's own kind, or unproven
 * @param fact what it is about
 * @param comparison the quantity against its limit; null where tokens were compared
 * @param decision how that came out
 * @param need what is missing, where the rule asks for something
 * @param told in whose words
 */
public record Finding(
    String rule,
    Kind kind,
    Fact fact,
    @Nullable Comparison comparison,
    Decision decision,
    @Nullable Need need,
    Told told) {

  /** A finding told by its own rule. */
  public Finding(
      String rule,
      Kind kind,
      Fact fact,
      @Nullable Comparison comparison,
      Decision decision,
      @Nullable Need need) {
    this(rule, kind, fact, comparison, decision, need, Told.by(rule));
  }

  /** The same, with what is assumed and not accepted for it. */
  Finding told(List<AssumedValue> notAccepted) {
    return new Finding(
        rule,
        kind,
        fact,
        comparison,
        decision,
        need,
        new Told(told.by(), told.also(), told.results(), notAccepted));
  }

  /** Its identity, {@code rule-id@subject}, which waivers and comparisons of reports use. */
  public String identity() {
    return rule + "@" + fact.subject();
  }

  /** Whether it is about a part. */
  public boolean about(String part) {
    return fact.parts().contains(part);
  }

  /** Whether it is worded as possible only. */
  public boolean possibly() {
    return kind != Kind.UNPROVEN && decision.isOpen();
  }

  /**
   * Whether it counts toward the verdict; an open question that the change does not raise is
   * background.
   */
  public boolean decides() {
    return switch (kind) {
      case CONFLICT, ALIGNMENT, COMPANION -> true;
      case UNPROVEN -> fact.standing() == Standing.WORSE_OR_NEW;
      case LAW, CAUTION -> false;
    };
  }
}
