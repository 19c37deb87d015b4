package trammel.read;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.read.RecordShape.Component;
import trammel.read.TypeShape.Kind;

/**
 * From a tree of values to records.
 *
 * <p>Keys are the components' names in kebab case. All that is wrong in a tree is found in one
 * pass: a value that cannot be bound does not keep its neighbors from being looked at. A value left
 * empty ({@code key:} with nothing after it) counts as not written.
 *
 * <p>A text under the key {@code source} may stand in every map and is the source of all quantities
 * below it, until another one stands nearer.
 *
 * <p>A record's constructor, and a token's {@code parse}, may refuse what they are given with an
 * {@link IllegalArgumentException}: the first line of its message becomes the problem, a second
 * line the advice.
 */
public final class Binder {
  private final Problems problems;
  private final TextBinder texts;
  private final KeyCheck keys;

  private Binder(Problems problems) {
    this.problems = problems;
    this.texts = new TextBinder(problems);
    this.keys = new KeyCheck(problems);
  }

  /**
   * Reads a file into a record.
   *
   * @param shownAs the file's name in messages
   * @throws UnreadableFile with everything that is wrong with the file
   */
  public static <T> T read(Class<T> type, Path shownAs, Path file) {
    Problems problems = new Problems();
    Optional<T> bound =
        YamlReader.read(shownAs, file, problems).flatMap(node -> bind(type, node, problems));
    problems.refuseIfAny();
    return bound.orElseThrow();
  }

  /**
   * Binds a tree to a record, or to one of the records of a sealed interface.
   *
   * @param problems takes everything that is wrong
   * @return the record; empty if a problem was found in the tree
   * @throws IllegalStateException if no file can hold such a record: an error in the program
   */
  public static <T> Optional<T> bind(Class<T> type, Node node, Problems problems) {
    int before = problems.count();
    Object bound =
        new Binder(problems).value(TypeShape.of(type), node, new Scope(null, null, null));
    return problems.count() > before ? Optional.empty() : Optional.ofNullable(type.cast(bound));
  }

  /** The value, or null if it was refused. */
  private @Nullable Object value(TypeShape shape, Node node, Scope scope) {
    return switch (shape.kind()) {
      case TEXT, YES_NO, COUNT, DATE, CHOICE, TOKEN -> texts.bind(shape, node);
      case QUANTITY -> new QuantityBinder(problems, texts).bind(node, scope);
      case LIST -> list(shape.held(), node, scope);
      case MAP -> map(shape, node, scope);
      case RECORD -> mapping(node).map(map -> record(shape.type(), map, scope, null)).orElse(null);
      case VARIANT -> mapping(node).map(map -> variant(shape.type(), map, scope)).orElse(null);
      case PLACE -> node.place();
      case NODE -> node;
    };
  }

  private Optional<MapNode> mapping(Node node) {
    if (node instanceof MapNode map) {
      return Optional.of(map);
    }
    problems.add(
        node.place(),
        node.where() + ": found " + node.words() + "; expected keys and values",
        "Write its keys below it, indented, one on each line.");
    return Optional.empty();
  }

  private @Nullable Object list(TypeShape held, Node node, Scope scope) {
    List<Node> items;
    if (node instanceof ListNode list) {
      items = list.items();
    } else if (node instanceof TextNode) {
      items = List.of(node);
    } else {
      problems.add(
          node.place(),
          node.where() + ": found keys and values; expected a list",
          "Begin each item with \"- \".");
      return null;
    }
    List<Object> bound = new ArrayList<>(items.size());
    for (Node item : items) {
      if (item.isBlank()) {
        problems.add(
            item.place(),
            item.where() + ": an empty list item; expected a value",
            "Write a value after the \"-\", or remove the line.");
        continue;
      }
      Object value = value(held, item, scope);
      if (value != null) {
        bound.add(value);
      }
    }
    return List.copyOf(bound);
  }

  private @Nullable Object map(TypeShape shape, Node node, Scope scope) {
    Optional<MapNode> map = mapping(node);
    if (map.isEmpty()) {
      return null;
    }
    TypeShape keyShape = shape.key() == null ? TypeShape.of(String.class) : shape.key();
    TypeShape held = shape.held();
    boolean mayNameSource = namesSource(held) && !Choices.isChoice(keyShape, Scope.SOURCE);
    Scope inner = mayNameSource ? scope.inside(map.get()) : scope;
    Map<Object, Object> bound = new LinkedHashMap<>();
    for (MapNode.Entry entry : map.get().entries()) {
      if (mayNameSource && isSource(entry)) {
        continue;
      }
      Object key =
          texts.bind(
              keyShape, new TextNode(entry.place(), entry.value().trail(), entry.key(), true));
      if (entry.value().isBlank() && held.kind() != Kind.RECORD) {
        problems.add(
            entry.value().place(),
            entry.value().where()
                + ": no value; expected "
                + texts.expected(held, scope.component()),
            "Write a value after the \":\", or remove the line.");
        continue;
      }
      Object value = value(held, orEmpty(entry.value(), held), inner.under(entry.key()));
      if (key != null && value != null) {
        bound.put(key, value);
      }
    }
    return Collections.unmodifiableMap(bound);
  }

