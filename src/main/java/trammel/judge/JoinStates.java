package trammel.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trammel.book.Condition;
import trammel.book.Condition.Joins;
import trammel.book.Condition.Some;
import trammel.quantity.Decision;

/**
 * One way in which the conditions of a rule on other facts come out: each is met, not met, or open.
 */
final class JoinStates implements Joins {
  private static final List<Decision> STATES =
      List.of(Decision.MET, Decision.NOT_MET, Decision.UNDECIDED);

  private final List<Some> joins;
  private final List<Decision> states;

  private JoinStates(List<Some> joins, List<Decision> states) {
    this.joins = joins;
    this.states = states;
  }

  /** Every way; one, of nothing, where a condition speaks of its own fact alone. */
  static List<JoinStates> all(Condition condition) {
    List<Some> joins = new ArrayList<>();
    collect(condition, joins);
    List<List<Decision>> ways = List.of(List.of());
    for (int i = 0; i < joins.size(); i++) {
      List<List<Decision>> longer = new ArrayList<>();
      for (List<Decision> way : ways) {
        for (Decision state : STATES) {
          List<Decision> next = new ArrayList<>(way);
          next.add(state);
          longer.add(next);
        }
      }
      ways = longer;
    }
    return ways.stream().map(way -> new JoinStates(joins, way)).toList();
  }

  private static void collect(Condition condition, List<Some> joins) {
    if (condition instanceof Condition.All all) {
      all.parts().forEach(part -> collect(part, joins));
    } else if (condition instanceof Condition.Any any) {
      any.parts().forEach(part -> collect(part, joins));
    } else if (condition instanceof Condition.None none) {
      none.parts().forEach(part -> collect(part, joins));
    } else if (condition instanceof Some some && !joins.contains(some)) {
      joins.add(some);
    }
  }

  List<Some> joins() {
    return joins;
  }

  @Override
  public Decision of(Some some) {
    return states.get(joins.indexOf(some));
  }

  /** The same, where an open condition is undecided or absent as it really is. */
  Joins exactly(Joins found) {
    return some -> {
      Decision state = of(some);
      if (!state.isOpen()) {
        return state;
      }
      Decision exact = found.of(some);
      return exact.isOpen() ? exact : state;
    };
  }

  /** Whether a condition can come out other than met in this way, whatever its own fact holds. */
  boolean canBeViolated(Condition condition) {
    return least(condition, false).isPossiblyViolated();
  }

  /** The worst that a condition can come to; the best, where it stands under a negation. */
  private Decision least(Condition condition, boolean negated) {
    if (condition instanceof Condition.All all) {
      return all.parts().stream()
          .map(part -> least(part, negated))
          .reduce(Decision.MET, Decision::and);
    } else if (condition instanceof Condition.Any any) {
      return any.parts().stream()
          .map(part -> least(part, negated))
          .reduce(Decision.NOT_MET, Decision::or);
    } else if (condition instanceof Condition.None none) {
      return least(new Condition.Any(none.parts()), !negated).not();
    } else if (condition instanceof Some some) {
      return of(some);
    }
    return Decision.of(negated);
  }

  /** What tells the engine's rules for one rule apart; empty where there is only one. */
  String suffix() {
    return states.isEmpty()
        ? ""
        : states.stream().map(JoinStates::word).collect(Collectors.joining(", ", " (", ")"));
  }

  private static String word(Decision state) {
    return state.isOpen() ? "open" : state.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public String toString() {
    List<String> said = new ArrayList<>();
    for (int i = 0; i < joins.size(); i++) {
      said.add(joins.get(i) + " " + word(states.get(i)));
    }
    return said.toString();
  }
}
