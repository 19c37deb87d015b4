package trammel.book;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;

/**
 * What a table makes of one fact.
 *
 * @param decision met where nothing is to be said; open where a row that may or may not match, or
 *     rows that contradict each other, could change what is said
 * @param kind what it amounts to; null where nothing is to be said
 * @param results what the deciding rows tell, by column
 * @param comparison what keeps it open; null where a row decides
 * @param rows the rows that match or may match, in order
 */
public record TableRuling(
    Table table,
    Fact fact,
    Decision decision,
    @Nullable RuleKind kind,
    Map<String, String> results,
    @Nullable Comparison comparison,
    List<Table.Row> rows) {

  /** What is reported, in the words of cases. */
  public String result() {
    return kind == null ? Case.NOTHING : Ruling.result(kind, decision, fact.standing());
  }
}
