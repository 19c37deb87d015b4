package trammel.book;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import trammel.book.SheetFile.ColumnEntry;
import trammel.book.SheetFile.Reads;
import trammel.book.SheetFile.TableEntry;
import trammel.read.CsvRows;
import trammel.read.ListNode;
import trammel.read.Node;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;
import trammel.vocabulary.Vocabulary;

/** Reads one table with its rows, from the sheet or from a file beside it. */
final class TableReader {
  private static final String OUTCOME = "outcome";
  private static final String FITS = "fits";
  private static final Pattern CSV = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*\\.csv");

  private final Manifest manifest;
  private final BookFolder folder;
  private final Problems problems;

  TableReader(Manifest manifest, BookFolder folder, Problems problems) {
    this.manifest = manifest;
    this.folder = folder;
    this.problems = problems;
  }

  /** The table, or null if anything was refused. */
  @Nullable Table read(TableEntry entry) {
    int before = problems.count();
    Ids.rule(entry.table(), entry.place(), problems);
    RuleReader.since(manifest, entry.since(), entry.place(), problems);
    if (entry.kind() == RuleKind.LAW || manifest.kind() == Manifest.Kind.LAW) {
      problems.add(
          entry.place(),
          "a table in a book of the law; expected rules",
          "What was seen is a shop's; the law has clauses.");
    }
    FactType about = LeafReader.fact(entry.about(), entry.place(), problems);
    if (about == null) {
      return null;
    }
    Condition where =
        entry.where() == null ? null : new ConditionReader(about, problems).read(entry.where());
    List<CellReader> columns = columns(entry, about);
    results(entry);
    TextCheck check = new TextCheck(entry.place(), problems);
    check.length("title", entry.title());
    check.length("reason", entry.reason());
    check.length("source", entry.source());
    check.names("says", entry.says(), about, false, entry.results());
    if (entry.open() != null) {
      check.names("open", entry.open(), about, false, Set.of());
    }
    if (problems.count() > before) {
      return null;
    }
    List<Table.Row> rows = rows(entry, columns);
    Set<RuleKind> kinds = EnumSet.of(entry.kind());
    rows.forEach(row -> Optional.ofNullable(row.outcome()).ifPresent(kinds::add));
    Set<Component> asked = new HashSet<>(Asked.of(where));
    columns.forEach(column -> asked.add(column.term().component()));
    List<Case> cases =
        new CaseReader(about, kinds, asked, problems).read(entry.cases(), entry.place());
    return problems.count() > before
        ? null
        : new Table(rule(entry, about, where, cases), entry.hit(), rows);
  }

  private static SheetRule rule(
      TableEntry entry, FactType about, @Nullable Condition where, List<Case> cases) {
    return new SheetRule(
        entry.place(),
        entry.table(),
        entry.title(),
        entry.kind(),
        entry.says(),
        entry.open() == null ? "" : entry.open(),
        entry.reason(),
        entry.source(),
        entry.since(),
        false,
        entry.stricterThan(),
        List.of(),
        entry.settle(),
        null,
        about,
        where,
        Demand.TELLS,
        cases);
  }

  private List<CellReader> columns(TableEntry entry, FactType about) {
    List<CellReader> columns = new ArrayList<>();
    if (entry.columns().isEmpty() || entry.columns().size() > Limits.COLUMNS) {
      problems.add(
          entry.place(),
          entry.columns().size() + " columns; expected 1 to " + Limits.COLUMNS,
          "Name the values that rows are found by.");
    }
    for (ColumnEntry column : entry.columns()) {
      CellReader reader = column(column, about);
      if (reader != null) {
        columns.add(reader);
      }
    }
    return columns;
  }

  private @Nullable CellReader column(ColumnEntry column, FactType about) {
    Component component = Vocabulary.component(column.value()).orElse(null);
    if (component == null) {
      problems.add(
          column.place(),
          "no value is called " + Words.quoted(column.value()),
          Vocabulary.nearestComponent(column.value())
              .map(near -> "Did you mean " + near + "?")
              .orElse("Names are fact.component, such as clearance.gap."));
      return null;
    }
    if (column.of() == null && !component.fact().equals(about.name())) {
      problems.add(
          column.place(),
          component.name() + " is of another fact than " + about.name(),
          "Say where that fact stands: of: same-wheel, same-axle, vehicle or any.");
      return null;
    }
    if (column.reads() != Reads.EQUAL && component.dimension() == null) {
      problems.add(
          column.place(),
          component.name() + " is " + component.type().words() + "; expected a quantity",
          "Write reads: equal.");
      return null;
    }
    if ((column.reads() == Reads.NO_WORSE_THAN) != (column.worse() != null)) {
      problems.add(
          column.place(),
          column.worse() == null
              ? "reads no-worse-than, and does not say which way is worse"
              : "says which way is worse, and does not read no-worse-than",
          column.worse() == null ? "Write worse: larger, or worse: smaller." : "Remove worse.");
      return null;
    }
    return new CellReader(
        column.place(),
        new Term(component, column.of() != null),
        column.of(),
        Vocabulary.fact(component.fact()).orElseThrow(),
        column.reads(),
        column.worse());
  }

