package trammel.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Comparison.Sense;
import trammel.vocabulary.Component;
import trammel.vocabulary.ValueType;

/**
 * Whether conditions can hold together at all, values being taken as exact. Where that cannot be
 * said (one value held against another, too many branches) they are taken to be able to.
 */
final class Possible {
  private static final int PATIENCE = 20_000;

  private int steps;

  private Possible() {}

  /** A condition that is to hold, or is not to. */
  private record Goal(Condition condition, boolean wanted) {}

  /** Whether all of these can hold while none of those does. */
  static boolean together(List<? extends Condition> hold, List<? extends Condition> fail) {
    List<Goal> goals = new ArrayList<>();
    hold.forEach(condition -> goals.add(new Goal(condition, true)));
    fail.forEach(condition -> goals.add(new Goal(condition, false)));
    return new Possible().solve(goals, new Known());
  }

  private boolean solve(List<Goal> goals, Known known) {
    steps++;
    if (goals.isEmpty() || steps > PATIENCE) {
      return true;
    }
    Goal goal = goals.get(0);
    List<Goal> rest = goals.subList(1, goals.size());
    Condition condition = goal.condition();
    if (condition instanceof Condition.Leaf leaf) {
      Known more = known.with(leaf, goal.wanted());
      return more != null && solve(rest, more);
    } else if (condition instanceof Condition.Some some) {
      Known more = known.with(some, goal.wanted());
      return more != null && solve(rest, more);
    }
    boolean all = condition instanceof Condition.All;
    boolean wanted = goal.wanted() != (condition instanceof Condition.None);
    List<? extends Condition> parts = Moved.parts(condition);
    if (all == wanted) {
      List<Goal> next = new ArrayList<>();
      parts.forEach(part -> next.add(new Goal(part, wanted)));
      next.addAll(rest);
      return solve(next, known);
    }
    for (Condition part : parts) {
      List<Goal> next = new ArrayList<>();
      next.add(new Goal(part, wanted));
      next.addAll(rest);
      if (solve(next, known)) {
        return true;
      }
    }
    return false;
  }

  /** What one branch has settled so far. */
  private static final class Known {
    private final Map<String, Interval> ranges = new HashMap<>();
    private final Map<String, Set<String>> names = new HashMap<>();
    private final Map<String, Set<String>> excluded = new HashMap<>();
    private final Map<String, Boolean> opaque = new HashMap<>();
    private final Map<Condition.Some, Boolean> others = new HashMap<>();

    private Known copy() {
      Known copy = new Known();
      copy.ranges.putAll(ranges);
      copy.names.putAll(names);
      copy.excluded.putAll(excluded);
      copy.opaque.putAll(opaque);
      copy.others.putAll(others);
      return copy;
    }

    /** The same and a leaf; null where that contradicts it. */
    private @Nullable Known with(Condition.Leaf leaf, boolean wanted) {
      Known next = copy();
      boolean possible =
          leaf instanceof Condition.Compare compare
              ? next.compare(compare, wanted)
              : next.is((Condition.Is) leaf, wanted);
      return possible ? next : null;
    }

    private boolean compare(Condition.Compare compare, boolean wanted) {
      if (!(compare.limit() instanceof Limit.Stated stated)) {
        return opaque(compare.toString(), wanted);
      }
      Sense sense = wanted ? compare.sense() : opposite(compare.sense());
      Interval narrowed =
          ranges
              .getOrDefault(compare.term().toString(), Interval.ALL)
              .and(Interval.of(sense, stated.value().value()));
      ranges.put(compare.term().toString(), narrowed);
      return !narrowed.isEmpty();
    }

    private boolean opaque(String text, boolean wanted) {
      Boolean before = opaque.put(text, wanted);
      return before == null || before == wanted;
    }

    private boolean is(Condition.Is is, boolean wanted) {
      Component component = is.term().component();
      if (component.type() == ValueType.SUBJECT || component.type() == ValueType.TEXTS) {
        return opaque(is.term() + " " + is.names(), wanted != is.not());
      }
      String key = is.term().toString();
      Set<String> out = new LinkedHashSet<>(excluded.getOrDefault(key, Set.of()));
      Set<String> in =
          names.containsKey(key) ? new LinkedHashSet<>(names.get(key)) : all(component);
      if (wanted != is.not()) {
        in = in == null ? new LinkedHashSet<>(is.names()) : in;
        in.retainAll(is.names());
      } else {
        out.addAll(is.names());
      }
      excluded.put(key, out);
      if (in == null) {
        return true;
      }
      in.removeAll(out);
      names.put(key, in);
      return !in.isEmpty();
    }

    private static @Nullable Set<String> all(Component component) {
      return switch (component.type()) {
        case TOKEN -> new LinkedHashSet<>(component.choices());
        case DECISION, YES_NO -> new LinkedHashSet<>(List.of("yes", "no"));
        default -> null;
      };
    }

    /** The same and a condition on other facts; null where that contradicts it. */
    private @Nullable Known with(Condition.Some some, boolean wanted) {
      if (wanted && !together(some.leaves(), List.of())) {
        return null;
      }
      for (Map.Entry<Condition.Some, Boolean> other : others.entrySet()) {
        if (other.getValue() != wanted) {
          Condition.Some holds = wanted ? some : other.getKey();
          Condition.Some fails = wanted ? other.getKey() : some;
          if (implies(holds, fails)) {
            return null;
          }
        }
      }
      Known next = copy();
      next.others.put(some, wanted);
      return next;
    }

    private static boolean implies(Condition.Some holds, Condition.Some fails) {
      return holds.fact().equals(fails.fact())
          && (holds.of() == fails.of() || fails.of() == Of.ANY)
          && !together(holds.leaves(), List.of(new Condition.All(List.copyOf(fails.leaves()))));
    }

    private static Sense opposite(Sense sense) {
      return switch (sense) {
        case AT_LEAST -> Sense.BELOW;
        case AT_MOST -> Sense.ABOVE;
        case ABOVE -> Sense.AT_MOST;
        case BELOW -> Sense.AT_LEAST;
      };
    }
  }
}
