package trammel.judge;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.quantity.Absence;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.ListNode;
import trammel.read.Measured;
import trammel.read.Node;
import trammel.read.QuantityReader;
import trammel.read.Reading;
import trammel.read.TextNode;
import trammel.subject.Subject;

/**
 * Makes facts from what a case states of them. A quantity without ± is exact; {@code absent} is a
 * quantity that nobody has given.
 */
final class FactMaker {
  private static final String ABSENT = "absent";
  private static final Subject USUAL_SUBJECT = Subject.parse("front-left:wheel");

  private FactMaker() {}

  /** The name that cases and sentences use: {@code pilotLeft} as {@code pilot-left}. */
  static String kebab(String name) {
    String key = name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    return key.startsWith("-") ? key.substring(1) : key;
  }

  /** The fact record of a kebab-case name. */
  static Class<? extends Fact> type(String name, Node node) {
    StringBuilder simple = new StringBuilder();
    for (String word : name.split("-", -1)) {
      simple.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
    }
    try {
      return Class.forName("trammel.fact." + simple).asSubclass(Fact.class);
    } catch (ClassNotFoundException e) {
      throw new IllegalArgumentException(node.place() + ": no fact is called " + name, e);
    }
  }

  /** A fact of these component values, by kebab-case name. */
  static Fact make(Class<? extends Fact> type, Map<String, Node> values) {
    RecordComponent[] components = type.getRecordComponents();
    Object[] arguments = new Object[components.length];
    Set<String> unknown = new HashSet<>(values.keySet());
    for (int i = 0; i < components.length; i++) {
      String key = kebab(components[i].getName());
      arguments[i] = argument(components[i], values.get(key));
      unknown.remove(key);
    }
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException(type.getSimpleName() + " has no components " + unknown);
    }
    try {
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      Constructor<? extends Fact> canonical = type.getConstructor(types);
      return canonical.newInstance(arguments);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be made", e);
    }
  }

  private static Object argument(RecordComponent component, @Nullable Node node) {
    if (node == null) {
      return switch (component.getName()) {
        case "subject" -> USUAL_SUBJECT;
        case "standing" -> Standing.WORSE_OR_NEW;
        case "parts" -> List.of();
        default ->
            throw new IllegalArgumentException(
                component.getDeclaringRecord().getSimpleName()
                    + " is stated without "
                    + kebab(component.getName()));
      };
    }
    if (node instanceof ListNode list && component.getType() == List.class) {
      return list.items().stream().map(FactMaker::text).toList();
    }
    return value(component, text(node), node);
  }

  static String text(Node node) {
    if (node instanceof TextNode text) {
      return text.text();
    }
    throw new IllegalArgumentException(node.place() + ": expected a single value");
  }

  private static Object value(RecordComponent component, String text, Node node) {
    Class<?> type = component.getType();
    if (type == Quantity.class) {
      return quantity(component, text, node);
    } else if (type == String.class) {
      return text;
    } else if (type == Subject.class) {
      return Subject.parse(text);
    } else if (type == boolean.class && (text.equals("true") || text.equals("false"))) {
      return text.equals("true");
    } else if (type.isEnum()) {
      for (Object constant : type.getEnumConstants()) {
        String name = ((Enum<?>) constant).name();
        if (name.toLowerCase(Locale.ROOT).replace('_', '-').equals(text)) {
          return constant;
        }
      }
    }
    throw new IllegalArgumentException(
        node.place() + ": " + text + " is no value for " + kebab(component.getName()));
  }

  private static Quantity quantity(RecordComponent component, String text, Node node) {
    Measured measured = component.getAnnotation(Measured.class);
    String name = measured.name().isEmpty() ? component.getName() : measured.name();
    if (text.equals(ABSENT)) {
      return Quantity.absent(
          measured.value(), new Absence(name, "not stated", measured.by(), measured.how()));
    }
    Reading reading = QuantityReader.parse(text, measured.value());
    Input input =
        new Input(
            node.place().file(), node.path(), node.place().line(), "the case", Instrument.STATED);
    return Quantity.read(
        name, measured.value(), reading.value(), reading.expanded().orElse(0), input);
  }
}
