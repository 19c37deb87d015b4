package trammel.vocabulary;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Dimension;
import trammel.read.Measured;
import trammel.read.Words;

/**
 * One component of a fact.
 *
 * @param fact the name of its fact, such as {@code clearance}
 * @param ownName its name within the fact, such as {@code gap}
 * @param name its full name, such as {@code clearance.gap}
 * @param type what it holds
 * @param dimension what a quantity measures; null for anything else
 * @param words what a fitter would call it
 * @param choices the names it may have; empty unless the list is closed
 * @param declared the component itself
 */
public record Component(
    String fact,
    String ownName,
    String name,
    ValueType type,
    @Nullable Dimension dimension,
    String words,
    List<String> choices,
    RecordComponent declared) {

  static Component of(String fact, RecordComponent declared) {
    String own = Words.kebab(declared.getName());
    Measured measured = declared.getAnnotation(Measured.class);
    Class<?> type = declared.getType();
    List<String> choices =
        type.isEnum()
            ? Stream.of(type.getEnumConstants())
                .map(constant -> Words.kebab(((Enum<?>) constant).name()))
                .toList()
            : List.of();
    return new Component(
        fact,
        own,
        fact + "." + own,
        ValueType.of(declared),
        measured == null ? null : measured.value(),
        measured == null || measured.name().isEmpty() ? Words.spaced(own) : measured.name(),
        choices,
        declared);
  }

  /** What the fact holds there; null only where a record leaves a text out. */
  public @Nullable Object of(Fact of) {
    Method accessor = declared.getAccessor();
    try {
      return accessor.invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(name + " cannot be read", e);
    }
  }
}
