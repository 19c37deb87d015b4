package trammel.book;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.catalog.PartKind;

/**
 * What a rule asks, as the condition that must hold.
 *
 * @param form how the sheet writes it
 * @param condition what must hold
 * @param part the kind of part that must be there; null where none is asked for, or one part number
 */
public record Demand(Form form, Condition condition, @Nullable PartKind part) {

  /** How a sheet writes a demand. */
  public enum Form {
    DEMANDS,
    NEEDS,
    EXCLUDES,
    TELLS
  }

  /** The demand of a rule that only tells: never met, so that it speaks wherever it applies. */
  static final Demand TELLS = new Demand(Form.TELLS, new Condition.Any(List.of()), null);
}
