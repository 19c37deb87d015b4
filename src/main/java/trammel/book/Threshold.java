package trammel.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;

/**
 * A limit that a rule states, and how far it could be moved before one of the rule's cases came out
 * otherwise.
 *
 * @param words the condition it stands in
 * @param dimension of the limit
 * @param lower how far down (in the dimension's kept unit); empty where no case would notice
 * @param higher the same upward
 */
public record Threshold(
    String words, Dimension dimension, OptionalDouble lower, OptionalDouble higher) {
  /** The first step that is tried, and the last, as shares of the limit or of one. */
  private static final double FIRST = 1e-4;

  private static final double LAST = 1e3;
  private static final double GROWTH = 1.25;

  /** Halvings between the last step that no case noticed and the first that one did. */
  private static final int HALVINGS = 30;

  /** Every limit of a rule, in the order of reading. */
  public static List<Threshold> of(SheetRule rule) {
    List<Condition.Compare> stated = new ArrayList<>();
    Stream.of(rule.where(), rule.demand().condition())
        .filter(Objects::nonNull)
        .forEach(condition -> collect(condition, stated));
    List<String> asTold = results(rule);
    return stated.stream().map(compare -> of(rule, compare, asTold)).toList();
  }

  private static void collect(Condition condition, List<Condition.Compare> into) {
    if (condition instanceof Condition.Compare compare) {
      into.add(compare);
    }
    Moved.parts(condition).forEach(part -> collect(part, into));
  }

  private static List<String> results(SheetRule rule) {
    return Tried.all(rule).stream().map(Tried::was).toList();
  }

  private static Threshold of(SheetRule rule, Condition.Compare compare, List<String> asTold) {
    return new Threshold(
        ConditionWords.of(compare),
        exact(compare).dimension(),
        noticed(rule, compare, asTold, -1),
        noticed(rule, compare, asTold, 1));
  }

  private static Quantity exact(Condition.Compare compare) {
    return compare.limit() instanceof Limit.Stated stated
        ? stated.value()
        : ((Limit.Following) compare.limit()).plus();
  }

  /** The least move one way that some case notices. */
  private static OptionalDouble noticed(
      SheetRule rule, Condition.Compare compare, List<String> asTold, int way) {
    double size = Math.max(1, Math.abs(exact(compare).value()));
    double unnoticed = 0;
    for (double step = FIRST * size; step <= LAST * size; step *= GROWTH) {
      if (!results(moved(rule, compare, way * step)).equals(asTold)) {
        double at = step;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = (unnoticed + at) / 2;
          if (results(moved(rule, compare, way * middle)).equals(asTold)) {
            unnoticed = middle;
          } else {
            at = middle;
          }
        }
        return OptionalDouble.of(at);
      }
      unnoticed = step;
    }
    return OptionalDouble.empty();
  }

  private static SheetRule moved(SheetRule rule, Condition.Compare compare, double by) {
    Quantity limit = exact(compare);
    Quantity other = Quantity.exact(limit.dimension(), limit.value() + by);
    Condition.Compare to =
        new Condition.Compare(
            compare.term(),
            compare.sense(),
            compare.limit() instanceof Limit.Following following
                ? new Limit.Following(following.term(), following.times(), other)
                : new Limit.Stated(other));
    return Moved.rule(rule, compare, to);
  }
}
