package trammel.read;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;

/**
 * What kind of value a component holds.
 *
 * @param kind how it is read
 * @param type the class itself
 * @param key what the keys of a map are; null for anything but a map
 * @param element what a list or map holds; null for anything else
 */
public record TypeShape(
    Kind kind, Class<?> type, @Nullable TypeShape key, @Nullable TypeShape element) {

  /** How a value is read. */
  public enum Kind {
    TEXT,
    YES_NO,
    COUNT,
    DATE,
    CHOICE,
    /** A type with {@code public static T parse(String)}. */
    TOKEN,
    QUANTITY,
    LIST,
    MAP,
    RECORD,
    /** A sealed interface of records. */
    VARIANT,
    PLACE,
    /** The piece of the file itself, for its owner to look into. */
    NODE
  }

  /**
   * The shape of a declared type.
   *
   * @throws IllegalStateException if no file can hold it
   */
  static TypeShape of(Type declared) {
    if (declared instanceof ParameterizedType generic) {
      Type[] arguments = generic.getActualTypeArguments();
      if (generic.getRawType() == List.class) {
        return new TypeShape(Kind.LIST, List.class, null, of(arguments[0]));
      }
      if (generic.getRawType() == Map.class) {
        TypeShape key = of(arguments[0]);
        if (key.kind == Kind.TEXT || key.kind == Kind.CHOICE || key.kind == Kind.TOKEN) {
          return new TypeShape(Kind.MAP, Map.class, key, of(arguments[1]));
        }
      }
    } else if (declared instanceof Class<?> type) {
      Kind kind = kind(type);
      if (kind != null) {
        return new TypeShape(kind, type, null, null);
      }
    }
    throw new IllegalStateException("no file can hold a " + declared.getTypeName());
  }

  private static @Nullable Kind kind(Class<?> type) {
    if (type == String.class) {
      return Kind.TEXT;
    } else if (type == Quantity.class) {
      return Kind.QUANTITY;
    } else if (type == boolean.class || type == Boolean.class) {
      return Kind.YES_NO;
    } else if (type == int.class || type == Integer.class) {
      return Kind.COUNT;
    } else if (type == LocalDate.class) {
      return Kind.DATE;
    } else if (type == Place.class) {
      return Kind.PLACE;
    } else if (type == Node.class) {
      return Kind.NODE;
    } else if (parser(type) != null) {
      return Kind.TOKEN;
    } else if (type.isEnum()) {
      return Kind.CHOICE;
    } else if (type.isRecord()) {
      return Kind.RECORD;
    }
    return type.isSealed() && type.isInterface() ? Kind.VARIANT : null;
  }

  /** The method that reads a token from text, if the type has one. */
  static @Nullable Method parser(Class<?> type) {
    return Arrays.stream(type.getDeclaredMethods())
        .filter(
            method ->
                method.getName().equals("parse")
                    && Modifier.isStatic(method.getModifiers())
                    && Modifier.isPublic(method.getModifiers())
                    && method.getParameterCount() == 1
                    && method.getParameterTypes()[0] == String.class
                    && type.isAssignableFrom(method.getReturnType()))
        .findFirst()
        .orElse(null);
  }

  /** What a list or map holds. */
  TypeShape held() {
    if (element == null) {
      throw new IllegalStateException(type + " holds nothing");
    }
    return element;
  }

  /** The class of the value itself, or of what a list or map of it holds. */
  public TypeShape innermost() {
    return element == null ? this : element.innermost();
  }
}
