package trammel.read;

import java.util.List;
import java.util.Optional;

/**
 * Keys and their values, in the order of the file.
 *
 * @param entries no two with one key
 */
public record MapNode(Place place, Trail trail, List<Entry> entries) implements Node {
  /**
   * A key with its value.
   *
   * @param place where the key stands
   */
  public record Entry(String key, Place place, Node value) {}

  public MapNode {
    entries = List.copyOf(entries);
  }

  /** The value of a key. */
  public Optional<Node> get(String key) {
    for (Entry entry : entries) {
      if (entry.key().equals(key)) {
        return Optional.of(entry.value());
      }
    }
    return Optional.empty();
  }

  @Override
  public String words() {
    return "keys and values";
  }
}
