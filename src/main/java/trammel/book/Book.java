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

  /** What reports call it by. */
  public String name() {
    return manifest.name();
  }
}
