package trammel.read;

import org.jspecify.annotations.Nullable;

/**
 * What a value takes from what encloses it.
 *
 * @param source who says so, from the nearest enclosing {@code source} key; null where none does
 * @param key the key in the enclosing map; null where a value does not stand in a map of values
 * @param component the component it is bound to; null for a root
 */
record Scope(
    @Nullable String source, @Nullable String key, RecordShape.@Nullable Component component) {
  static final String SOURCE = "source";

  /** The scope of the values of a map, which may name their source. */
  Scope inside(MapNode map) {
    return map.get(SOURCE)
        .filter(node -> node instanceof TextNode && !node.isBlank())
        .map(node -> new Scope(((TextNode) node).text(), null, component))
        .orElse(key == null ? this : new Scope(source, null, component));
  }

  Scope at(RecordShape.Component inner) {
    return new Scope(source, null, inner);
  }

  Scope under(String mapKey) {
    return new Scope(source, mapKey, component);
  }
}
