package trammel.read;

import org.jspecify.annotations.Nullable;

/**
 * The keys and indexes that lead to a value, held as a chain so that a deep file costs no more than
 * a flat one.
 *
 * @param parent what leads to the enclosing value; null for the root
 * @param step a key, or an index in brackets
 */
public record Trail(@Nullable Trail parent, String step) {
  /** The trail of a file's root. */
  public static final Trail ROOT = new Trail(null, "");

  /** The trail of a key. */
  public Trail key(String key) {
    return new Trail(this, key);
  }

  /** The trail of a list item, from 0. */
  public Trail item(int index) {
    return new Trail(this, "[" + index + "]");
  }

  /** Such as {@code lines[2].part}; empty for the root. */
  @Override
  public String toString() {
    if (parent == null) {
      return step;
    }
    String before = parent.toString();
    return before.isEmpty() || step.startsWith("[") ? before + step : before + "." + step;
  }
}
