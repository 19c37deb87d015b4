package trammel.read;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The records among which a key of the file chooses.
 *
 * @param key the key that chooses
 * @param variants the record for each value of that key, in the order of the declaration
 */
public record VariantShape(String key, Map<String, Class<?>> variants) {
  private static final ClassValue<VariantShape> KNOWN =
      new ClassValue<>() {
        @Override
        protected VariantShape computeValue(Class<?> type) {
          return make(type);
        }
      };

  /**
   * The variants of a sealed interface.
   *
   * @throws IllegalStateException if it has no {@link Discriminator}, or two variants of one name
   */
  public static VariantShape of(Class<?> type) {
    return KNOWN.get(type);
  }

  private static VariantShape make(Class<?> type) {
    Discriminator discriminator = type.getAnnotation(Discriminator.class);
    if (discriminator == null) {
      throw new IllegalStateException(type.getName() + " has no @Discriminator");
    }
    Map<String, Class<?>> variants = new LinkedHashMap<>();
    collect(type, variants);
    return new VariantShape(discriminator.value(), variants);
  }

  private static void collect(Class<?> type, Map<String, Class<?>> variants) {
    for (Class<?> variant : type.getPermittedSubclasses()) {
      if (!variant.isRecord()) {
        collect(variant, variants);
        continue;
      }
      Named named = variant.getAnnotation(Named.class);
      String name = named == null ? Words.kebab(variant.getSimpleName()) : named.value();
      if (variants.put(name, variant) != null) {
        throw new IllegalStateException("two variants are called " + name);
      }
    }
  }
}
