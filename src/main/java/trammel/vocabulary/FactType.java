package trammel.vocabulary;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.catalog.PartKind;
import trammel.fact.Fact;
import trammel.read.Words;

/**
 * One kind of fact.
 *
 * @param name as rules write it, such as {@code tire-on-rim}
 * @param type the record
 * @param since the version of the vocabulary that first had it
 * @param concerns the kinds of part whose fit it describes
 * @param components what it holds, in order
 * @param constructor makes one of its components' values
 */
public record FactType(
    String name,
    Class<? extends Fact> type,
    String since,
    List<PartKind> concerns,
    List<Component> components,
    Constructor<? extends Fact> constructor) {

  static FactType of(Class<? extends Fact> type) {
    String name = Words.kebab(type.getSimpleName());
    Fact.Since since = type.getAnnotation(Fact.Since.class);
    if (since == null) {
      throw new IllegalStateException(type.getName() + " says not since when it exists");
    }
    Fact.Concerns kinds = type.getAnnotation(Fact.Concerns.class);
    List<Component> components = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      components.add(Component.of(name, component));
    }
    return new FactType(
        name,
        type,
        since.value(),
        kinds == null ? List.of() : List.of(kinds.value()),
        List.copyOf(components),
        constructor(type, components));
  }

  private static Constructor<? extends Fact> constructor(
      Class<? extends Fact> type, List<Component> components) {
    Class<?>[] types =
        components.stream().map(one -> one.declared().getType()).toArray(Class<?>[]::new);
    try {
      return type.getConstructor(types);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type.getName() + " has no public constructor", e);
    }
  }

  /**
   * A fact of this kind.
   *
   * @param values those of its components, in order
   * @throws IllegalArgumentException with what the fact has to say against them
   */
  public Fact make(Object[] values) {
    try {
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(e.getCause().getMessage(), e);
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      throw new IllegalStateException(name + " cannot be made", e);
    }
  }

  /** The component of this name within the fact, such as {@code gap}. */
  public Optional<Component> component(String ownName) {
    for (Component component : components) {
      if (component.ownName().equals(ownName)) {
        return Optional.of(component);
      }
    }
    return Optional.empty();
  }
}
