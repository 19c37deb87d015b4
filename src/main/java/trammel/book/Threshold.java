package trammel.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.stream.Stream;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;

/**
 * A limit that a rule or a row of a table states, and how far it could be moved before one of the
 * cases came out otherwise.
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
    return of(
        stated, results(Tried.all(rule)), (from, to) -> Moved.rule(rule, from, to), Tried::all);
  }

  /** Every limit of one row of a table, in the order of its columns. */
  public static List<Threshold> of(Table table, Table.Row row) {
    List<Condition.Compare> stated = new ArrayList<>();
    collect(row.match(), stated);
    return of(
        stated, results(Tried.all(table)), (from, to) -> Moved.table(table, from, to), Tried::all);
  }

  private static <T> List<Threshold> of(
      List<Condition.Compare> stated,
      List<String> asTold,
      BiFunction<Condition.Compare, Condition.Compare, T> moved,
      Function<T, List<Tried>> tried) {
    return stated.stream()
        .map(
            compare -> {
              DoublePredicate unseen =
                  by -> results(tried.apply(moved.apply(compare, by(compare, by)))).equals(asTold);
              double size = Math.max(1, Math.abs(exact(compare).value()));
              return new Threshold(
                  ConditionWords.of(compare),
                  exact(compare).dimension(),
                  noticed(size, by -> unseen.test(-by)),
                  noticed(size, unseen));
            })
        .toList();
  }

  private static void collect(Condition condition, List<Condition.Compare> into) {
    if (condition instanceof Condition.Compare compare) {
      into.add(compare);
    }
    Moved.parts(condition).forEach(part -> collect(part, into));
  }

  private static List<String> results(List<Tried> tried) {
    return tried.stream().map(Tried::was).toList();
  }

  private static Quantity exact(Condition.Compare compare) {
    return compare.limit() instanceof Limit.Stated stated
        ? stated.value()
        : ((Limit.Following) compare.limit()).plus();
  }

  /**
   * The least move that some case notices.
   *
   * @param unseen whether a move passes unseen
   */
  private static OptionalDouble noticed(double size, DoublePredicate unseen) {
    double unnoticed = 0;
    for (double step = FIRST * size; step <= LAST * size; step *= GROWTH) {
      if (!unseen.test(step)) {
        double at = step;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = (unnoticed + at) / 2;
          if (unseen.test(middle)) {
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

  /** The same comparison with its limit moved. */
  private static Condition.Compare by(Condition.Compare compare, double by) {
    Quantity limit = exact(compare);
    Quantity other = Quantity.exact(limit.dimension(), limit.value() + by);
    return new Condition.Compare(
        compare.term(),
        compare.sense(),
        compare.limit() instanceof Limit.Following following
            ? new Limit.Following(following.term(), following.times(), other)
            : new Limit.Stated(other));
  }
}
