package trammel.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The constants of an enum by the names that files use. */
final class Choices {
  private static final ClassValue<Map<String, Object>> KNOWN =
      new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> type) {
          Map<String, Object> names = new LinkedHashMap<>();
          for (Object constant : type.getEnumConstants()) {
            names.put(Words.kebab(((Enum<?>) constant).name()), constant);
          }
          return Collections.unmodifiableMap(names);
        }
      };

  private Choices() {}

  /** Whether a shape is an enum that has a constant of this name. */
  static boolean isChoice(TypeShape shape, String name) {
    return shape.kind() == TypeShape.Kind.CHOICE && of(shape.type()).containsKey(name);
  }

  static Map<String, Object> of(Class<?> type) {
    return KNOWN.get(type);
  }
}
