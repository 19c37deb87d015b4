package trammel.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Dimension;
import trammel.read.Problem;
import trammel.read.QuantityWriter;

/** What is doubtful in one table: rows that contradict or hide each other, and gaps of ranges. */
final class TableProof {
  /** Rows beyond which not every one is held against every other. */
  private static final int COMPARED = 400;

  private final Table table;
  private final List<Problem> found = new ArrayList<>();

  private TableProof(Table table) {
    this.table = table;
  }

  static List<Problem> of(Table table) {
    TableProof proof = new TableProof(table);
    proof.overlaps();
    proof.gaps();
    return proof.found;
  }

  private void overlaps() {
    List<Table.Row> rows = table.rows().subList(0, Math.min(table.rows().size(), COMPARED));
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < i; j++) {
        Problem problem = overlap(rows.get(j), rows.get(i));
        if (problem != null) {
          found.add(problem);
          break;
        }
      }
    }
  }

  private @Nullable Problem overlap(Table.Row first, Table.Row row) {
    String id = table.rule().id();
    if (table.hit() == Table.Hit.FIRST) {
      return Possible.together(List.of(row.match()), List.of(first.match()))
          ? null
          : new Problem(
              row.place(),
              id + ": this row is never reached; the one at " + first.place() + " comes first",
              "Move it up, or remove it.");
    }
    boolean mayNot =
        table.hit() == Table.Hit.UNIQUE
            || (table.hit() == Table.Hit.ANY && !Objects.equals(first.outcome(), row.outcome()));
    return mayNot && Possible.together(List.of(first.match(), row.match()), List.of())
        ? new Problem(
            row.place(),
            id + ": this row and the one at " + first.place() + " can both speak of one value",
            "Narrow one of them: where both do, the table leaves it open.")
        : null;
  }

  /** Ranges of one value, where all else in their rows is alike. */
  private record Column(String value, String rest) {}

  private record Ranged(Interval range, Dimension dimension, Table.Row row) {}

  private void gaps() {
    Map<Column, List<Ranged>> columns = new LinkedHashMap<>();
    for (Table.Row row : table.rows()) {
      List<Condition> parts = parts(row.match());
      for (int i = 0; i < parts.size(); i++) {
        Condition.Compare first = firstOfRange(parts.get(i));
        if (first != null) {
          List<Condition> rest = new ArrayList<>(parts);
          rest.remove(i);
          Interval range = range(parts.get(i));
          if (range.from() < range.to()) {
            columns
                .computeIfAbsent(
                    new Column(first.term().component().words(), rest.toString()),
                    key -> new ArrayList<>())
                .add(new Ranged(range, dimension(first), row));
          }
        }
      }
    }
    columns.forEach(this::gaps);
  }

  private void gaps(Column column, List<Ranged> ranges) {
    ranges.sort(Comparator.comparing(ranged -> ranged.range().from()));
    double to = Double.NEGATIVE_INFINITY;
    Ranged before = null;
    for (Ranged next : ranges) {
      if (before != null && before.range().leavesGapBefore(next.range())) {
        Dimension dimension = next.dimension();
        found.add(
            new Problem(
                next.row().place(),
                table.rule().id()
                    + ": no row speaks of "
                    + column.value()
                    + " between "
                    + QuantityWriter.shortest(dimension, before.range().to())
                    + " and "
                    + QuantityWriter.shortest(dimension, next.range().from())
                    + ", all else as here",
                "Close it with a row, or widen one, if it was seen."));
      }
      if (next.range().to() > to) {
        to = next.range().to();
        before = next;
      }
    }
  }

  private static Dimension dimension(Condition.Compare compare) {
    return ((Limit.Stated) compare.limit()).value().dimension();
  }

  private static List<Condition> parts(Condition match) {
    return match instanceof Condition.All all && firstOfRange(all) == null
        ? all.parts()
        : List.of(match);
  }

  /** The first comparison of a range; null where a condition is no range of one value. */
  private static Condition.@Nullable Compare firstOfRange(Condition condition) {
    List<? extends Condition> parts = Moved.parts(condition);
    boolean two =
        parts.size() == 2
            && (condition instanceof Condition.All || condition instanceof Condition.Some);
    if (two
        && parts.get(0) instanceof Condition.Compare from
        && parts.get(1) instanceof Condition.Compare to
        && from.term().equals(to.term())
        && from.limit() instanceof Limit.Stated
        && to.limit() instanceof Limit.Stated) {
      return from;
    }
    return null;
  }

  private static Interval range(Condition condition) {
    Interval range = Interval.ALL;
    for (Condition part : Moved.parts(condition)) {
      Condition.Compare compare = (Condition.Compare) part;
      range =
          range.and(Interval.of(compare.sense(), ((Limit.Stated) compare.limit()).value().value()));
    }
    return range;
  }
}
