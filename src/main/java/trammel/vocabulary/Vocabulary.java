package trammel.vocabulary;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.fact.Fact;
import trammel.read.Words;

/** Every fact that rules may speak of, by name. */
public final class Vocabulary {
  private static final Map<String, FactType> FACTS = facts();
  private static final Map<String, Component> COMPONENTS = components();
  private static final Version VERSION =
      FACTS.values().stream()
          .map(fact -> Version.parse(fact.since()))
          .max(Comparator.naturalOrder())
          .orElseThrow();

  private Vocabulary() {}

  private static Map<String, FactType> facts() {
    Map<String, FactType> facts = new LinkedHashMap<>();
    Arrays.stream(Fact.class.getPermittedSubclasses())
        .map(type -> FactType.of(type.asSubclass(Fact.class)))
        .sorted(Comparator.comparing(FactType::name))
        .forEach(fact -> facts.put(fact.name(), fact));
    return Collections.unmodifiableMap(facts);
  }

  private static Map<String, Component> components() {
    Map<String, Component> components = new LinkedHashMap<>();
    for (FactType fact : FACTS.values()) {
      fact.components().forEach(component -> components.put(component.name(), component));
    }
    return Collections.unmodifiableMap(components);
  }

  /** Every fact, by name. */
  public static Collection<FactType> all() {
    return FACTS.values();
  }

  /** The fact of this name. */
  public static Optional<FactType> fact(String name) {
    return Optional.ofNullable(FACTS.get(name));
  }

  /** The fact that is kept in this record. */
  public static FactType fact(Class<? extends Fact> type) {
    return FACTS.values().stream()
        .filter(fact -> fact.type() == type)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(type + " is no fact"));
  }

  /** The component of this full name, such as {@code clearance.gap}. */
  public static Optional<Component> component(String name) {
    return Optional.ofNullable(COMPONENTS.get(name));
  }

  /** The name of a fact that was most likely meant, if one is near. */
  public static Optional<String> nearestFact(String name) {
    return Words.nearest(name, FACTS.keySet());
  }

  /**
   * The name of a component that was most likely meant, if one is near: of the same fact if that is
   * known, else of any.
   */
  public static Optional<String> nearestComponent(String name) {
    int dot = name.indexOf('.');
    FactType fact = dot < 0 ? null : FACTS.get(name.substring(0, dot));
    if (fact == null) {
      return Words.nearest(name, COMPONENTS.keySet());
    }
    List<String> own = fact.components().stream().map(Component::ownName).toList();
    return Words.nearest(name.substring(dot + 1), own).map(near -> fact.name() + "." + near);
  }

  /** The newest version that any fact names. */
  public static Version version() {
    return VERSION;
  }
}
