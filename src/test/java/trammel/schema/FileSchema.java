package trammel.schema;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.QuantityWriter;
import trammel.read.RecordShape;
import trammel.read.RecordShape.Component;
import trammel.read.TypeShape;
import trammel.read.TypeShape.Kind;
import trammel.read.VariantShape;
import trammel.read.Words;

/**
 * The schema of a file that {@link trammel.read.Binder} reads. It takes what the binder takes, so
 * far as shapes go: a value left empty counts as not written, a list of one scalar may be the
 * scalar, {@code source} may stand in every map. It does not look into tokens and ranges.
 */
final class FileSchema {
  private static final String SOURCE = "source";
  private static final String YES_NO = "yes-or-no";

  private final SourceComments comments;
  private final Map<String, Object> owners = new HashMap<>();
  private final ObjectNode definitions = JsonNodeFactory.instance.objectNode();

  private FileSchema(SourceComments comments) {
    this.comments = comments;
  }

  /** The schema of a file that becomes one record. */
  static ObjectNode of(Class<?> root, String title, SourceComments comments) {
    FileSchema made = new FileSchema(comments);
    ObjectNode schema = SchemaFiles.head(title);
    schema.setAll(made.mapping(root, null, ""));
    schema.set("$defs", made.definitions);
    return schema;
  }

  /** Any scalar that is not blank: to the binder it is text. */
  static ObjectNode text() {
    ObjectNode text = node();
    text.putArray("type").add("string").add("number").add("boolean");
    return text.put("pattern", "\\S");
  }

  private static ObjectNode node() {
    return JsonNodeFactory.instance.objectNode();
  }

  private ObjectNode mapping(Class<?> type, @Nullable String chooser, String choice) {
    ObjectNode schema = node();
    String sentence = comments.of(type);
    if (!sentence.isEmpty()) {
      schema.put("description", sentence);
    }
    schema.put("type", "object").put("additionalProperties", false);
    ArrayNode required = JsonNodeFactory.instance.arrayNode();
    ObjectNode properties = node();
    if (chooser != null) {
      properties.putObject(chooser).put("const", choice);
      required.add(chooser);
    }
    addComponents(RecordShape.of(type), properties, required);
    if (!properties.has(SOURCE)) {
      properties.set(SOURCE, source());
    }
    if (!required.isEmpty()) {
      schema.set("required", required);
    }
    schema.set("properties", properties);
    return schema;
  }

  private static ObjectNode source() {
    return orEmpty(text()).put("description", "Who says so, for all values from here down.");
  }

  private void addComponents(RecordShape shape, ObjectNode properties, ArrayNode required) {
    for (Component component : shape.components()) {
      if (component.takesKey()) {
        throw new IllegalStateException(component + ": keys as components have no schema yet");
      } else if (component.inline()) {
        addComponents(RecordShape.of(component.shape().type()), properties, required);
      } else if (component.isWritten()) {
        ObjectNode value = value(component.shape(), component);
        if (component.required()) {
          required.add(component.key());
        } else {
          value = orEmpty(value);
        }
        String description = description(shape.type(), component);
        if (!description.isEmpty()) {
          value.put("description", description);
        }
        properties.set(component.key(), value);
      }
    }
  }

  /** The value, or nothing after its key. */
  private static ObjectNode orEmpty(ObjectNode value) {
    if (value.path("type").isArray()) {
      value.withArray("type").add("null");
      return value;
    } else if (value.has("enum")) {
      value.withArray("enum").addNull();
      return value;
    }
    ObjectNode either = node();
    either.putArray("anyOf").add(value).addObject().put("type", "null");
    return either;
  }

  private ObjectNode value(TypeShape shape, Component component) {
    return switch (shape.kind()) {
      case TEXT -> text();
      case YES_NO -> reference(YES_NO, YES_NO, FileSchema::yesOrNo);
      case COUNT -> {
        ObjectNode count = node();
        count.putArray("type").add("integer").add("string");
        yield count.put("pattern", "^-?[0-9]{1,9}$");
      }
      case DATE -> {
        ObjectNode date = node();
        date.putArray("type").add("string");
        yield date.put("format", "date").put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
      }
      case CHOICE -> choice(choices(shape.type()));
      case TOKEN -> {
        ObjectNode token = node();
        token.putArray("type").add("string").add("number");
        yield token.put("pattern", "\\S");
      }
      case QUANTITY -> quantity(component);
      case LIST -> list(held(shape), component);
      case MAP -> map(shape, component);
      case RECORD ->
          reference(name(shape.type()), shape.type(), () -> mapping(shape.type(), null, ""));
      case VARIANT -> reference(name(shape.type()), shape.type(), () -> variants(shape.type()));
      case PLACE -> throw new IllegalStateException("a place is not written");
      case NODE -> node();
    };
  }

  private static TypeShape held(TypeShape shape) {
    if (shape.element() == null) {
      throw new IllegalStateException(shape + " holds nothing");
    }
    return shape.element();
  }

  private static String name(Class<?> type) {
    return Words.kebab(type.getSimpleName());
  }

  private static List<String> choices(Class<?> type) {
    return Stream.of(type.getEnumConstants())
        .map(constant -> Words.kebab(((Enum<?>) constant).name()))
        .toList();
  }

  private static ObjectNode choice(List<String> names) {
    ObjectNode choice = node();
    ArrayNode values = choice.putArray("enum");
    names.forEach(values::add);
    return choice;
  }

