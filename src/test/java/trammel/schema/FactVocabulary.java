package trammel.schema;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trammel.catalog.PartKind;
import trammel.fact.Fact;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Words;

/** Every fact that rules may speak of, with its components. */
final class FactVocabulary {
  private static final Path SOURCES = Path.of("src/main/java/trammel/fact");

  private FactVocabulary() {}

  static ObjectNode of(SourceComments comments) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("comment", SchemaFiles.COMMENT);
    ArrayNode facts = root.putArray("facts");
    for (Class<?> type : types()) {
      fact(type, facts.addObject(), comments);
    }
    return root;
  }

  /** The records that are facts, by name. */
  static List<Class<?>> types() {
    try (Stream<Path> files = Files.list(SOURCES)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".java") && !name.startsWith("package-"))
          .sorted()
          .<Class<?>>map(name -> load("trammel.fact." + name.replace(".java", "")))
          .filter(type -> type.isRecord() && Fact.class.isAssignableFrom(type))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(name + " has a source file and no class", e);
    }
  }

  private static void fact(Class<?> type, ObjectNode fact, SourceComments comments) {
    String name = Words.kebab(type.getSimpleName());
    Fact.Since since = type.getAnnotation(Fact.Since.class);
    if (since == null) {
      throw new IllegalStateException(type.getName() + " says not since when it exists");
    }
    fact.put("fact", name).put("description", comments.of(type)).put("since", since.value());
    ArrayNode concerns = fact.putArray("concerns");
    Fact.Concerns kinds = type.getAnnotation(Fact.Concerns.class);
    if (kinds != null) {
      for (PartKind kind : kinds.value()) {
        concerns.add(kind.toString());
      }
    }
    ArrayNode components = fact.putArray("components");
    for (RecordComponent component : type.getRecordComponents()) {
      ObjectNode described = components.addObject();
      described.put("name", name + "." + Words.kebab(component.getName()));
      String said = comments.of(type, component.getName());
      if (!said.isEmpty()) {
        described.put("description", said);
      }
      type(component, described);
    }
  }

  private static void type(RecordComponent component, ObjectNode described) {
    Class<?> type = component.getType();
    if (type == Quantity.class) {
      Measured measured = component.getAnnotation(Measured.class);
      described.put("type", "quantity").put("dimension", Words.kebab(measured.value().name()));
      described.put("unit", measured.value().unit().symbol());
      described.put(
          "words",
          measured.name().isEmpty()
              ? Words.spaced(Words.kebab(component.getName()))
              : measured.name());
    } else if (type.isEnum()) {
      described.put("type", Words.kebab(type.getSimpleName()));
      ArrayNode choices = described.putArray("choices");
      for (Object constant : type.getEnumConstants()) {
        choices.add(Words.kebab(((Enum<?>) constant).name()));
      }
    } else {
      described.put("type", plain(component));
    }
  }

  private static String plain(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == String.class) {
      return "text";
    } else if (type == boolean.class) {
      return "yes-no";
    } else if (type == int.class) {
      return "count";
    } else if (component
        .getGenericType()
        .getTypeName()
        .equals("java.util.List<java.lang.String>")) {
      return "list of text";
    }
    return Words.kebab(type.getSimpleName());
  }
}
