package trammel.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/** Reads one table for one fact, by its hit policy. */
final class TableReading {
  /** Gravest first; a row that fits comes last. */
  private static final Comparator<Table.Row> GRAVEST =
      Comparator.comparing(Table.Row::outcome, Comparator.nullsLast(Comparator.naturalOrder()));

  private final Table table;
  private final Fact fact;
  private final FactSet facts;
  private final List<Table.Row> met = new ArrayList<>();
  private final List<Table.Row> open = new ArrayList<>();
  private Decision openness = Decision.NOT_MET;

  private TableReading(Table table, Fact fact, FactSet facts) {
    this.table = table;
    this.fact = fact;
    this.facts = facts;
  }

  static TableRuling read(Table table, Fact fact, FactSet facts) {
    TableReading reading = new TableReading(table, fact, facts);
    reading.match();
    return reading.ruling();
  }

  private void match() {
    Condition.Joins around = facts.around(fact);
    for (Table.Row row : table.rows()) {
      Decision match = row.match().decide(fact, around);
      if (match == Decision.MET) {
        met.add(row);
        if (table.hit() == Table.Hit.FIRST) {
          return;
        }
      } else if (match.isOpen()) {
        open.add(row);
        openness = openness.or(match);
      }
    }
  }

  private TableRuling ruling() {
    Condition where = table.rule().where();
    Decision applies = where == null ? Decision.MET : where.decide(fact, facts.around(fact));
    if (applies == Decision.NOT_MET || (met.isEmpty() && open.isEmpty())) {
      return silent();
    }
    boolean contradictory =
        table.hit() == Table.Hit.UNIQUE
            ? met.size() > 1
            : table.hit() == Table.Hit.ANY
                && met.stream().map(Table.Row::outcome).distinct().count() > 1;
    boolean settled = !contradictory && isSettled();
    List<Table.Row> rows = new ArrayList<>(met);
    rows.addAll(open);
    Table.Row gravest = rows.stream().min(GRAVEST).orElseThrow();
    if (settled && applies == Decision.MET) {
      Table.Row row = met.isEmpty() ? gravest : met.stream().min(GRAVEST).orElseThrow();
      return row.outcome() == null ? silent() : ruling(Decision.NOT_MET, row, null, rows);
    }
    if (gravest.outcome() == null || (settled && saysNothing())) {
      return silent();
    }
    Decision undecided = contradictory ? Decision.UNDECIDED : Decision.NOT_MET;
    Decision decision = openness.or(undecided).or(applies.isOpen() ? applies : Decision.NOT_MET);
    return ruling(decision, gravest, comparison(applies), rows);
  }

  private boolean saysNothing() {
    return met.stream().allMatch(row -> row.outcome() == null);
  }

  /** Whether the rows that may match could not change what is said. */
  private boolean isSettled() {
    if (open.isEmpty()) {
      return true;
    }
    if (met.isEmpty()) {
      return open.stream().allMatch(row -> row.outcome() == null);
    }
    RuleKind said = met.stream().min(GRAVEST).orElseThrow().outcome();
    if (table.hit() == Table.Hit.COLLECT) {
      Table.Row gravest = met.stream().min(GRAVEST).orElseThrow();
      return open.stream().noneMatch(row -> GRAVEST.compare(row, gravest) < 0);
    }
    return open.stream().allMatch(row -> Objects.equals(row.outcome(), said));
  }

  private @Nullable Comparison comparison(Decision applies) {
    Condition where = table.rule().where();
    for (Table.Row row : open) {
      Traced traced = Traced.of(row.match(), fact, facts);
      if (traced.deciding().isPresent()) {
        return traced.deciding().get();
      }
    }
    return applies.isOpen() && where != null
        ? Traced.of(where, fact, facts).deciding().orElse(null)
        : null;
  }

  private TableRuling silent() {
    return new TableRuling(table, fact, Decision.MET, null, Map.of(), null, met);
  }

  private TableRuling ruling(
      Decision decision, Table.Row row, @Nullable Comparison comparison, List<Table.Row> rows) {
    Map<String, String> results = new LinkedHashMap<>();
    List<Table.Row> telling =
        table.hit() == Table.Hit.COLLECT && !decision.isOpen()
            ? met.stream().filter(one -> Objects.equals(one.outcome(), row.outcome())).toList()
            : List.of(row);
    for (Table.Row one : telling) {
      one.results().forEach((name, text) -> results.merge(name, text, TableReading::join));
    }
    return new TableRuling(table, fact, decision, row.outcome(), results, comparison, rows);
  }

  private static String join(String first, String second) {
    if (first.isBlank() || first.equals(second)) {
      return second;
    }
    return second.isBlank() ? first : first + "; " + second;
  }
}
