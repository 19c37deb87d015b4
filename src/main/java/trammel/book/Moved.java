package trammel.book;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A rule or a table with one of its comparisons exchanged for another. */
final class Moved {
  private Moved() {}

  /** What a condition consists of; empty for a condition on one value. */
  static List<? extends Condition> parts(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts();
    } else if (condition instanceof Condition.Any any) {
      return any.parts();
    } else if (condition instanceof Condition.None none) {
      return none.parts();
    } else if (condition instanceof Condition.Some some) {
      return some.leaves();
    }
    return List.of();
  }

  /** The rule with this very comparison, and no other that reads the same, exchanged. */
  static SheetRule rule(SheetRule rule, Condition.Compare from, Condition.Compare to) {
    Demand demand = rule.demand();
    return new SheetRule(
        rule.place(),
        rule.id(),
        rule.title(),
        rule.kind(),
        rule.says(),
        rule.open(),
        rule.reason(),
        rule.source(),
        rule.since(),
        rule.safetyCritical(),
        rule.stricterThan(),
        rule.replaces(),
        rule.settle(),
        rule.outcome(),
        rule.about(),
        whole(rule.where(), from, to),
        new Demand(demand.form(), condition(demand.condition(), from, to), demand.part()),
        rule.cases());
  }

  /** The same of a table: in what it says of itself, or in one of its rows. */
  static Table table(Table table, Condition.Compare from, Condition.Compare to) {
    return new Table(
        rule(table.rule(), from, to),
        table.hit(),
        table.rows().stream()
            .map(
                row ->
                    new Table.Row(
                        row.place(),
                        condition(row.match(), from, to),
                        row.outcome(),
                        row.results()))
            .toList());
  }

  private static @Nullable Condition whole(
      @Nullable Condition condition, Condition.Compare from, Condition.Compare to) {
    return condition == null ? null : condition(condition, from, to);
  }

  @SuppressWarnings("ReferenceEquality") // the same words may stand in a rule twice
  private static Condition condition(
      Condition condition, Condition.Compare from, Condition.Compare to) {
    if (condition == from) {
      return to;
    } else if (condition instanceof Condition.All all) {
      return new Condition.All(all.parts().stream().map(p -> condition(p, from, to)).toList());
    } else if (condition instanceof Condition.Any any) {
      return new Condition.Any(any.parts().stream().map(p -> condition(p, from, to)).toList());
    } else if (condition instanceof Condition.None none) {
      return new Condition.None(none.parts().stream().map(p -> condition(p, from, to)).toList());
    } else if (condition instanceof Condition.Some some) {
      return new Condition.Some(
          some.of(),
          some.fact(),
          some.leaves().stream().map(leaf -> (Condition.Leaf) condition(leaf, from, to)).toList());
    }
    return condition;
  }
}