  private static ObjectNode yesOrNo() {
    ObjectNode schema = node();
    ArrayNode forms = schema.putArray("anyOf");
    forms.addObject().putArray("enum").add("yes").add("no").add(true).add(false);
    forms
        .addObject()
        .put("type", "string")
        .put("pattern", "^([Yy][Ee][Ss]|[Nn][Oo]|[Tt][Rr][Uu][Ee]|[Ff][Aa][Ll][Ss][Ee])$");
    return schema;
  }

  private ObjectNode quantity(Component component) {
    Measured measured = measured(component);
    Dimension dimension = measured.value();
    ObjectNode value =
        reference(QuantityForm.name(dimension), dimension, () -> QuantityForm.schema(dimension));
    if (dimension == Dimension.RATIO) {
      if (Double.isFinite(measured.min())) {
        value.put("minimum", measured.min());
      }
      if (Double.isFinite(measured.max())) {
        value.put("maximum", measured.max());
      }
    }
    return value;
  }

  private static Measured measured(Component component) {
    if (component.measured() == null) {
      throw new IllegalStateException(component + " is not measured");
    }
    return component.measured();
  }

  private ObjectNode list(TypeShape held, Component component) {
    ObjectNode many = node();
    many.put("type", "array").set("items", value(held, component));
    boolean scalar = held.kind().compareTo(Kind.LIST) < 0;
    if (!scalar) {
      return many;
    }
    ObjectNode either = node();
    either.putArray("anyOf").add(many).add(value(held, component));
    return either;
  }

  private ObjectNode map(TypeShape shape, Component component) {
    TypeShape held = held(shape);
    ObjectNode map = node();
    map.put("type", "object");
    ObjectNode properties = node();
    Kind innermost = held.innermost().kind();
    if (innermost == Kind.QUANTITY || innermost == Kind.RECORD || innermost == Kind.VARIANT) {
      properties.set(SOURCE, source());
    }
    if (shape.key() != null && shape.key().kind() == Kind.CHOICE) {
      for (String key : choices(shape.key().type())) {
        properties.set(key, mapValue(held, component));
      }
      map.put("additionalProperties", false);
    } else {
      map.set("additionalProperties", mapValue(held, component));
    }
    map.set("properties", properties);
    return map;
  }

  private ObjectNode mapValue(TypeShape held, Component component) {
    ObjectNode value = value(held, component);
    return held.kind() == Kind.RECORD ? orEmpty(value) : value;
  }

  private ObjectNode variants(Class<?> type) {
    VariantShape shape = VariantShape.of(type);
    ObjectNode schema = node();
    schema.put("description", comments.of(type)).put("type", "object");
    schema.putArray("required").add(shape.key());
    schema.putObject("properties").set(shape.key(), choice(List.copyOf(shape.variants().keySet())));
    ArrayNode all = schema.putArray("allOf");
    shape
        .variants()
        .forEach(
            (choice, variant) -> {
              ObjectNode rule = all.addObject();
              ObjectNode condition = rule.putObject("if");
              condition.putObject("properties").putObject(shape.key()).put("const", choice);
              condition.putArray("required").add(shape.key());
              rule.set(
                  "then", reference(choice, variant, () -> mapping(variant, shape.key(), choice)));
            });
    return schema;
  }

  private ObjectNode reference(
      String name, Object owner, java.util.function.Supplier<ObjectNode> definition) {
    Object before = owners.putIfAbsent(name, owner);
    if (before == null) {
      definitions.putObject(name);
      definitions.set(name, definition.get());
    } else if (!before.equals(owner)) {
      throw new IllegalStateException(before + " and " + owner + " are both called " + name);
    }
    return node().put("$ref", "#/$defs/" + name);
  }

  private String description(Class<?> type, Component component) {
    String said = comments.of(type, component.name());
    TypeShape innermost = component.shape().innermost();
    return switch (innermost.kind()) {
      case QUANTITY -> measuring(component, said);
      case TOKEN ->
          sentences(
              said.isEmpty() ? comments.of(innermost.type()) : said,
              examples(comments.ofParsing(innermost.type())));
      default -> sentences(said.isEmpty() ? comments.of(innermost.type()) : said);
    };
  }

  /** {@code Reads 17x8.5J, …} as an example; a sentence that gives none is left out. */
  private static String examples(String parsing) {
    return parsing.matches("Reads (an? |what ).*")
        ? ""
        : parsing.replaceFirst("^Reads ", "Such as ");
  }

  private static String measuring(Component component, String said) {
    Measured measured = measured(component);
    String by = "by: " + measured.by().fileName() + ", where nothing is said";
    return sentences(
        said.isEmpty() ? component.words() : component.words() + ": " + said,
        measured.how().isEmpty() ? "" : "how: " + measured.how(),
        range(measured),
        by);
  }

  private static String range(Measured measured) {
    boolean least = Double.isFinite(measured.min());
    boolean most = Double.isFinite(measured.max());
    if (!least && !most) {
      return "";
    }
    String from = least ? shown(measured, measured.min()) : "";
    String to = most ? shown(measured, measured.max()) : "";
    return "plausible: "
        + (least && most ? from + " to " + to : least ? "at least " + from : "at most " + to);
  }

  private static String shown(Measured measured, double value) {
    return QuantityWriter.value(Quantity.exact(measured.value(), value));
  }

  private static String sentences(String... parts) {
    return Stream.of(parts)
        .filter(part -> !part.isEmpty())
        .map(part -> Character.toUpperCase(part.charAt(0)) + part.substring(1))
        .map(part -> part.endsWith(".") ? part : part + ".")
        .collect(Collectors.joining(" "));
  }
}
