package trammel.book;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.read.Place;

/**
 * A rule whose demand is a table of what was seen.
 *
 * @param rule what the table says of itself; its demand is not used
 * @param hit which of several rows counts
 * @param rows what was seen, in order
 */
public record Table(SheetRule rule, Hit hit, List<Row> rows) {
  public Table {
    rows = List.copyOf(rows);
  }

  /**
   * Which of several matching rows counts: the hit policies of OMG DMN 1.x, clause 8.2.8 "hit
   * policy" (clause from memory).
   */
  public enum Hit {
    /** Only one row may match (U). */
    UNIQUE,
    /** The first that matches (F). */
    FIRST,
    /** Several may match if they say the same (A). */
    ANY,
    /** All that match, together (C); the gravest outcome counts. */
    COLLECT
  }

  /**
   * A row.
   *
   * @param match when it speaks of a fact
   * @param outcome what was seen; null where it fits
   * @param results what else the row tells, by the name of its column
   */
  public record Row(
      Place place, Condition match, @Nullable RuleKind outcome, Map<String, String> results) {}
}