  /** In a map of texts {@code source} is a key like any other. */
  private static boolean namesSource(TypeShape held) {
    Kind kind = held.innermost().kind();
    return kind == Kind.QUANTITY || kind == Kind.RECORD || kind == Kind.VARIANT;
  }

  private static boolean isSource(MapNode.Entry entry) {
    return entry.key().equals(Scope.SOURCE) && entry.value() instanceof TextNode;
  }

  private static Node orEmpty(Node node, TypeShape shape) {
    return node.isBlank() && shape.kind() == Kind.RECORD
        ? new MapNode(node.place(), node.trail(), List.of())
        : node;
  }

  private @Nullable Object variant(Class<?> type, MapNode map, Scope scope) {
    VariantShape shape = VariantShape.of(type);
    Optional<Node> chosen = map.get(shape.key()).filter(node -> !node.isBlank());
    if (chosen.isEmpty()) {
      keys.missingChoice(map, shape.key(), shape.variants().keySet());
      return null;
    }
    String name = texts.choice(chosen.get(), shape.variants().keySet());
    Class<?> variant = name == null ? null : shape.variants().get(name);
    return variant == null ? null : record(variant, map, scope, shape.key());
  }

  private @Nullable Object record(
      Class<?> type, MapNode map, Scope scope, @Nullable String discriminator) {
    RecordShape shape = RecordShape.of(type);
    int before = problems.count();
    Node[] written = new Node[shape.components().size()];
    List<MapNode.Entry> inline = new ArrayList<>();
    for (MapNode.Entry entry : map.entries()) {
      int index = shape.indexOf(entry.key());
      if (index >= 0 && !takesMapKey(shape.components().get(index), scope)) {
        written[index] = entry.value();
        if (shape.components().get(index).inline()) {
          inline.add(entry);
        }
      } else if (!isSource(entry) && !entry.key().equals(discriminator)) {
        keys.unknown(entry, map, keysFor(shape, scope));
      }
    }
    Scope inner = scope.inside(map);
    Object[] values = new Object[written.length];
    for (int i = 0; i < values.length; i++) {
      Component component = shape.components().get(i);
      Node node = written[i];
      if (component.shape().kind() == Kind.PLACE) {
        values[i] = map.place();
      } else if (component.inline()) {
        MapNode own = new MapNode(map.place(), map.trail(), inline);
        values[i] = record(component.shape().type(), own, inner, null);
      } else if (takesMapKey(component, scope)) {
        values[i] = scope.key();
      } else if (node == null || node.isBlank()) {
        values[i] = missing(component, map, node, inner);
      } else {
        values[i] = value(component.shape(), node, inner.at(component));
      }
    }
    return problems.count() > before ? null : construct(shape, values, map);
  }

  private static boolean takesMapKey(Component component, Scope scope) {
    return component.takesKey() && scope.key() != null;
  }

  /** What a component is whose key the file does not have, or has without a value. */
  private @Nullable Object missing(
      Component component, MapNode map, @Nullable Node blank, Scope scope) {
    Trail trail = map.trail().key(component.key());
    if (component.required() || component.takesKey()) {
      String expected = texts.expected(component.shape(), component);
      if (blank == null) {
        keys.missing(map, component.key(), expected);
      } else {
        keys.blank(map, component.key(), blank, expected);
      }
      return null;
    }
    if (component.nullable()) {
      return null;
    }
    return switch (component.shape().kind()) {
      case LIST -> List.of();
      case MAP -> Map.of();
      case YES_NO -> false;
      case QUANTITY -> QuantityBinder.absent(component, map.place().file(), trail);
      case RECORD -> {
        MapNode empty = new MapNode(map.place(), trail, List.of());
        yield record(component.shape().type(), empty, scope.at(component), null);
      }
      default -> throw new IllegalStateException(component + " cannot be left out");
    };
  }

  private static List<String> keysFor(RecordShape shape, Scope scope) {
    return shape.components().stream()
        .filter(component -> !takesMapKey(component, scope))
        .flatMap(component -> component.keys().stream())
        .toList();
  }

  private @Nullable Object construct(RecordShape shape, Object[] values, MapNode map) {
    try {
      return shape.constructor().newInstance(values);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException complaint) {
        Refusal refusal = Refusal.of(complaint, "Correct the values that stand here.");
        problems.add(map.place(), map.where() + ": " + refusal.what(), refusal.advice());
        return null;
      }
      throw new IllegalStateException(shape.type().getName() + " cannot be made", e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(shape.type().getName() + " cannot be made", e);
    }
  }
}