  private void results(TableEntry entry) {
    for (String result : entry.results()) {
      if (!result.matches("[a-z]+(-[a-z]+)*")) {
        problems.add(
            entry.place(),
            "a result called " + Words.quoted(result) + "; expected letters a to z and hyphens",
            "Write for example trimming.");
      }
    }
  }

  private List<Table.Row> rows(TableEntry entry, List<CellReader> columns) {
    List<ListNode> written = written(entry, columns);
    if (written.size() > Limits.ROWS) {
      problems.add(
          entry.place(),
          written.size() + " rows; expected at most " + Limits.ROWS,
          "Make several tables of it.");
      return List.of();
    }
    List<Table.Row> rows = new ArrayList<>();
    Map<String, Place> known = new HashMap<>();
    for (ListNode row : written) {
      Table.Row read = row(row, entry, columns);
      if (read == null) {
        continue;
      }
      Place first = known.putIfAbsent(read.match().toString(), row.place());
      if (first != null && entry.hit() != Table.Hit.COLLECT) {
        problems.add(
            row.place(),
            "a second row for the same values; the first is in line " + first.line(),
            "Keep one, or write hit: collect.");
      }
      rows.add(read);
    }
    return rows;
  }

  private List<ListNode> written(TableEntry entry, List<CellReader> columns) {
    if ((entry.csv() == null) == entry.rows().isEmpty()) {
      problems.add(
          entry.place(), "expected either rows or csv", "Write the rows here, or name their file.");
      return List.of();
    }
    if (entry.csv() != null) {
      return file(entry.csv(), entry, columns);
    }
    List<ListNode> rows = new ArrayList<>();
    for (Node node : entry.rows()) {
      if (node instanceof ListNode list) {
        rows.add(list);
      } else {
        problems.add(
            node.place(),
            node.where() + ": found " + node.words() + "; expected the cells of a row",
            "Write them in brackets: [20 mm, fits].");
      }
    }
    return rows;
  }

  private List<ListNode> file(String name, TableEntry entry, List<CellReader> columns) {
    if (!CSV.matcher(name).matches() || !folder.names(problems).contains(name)) {
      problems.add(
          entry.place(),
          "no file of the book is called " + Words.quoted(name) + "; expected a plain name",
          "Put it beside the sheet and write its name alone, such as seen.csv.");
      return List.of();
    }
    List<ListNode> rows =
        folder
            .read(name, Limits.FILE, problems)
            .flatMap(bytes -> CsvRows.parse(folder.shownAs(name), bytes, Limits.ROWS, problems))
            .orElse(List.of());
    if (rows.isEmpty()) {
      return List.of();
    }
    List<String> heading = new ArrayList<>();
    columns.forEach(column -> heading.add(column.term().component().name()));
    heading.addAll(entry.results());
    List<String> found =
        rows.get(0).items().stream().map(cell -> ((TextNode) cell).text()).toList();
    if (!found.equals(heading)) {
      problems.add(
          rows.get(0).place(),
          "the heading is " + String.join(",", found) + "; expected " + String.join(",", heading),
          "Name the columns as the table does, in its order, then the results.");
      return List.of();
    }
    return rows.subList(1, rows.size());
  }

  private Table.@Nullable Row row(ListNode row, TableEntry entry, List<CellReader> columns) {
    int width = columns.size() + entry.results().size();
    if (row.items().size() != width
        || !row.items().stream().allMatch(cell -> cell instanceof TextNode)) {
      problems.add(
          row.place(),
          row.where() + ": " + row.items().size() + " cells; expected " + width + " values",
          "One for each column, then one for each result; - where anything will do.");
      return null;
    }
    List<TextNode> cells = row.items().stream().map(cell -> (TextNode) cell).toList();
    int before = problems.count();
    RuleKind outcome = entry.kind();
    Map<String, String> results = new LinkedHashMap<>();
    for (int i = 0; i < entry.results().size(); i++) {
      String name = entry.results().get(i);
      TextNode cell = cells.get(columns.size() + i);
      if (name.equals(OUTCOME)) {
        outcome = outcome(cell);
      } else {
        new TextCheck(cell.place(), problems).length(name, cell.text());
        results.put(name, cell.text());
      }
    }
    List<Condition> match = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      if (!CellReader.isAny(cells.get(i).text())) {
        Condition condition = columns.get(i).read(cells.get(i), outcome == null, problems);
        if (condition != null) {
          match.add(condition);
        }
      }
    }
    return problems.count() > before
        ? null
        : new Table.Row(row.place(), new Condition.All(match), outcome, Map.copyOf(results));
  }

  private @Nullable RuleKind outcome(TextNode cell) {
    if (cell.text().equals(FITS)) {
      return null;
    }
    List<String> known = new ArrayList<>(List.of(FITS));
    for (RuleKind kind : RuleKind.values()) {
      if (kind.toString().equals(cell.text()) && kind != RuleKind.LAW) {
        return kind;
      }
      known.add(kind.toString());
    }
    known.remove(RuleKind.LAW.toString());
    problems.add(
        cell.place(),
        cell.where() + ": found " + cell.words() + "; expected " + Words.anyOf(known),
        Words.didYouMean(cell.text(), known, "Write one of these."));
    return null;
  }
}
