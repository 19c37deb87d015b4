package trammel.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.fact.Fact;
import trammel.quantity.Decision;

/** Facts that stand beside each other, found by their kind. */
public final class FactSet {
  private final Map<Class<?>, List<Fact>> byType = new HashMap<>();

  private FactSet() {}

  /** These facts. */
  public static FactSet of(Collection<? extends Fact> facts) {
    FactSet set = new FactSet();
    for (Fact fact : facts) {
      set.byType.computeIfAbsent(fact.getClass(), type -> new ArrayList<>()).add(fact);
    }
    return set;
  }

  /** Every fact of one kind. */
  public List<Fact> all(Class<? extends Fact> type) {
    return byType.getOrDefault(type, List.of());
  }

  /** The facts that a condition on other facts speaks of. */
  List<Fact> spokenOf(Condition.Some some, Fact about) {
    return all(some.fact().type()).stream().filter(other -> some.speaksOf(about, other)).toList();
  }

  /** How conditions on other facts come out for a fact, by Kleene's disjunction over all others. */
  public Condition.Joins around(Fact about) {
    return some -> {
      Decision any = Decision.NOT_MET;
      for (Fact other : all(some.fact().type())) {
        if (some.speaksOf(about, other)) {
          any = any.or(some.decide(about, other));
        }
      }
      return any;
    };
  }
}
