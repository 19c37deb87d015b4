package trammel.book;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/**
 * A condition as it came out, with all inside it.
 *
 * @param condition what was asked
 * @param fact of which fact
 * @param decision how it came out
 * @param comparison the value against its limit, where a quantity was asked of
 * @param opposite the same asked the other way round
 * @param parts what it consists of; of a condition on other facts, those facts
 */
public record Traced(
    Condition condition,
    Fact fact,
    Decision decision,
    @Nullable Comparison comparison,
    @Nullable Comparison opposite,
    List<Traced> parts) {

  /** How a condition comes out for a fact that stands among others. */
  public static Traced of(Condition condition, Fact about, FactSet facts) {
    if (condition instanceof Condition.All all) {
      return folded(all, about, parts(all.parts(), about, facts), false, false);
    } else if (condition instanceof Condition.Any any) {
      return folded(any, about, parts(any.parts(), about, facts), true, false);
    } else if (condition instanceof Condition.None none) {
      return folded(none, about, parts(none.parts(), about, facts), true, true);
    } else if (condition instanceof Condition.Some some) {
      List<Traced> others =
          facts.spokenOf(some, about).stream().map(other -> of(some, about, other)).toList();
      return folded(some, about, others, true, false);
    }
    return leaf((Condition.Leaf) condition, about, null);
  }

  private static List<Traced> parts(List<Condition> parts, Fact about, FactSet facts) {
    return parts.stream().map(part -> of(part, about, facts)).toList();
  }

  private static Traced of(Condition.Some some, Fact about, Fact other) {
    List<Traced> leaves = some.leaves().stream().map(one -> leaf(one, about, other)).toList();
    return leaves.size() == 1 ? leaves.get(0) : folded(some, other, leaves, false, false);
  }

  private static Traced leaf(Condition.Leaf leaf, Fact about, @Nullable Fact other) {
    Fact on = other == null ? about : other;
    if (leaf instanceof Condition.Compare compare) {
      Comparison comparison = compare.comparison(about, other);
      return new Traced(
          leaf, on, comparison.decision(), comparison, compare.opposite(about, other), List.of());
    }
    return new Traced(leaf, on, leaf.decide(about, other), null, null, List.of());
  }

  private static Traced folded(
      Condition condition, Fact on, List<Traced> parts, boolean any, boolean negated) {
    Decision decision = any ? Decision.NOT_MET : Decision.MET;
    for (Traced part : parts) {
      decision = any ? decision.or(part.decision) : decision.and(part.decision);
    }
    return new Traced(condition, on, negated ? decision.not() : decision, null, null, parts);
  }

  /**
   * The comparison that makes it come out so, with its margin negative where that is a breach;
   * empty where a mark, or a fact that is not there, decides.
   */
  Optional<Comparison> deciding() {
    return deciding(false);
  }

  private Optional<Comparison> deciding(boolean negated) {
    if (comparison != null) {
      return Optional.ofNullable(negated ? opposite : comparison);
    }
    boolean turned = condition instanceof Condition.None;
    Decision wanted = turned ? decision.not() : decision;
    return parts.stream()
        .filter(part -> part.decision == wanted)
        .map(part -> part.deciding(negated != turned))
        .flatMap(Optional::stream)
        .findFirst();
  }
}
