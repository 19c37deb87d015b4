package trammel.book;

import java.util.List;
import trammel.catalog.AssumedValue;

/**
 * A rule book, read and checked.
 *
 * @param manifest what it says of itself
 * @param rules its rules, in the order of its files
 * @param tables its tables, likewise
 * @param defaults values to be assumed where nobody gives one
 */
public record Book(
    Manifest manifest, List<SheetRule> rules, List<Table> tables, List<AssumedValue> defaults) {
  public Book {
    rules = List.copyOf(rules);
    tables = List.copyOf(tables);
    defaults = List.copyOf(defaults);
  }

  /**
   * What of the book can speak of a vehicle: the rest names others as its condition, and would be
   * silent in any case. A shop's book of forty vehicles then costs each of them its own rules only.
   */
  public Book over(String vehicle) {
    return new Book(
        manifest,
        rules.stream().filter(rule -> mayApply(rule, vehicle)).toList(),
        tables.stream()
            .filter(table -> mayApply(table.rule(), vehicle))
            .map(table -> over(table, vehicle))
            .toList(),
        defaults);
  }

  private static boolean mayApply(SheetRule rule, String vehicle) {
    return rule.where() == null || NamedVehicles.mayHold(rule.where(), vehicle);
  }

  private static Table over(Table table, String vehicle) {
    return new Table(
        table.rule(),
        table.hit(),
        table.rows().stream().filter(row -> NamedVehicles.mayHold(row.match(), vehicle)).toList());
  }

  /** What reports call it by. */
  public String name() {
    return manifest.name();
  }
}
