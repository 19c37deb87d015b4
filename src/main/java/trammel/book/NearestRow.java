package trammel.book;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.fact.Fact;
import trammel.quantity.Decision;

/**
 * The row of a table that comes nearest to a fact that no row speaks of.
 *
 * @param row the row
 * @param missed what of it does not hold
 */
public record NearestRow(Table.Row row, List<Traced> missed) {

  /** The row of which the fewest conditions do not hold; the first of equals. */
  public static Optional<NearestRow> of(Table table, Fact fact, FactSet facts) {
    return table.rows().stream()
        .map(row -> new NearestRow(row, missed(Traced.of(row.match(), fact, facts))))
        .min(Comparator.comparing(near -> near.missed.size()));
  }

  private static List<Traced> missed(Traced match) {
    List<Traced> parts =
        match.condition() instanceof Condition.All ? match.parts() : List.of(match);
    return parts.stream().filter(part -> part.decision() != Decision.MET).toList();
  }
}
