package trammel.book;

import java.util.ArrayList;
import java.util.List;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/**
 * One line of why a condition came out as it did.
 *
 * @param depth how deep it lies inside other conditions
 * @param words what was asked
 * @param decision how it came out
 * @param found what was found, and by how much; empty for a group of conditions
 */
public record Reason(int depth, String words, Decision decision, String found) {

  /** Every line of a traced condition, outermost first. */
  public static List<Reason> of(Traced traced) {
    List<Reason> lines = new ArrayList<>();
    add(traced, 0, lines);
    return List.copyOf(lines);
  }

  private static void add(Traced traced, int depth, List<Reason> lines) {
    Condition condition = traced.condition();
    if (condition instanceof Condition.Leaf leaf) {
      lines.add(new Reason(depth, ConditionWords.of(leaf), traced.decision(), found(traced)));
      return;
    }
    if (condition instanceof Condition.Some
        && traced.parts().size() == 1
        && traced.parts().get(0).condition() instanceof Condition.Leaf) {
      Traced only = traced.parts().get(0);
      lines.add(new Reason(depth, head(traced), traced.decision(), found(only)));
      return;
    }
    lines.add(new Reason(depth, head(traced), traced.decision(), ""));
    traced.parts().forEach(part -> add(part, depth + 1, lines));
  }

  private static String head(Traced traced) {
    Condition condition = traced.condition();
    if (condition instanceof Condition.All) {
      return "all of these";
    } else if (condition instanceof Condition.Any any) {
      return any.parts().isEmpty() ? "nothing is demanded: it only tells" : "at least one of these";
    } else if (condition instanceof Condition.None) {
      return "none of these";
    }
    Condition.Some some = (Condition.Some) condition;
    if (some.fact().type().isInstance(traced.fact()) && isOneOther(traced)) {
      return traced.fact().subject().words();
    }
    return ConditionWords.of(some) + (traced.parts().isEmpty() ? " (there is none)" : "");
  }

  /** Whether it is the conditions on one of the other facts, rather than on all of them. */
  private static boolean isOneOther(Traced traced) {
    return !traced.parts().isEmpty()
        && traced.parts().stream().allMatch(part -> part.fact() == traced.fact());
  }

  private static String found(Traced traced) {
    Comparison comparison = traced.comparison();
    if (comparison != null) {
      return ConditionWords.margin(comparison);
    }
    Condition.Is is = (Condition.Is) traced.condition();
    boolean said = traced.decision() == Decision.MET && is.names().size() == 1 && !is.not();
    return said ? "" : "it is " + ConditionWords.value(is.term().component().of(traced.fact()));
  }
}
