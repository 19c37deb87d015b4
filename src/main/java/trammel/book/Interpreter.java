package trammel.book;

import java.util.Collection;
import java.util.List;
import trammel.fact.Fact;
import trammel.quantity.Decision;

/** Judges by a rule of a sheet without the rules engine, and keeps why. */
public final class Interpreter {
  private Interpreter() {}

  /** What a rule makes of each fact that it judges, in order. */
  public static List<Ruling> judge(SheetRule rule, Collection<? extends Fact> facts) {
    FactSet set = FactSet.of(facts);
    return set.all(rule.about().type()).stream().map(fact -> judge(rule, fact, set)).toList();
  }

  /** What a rule makes of one fact among others. */
  public static Ruling judge(SheetRule rule, Fact fact, FactSet facts) {
    Traced demand = Traced.of(rule.demand().condition(), fact, facts);
    Condition condition = rule.where();
    if (condition == null) {
      return new Ruling(rule, fact, demand.decision(), null, demand);
    }
    Traced where = Traced.of(condition, fact, facts);
    Decision decision = demand.decision().or(where.decision().not());
    return new Ruling(rule, fact, decision, where, demand);
  }

  /** What a table makes of each fact that it judges, in order. */
  public static List<TableRuling> judge(Table table, Collection<? extends Fact> facts) {
    FactSet set = FactSet.of(facts);
    return set.all(table.rule().about().type()).stream()
        .map(fact -> judge(table, fact, set))
        .toList();
  }

  /** What a table makes of one fact among others. */
  public static TableRuling judge(Table table, Fact fact, FactSet facts) {
    return TableReading.read(table, fact, facts);
  }
}
