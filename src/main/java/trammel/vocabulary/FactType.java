package trammel.vocabulary;

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
 */
public record FactType(
    String name,
    Class<? extends Fact> type,
    String since,
    List<PartKind> concerns,
    List<Component> components) {

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
        List.copyOf(components));
  }

  /** The component of this name within the fact, such as {@code gap}. */
  public Optional<Component> component(String ownName) {
    return components.stream().filter(one -> one.ownName().equals(ownName)).findFirst();
  }
}
