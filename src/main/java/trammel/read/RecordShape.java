package trammel.read;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.read.TypeShape.Kind;

/**
 * What a file must hold for a record: found out once for each class.
 *
 * <p>A component that a file may leave out is empty (list, map), absent (quantity), false, a record
 * of nothing but such components, or marked nullable; anything else must be {@link Required}.
 */
public final class RecordShape {
  private static final ClassValue<RecordShape> KNOWN =
      new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
          return new RecordShape(type);
        }
      };

  private final Class<?> type;
  private final List<Component> components;
  private final Map<String, Integer> byKey = new HashMap<>();
  private final Constructor<?> constructor;

  /**
   * One component of a record.
   *
   * @param key what files call it
   * @param name the Java name
   * @param shape what it holds
   * @param required whether a file must have it
   * @param nullable whether it is null where a file does not have it
   * @param takesKey whether it takes the key of the enclosing map
   * @param inline whether its keys stand among those of the record that holds it
   * @param measured what its quantities are; null where it has none
   */
  public record Component(
      String key,
      String name,
      TypeShape shape,
      boolean required,
      boolean nullable,
      boolean takesKey,
      boolean inline,
      @Nullable Measured measured) {

    /** Whether files have a key for it, rather than the reader filling it in. */
    public boolean isWritten() {
      return shape.kind() != Kind.PLACE && !inline;
    }

    /** The keys a file may have for it. */
    List<String> keys() {
      return inline ? of(shape.type()).keys() : isWritten() ? List.of(key) : List.of();
    }

    /** What a fitter would call its value. */
    public String words() {
      return measured == null || measured.name().isEmpty() ? Words.spaced(key) : measured.name();
    }
  }

  private RecordShape(Class<?> type) {
    if (!type.isRecord()) {
      throw new IllegalStateException(type.getName() + " is no record");
    }
    this.type = type;
    RecordComponent[] declared = type.getRecordComponents();
    List<Component> all = new ArrayList<>(declared.length);
    for (RecordComponent component : declared) {
      all.add(component(component));
    }
    this.components = List.copyOf(all);
    for (int i = 0; i < components.size(); i++) {
      Component component = components.get(i);
      check(component);
      for (String key : component.keys()) {
        if (byKey.put(key, i) != null) {
          throw wrong(component, "has the key of another component");
        }
      }
    }
    this.constructor = constructor(declared);
  }

  /**
   * The shape of a record class.
   *
   * @throws IllegalStateException if no file can hold such a record, for example because a quantity
   *     is not {@link Measured}: an error in the program, never in a file
   */
  public static RecordShape of(Class<?> type) {
    return KNOWN.get(type);
  }

  /** The shapes of a record and of every record that can stand inside it, each once. */
  public static Set<RecordShape> reachable(Class<?> root) {
    Set<RecordShape> found = new LinkedHashSet<>();
    collect(of(root), found);
    return found;
  }

  private static void collect(RecordShape shape, Set<RecordShape> found) {
    if (found.add(shape)) {
      for (Component component : shape.components) {
        TypeShape inner = component.shape().innermost();
        if (inner.kind() == Kind.RECORD) {
          collect(of(inner.type()), found);
        } else if (inner.kind() == Kind.VARIANT) {
          VariantShape.of(inner.type()).variants().values().forEach(v -> collect(of(v), found));
        }
      }
    }
  }

  private static Component component(RecordComponent declared) {
    Named named = declared.getAnnotation(Named.class);
    TypeShape shape;
    try {
      shape = TypeShape.of(declared.getGenericType());
    } catch (IllegalStateException e) {
      throw new IllegalStateException(
          declared.getDeclaringRecord().getName() + "." + declared.getName(), e);
    }
    return new Component(
        named == null ? Words.kebab(declared.getName()) : named.value(),
        declared.getName(),
        shape,
        declared.isAnnotationPresent(Required.class),
        declared.getAnnotatedType().isAnnotationPresent(Nullable.class),
        declared.isAnnotationPresent(Key.class),
        declared.isAnnotationPresent(Inline.class),
        declared.getAnnotation(Measured.class));
  }

  private void check(Component component) {
    Kind kind = component.shape().kind();
    boolean holdsQuantities = component.shape().innermost().kind() == Kind.QUANTITY;
    if (holdsQuantities != (component.measured() != null)) {
      throw wrong(
          component, holdsQuantities ? "is not @Measured" : "is @Measured, but no quantity");
    }
    if (component.required() && component.nullable()) {
      throw wrong(component, "cannot be both required and nullable");
    }
    if (kind == Kind.PLACE && !component.name().equals("place")) {
      throw wrong(component, "must be named place");
    }
    if (component.takesKey() && kind != Kind.TEXT) {
      throw wrong(component, "takes a key and must be a String");
    }
    if (component.shape().type().isPrimitive() && component.nullable()) {
      throw wrong(component, "cannot be null");
    }
    boolean settled =
        component.required()
            || component.nullable()
            || component.takesKey()
            || component.inline()
            || mayBeLeftOut(component.shape());
    if (!settled) {
      throw wrong(component, "must be @Required or @Nullable");
    }
  }

  private static boolean mayBeLeftOut(TypeShape shape) {
    return switch (shape.kind()) {
      case PLACE, QUANTITY, LIST, MAP -> true;
      case YES_NO -> shape.type().isPrimitive();
      case RECORD ->
          of(shape.type()).components.stream().noneMatch(c -> c.required() || c.takesKey());
      case TEXT, COUNT, DATE, CHOICE, TOKEN, VARIANT, NODE -> false;
    };
  }

  private IllegalStateException wrong(Component component, String what) {
    return new IllegalStateException(type.getName() + "." + component.name() + " " + what);
  }

  private Constructor<?> constructor(RecordComponent[] declared) {
    Class<?>[] types =
        Arrays.stream(declared).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<?> canonical = type.getDeclaredConstructor(types);
      canonical.setAccessible(true);
      return canonical;
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type.getName() + " has no canonical constructor", e);
    }
  }

  public Class<?> type() {
    return type;
  }

  /** The components in their order, with those the reader fills in. */
  public List<Component> components() {
    return components;
  }

  /** The keys a file may have for it, in order. */
  public List<String> keys() {
    return components.stream().flatMap(component -> component.keys().stream()).toList();
  }

  /** The index of the component that has a key, or holds a record that has it inline; or −1. */
  int indexOf(String key) {
    return byKey.getOrDefault(key, -1);
  }

  Constructor<?> constructor() {
    return constructor;
  }
}
