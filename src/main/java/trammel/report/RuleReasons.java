package trammel.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import trammel.book.Condition;
import trammel.book.ConditionWords;
import trammel.book.FactSet;
import trammel.book.NearestRow;
import trammel.book.Reason;
import trammel.book.Ruling;
import trammel.book.Table;
import trammel.book.TableRuling;
import trammel.book.Traced;
import trammel.book.Tried;
import trammel.fact.Fact;
import trammel.quantity.Decision;

/** Why a rule of a sheet spoke of a fact or did not, line by line. */
final class RuleReasons {
  private RuleReasons() {}

  /**
   * A line.
   *
   * @param depth how deep it lies inside others
   */
  record Line(int depth, String text) {}

  /** Adds lines to a page, the outermost after some spaces. */
  static void print(List<Line> lines, String indent, Page page) {
    for (Line line : lines) {
      String first = indent + "  ".repeat(line.depth);
      page.paragraph(first, first + "  ", line.text);
    }
  }

  /** Of a case. */
  static List<Line> of(Tried tried) {
    if (tried.why() != null) {
      return of(tried.why());
    }
    return tried.read() == null ? List.of() : of(tried.read(), tried.shown().facts());
  }

  /** Of a rule: whether it applies, and if it does, whether what it demands holds. */
  static List<Line> of(Ruling ruling) {
    List<Line> lines = new ArrayList<>();
    Traced where = ruling.where();
    if (where != null) {
      lines.addAll(lines("applies where ", where));
      if (where.decision() == Decision.NOT_MET) {
        return lines;
      }
    }
    lines.addAll(lines("demands ", ruling.demand()));
    return lines;
  }

  /** Of a table: the rows that speak of the fact, or the one that comes nearest. */
  static List<Line> of(TableRuling ruling, Collection<? extends Fact> facts) {
    Table table = ruling.table();
    FactSet set = FactSet.of(facts);
    Condition where = table.rule().where();
    if (where != null) {
      Traced applies = Traced.of(where, ruling.fact(), set);
      if (applies.decision() != Decision.MET) {
        return lines("applies where ", applies);
      }
    }
    if (!ruling.rows().isEmpty()) {
      return ruling.rows().stream().map(row -> new Line(0, words(row))).toList();
    }
    List<Line> lines = new ArrayList<>();
    NearestRow.of(table, ruling.fact(), set)
        .ifPresent(
            near -> {
              lines.add(new Line(0, "no row speaks of it; nearest is " + words(near.row())));
              near.missed()
                  .forEach(
                      missed ->
                          lines("", missed)
                              .forEach(line -> lines.add(new Line(line.depth() + 1, line.text()))));
            });
    return lines;
  }

  private static String words(Table.Row row) {
    String results =
        row.results().values().stream()
            .filter(text -> !text.isBlank())
            .map(text -> ", " + text)
            .collect(Collectors.joining());
    return "the row at "
        + row.place()
        + ": "
        + (row.outcome() == null ? "fits" : row.outcome().toString())
        + results;
  }

  private static List<Line> lines(String head, Traced traced) {
    return Reason.of(traced).stream()
        .map(
            reason ->
                new Line(
                    reason.depth(),
                    (reason.depth() == 0 ? head : "") + reason.words() + ": " + outcome(reason)))
        .toList();
  }

  private static String outcome(Reason reason) {
    String outcome = ConditionWords.outcome(reason.decision());
    if (reason.found().startsWith(outcome)) {
      return reason.found();
    }
    return outcome + (reason.found().isEmpty() ? "" : "; " + reason.found());
  }
}
