package trammel.schema;

import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trammel.catalog.PartKind;
import trammel.read.Words;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;
import trammel.vocabulary.ValueType;
import trammel.vocabulary.Vocabulary;

/** Every fact that rules may speak of, with its components, and what the sources say of them. */
final class FactVocabulary {
  private FactVocabulary() {}

  static ObjectNode of(SourceComments comments) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("comment", SchemaFiles.COMMENT);
    ArrayNode facts = root.putArray("facts");
    for (FactType type : Vocabulary.all()) {
      fact(type, facts.addObject(), comments);
    }
    return root;
  }

  private static void fact(FactType type, ObjectNode fact, SourceComments comments) {
    fact.put("fact", type.name())
        .put("description", comments.of(type.type()))
        .put("since", type.since());
    ArrayNode concerns = fact.putArray("concerns");
    for (PartKind kind : type.concerns()) {
      concerns.add(kind.toString());
    }
    ArrayNode components = fact.putArray("components");
    for (Component component : type.components()) {
      ObjectNode described = components.addObject();
      described.put("name", component.name());
      String said = comments.of(type.type(), component.declared().getName());
      if (!said.isEmpty()) {
        described.put("description", said);
      }
      type(component, described);
    }
  }

  private static void type(Component component, ObjectNode described) {
    if (component.dimension() != null) {
      described
          .put("type", "quantity")
          .put("dimension", Words.kebab(component.dimension().name()))
          .put("unit", component.dimension().unit().symbol())
          .put("words", component.words());
    } else if (!component.choices().isEmpty()) {
      described.put("type", Words.kebab(component.declared().getType().getSimpleName()));
      component.choices().forEach(described.putArray("choices")::add);
    } else {
      described.put(
          "type", component.type() == ValueType.TEXTS ? "list of text" : plain(component));
    }
  }

  private static String plain(Component component) {
    return Words.kebab(component.type().name());
  }
}
