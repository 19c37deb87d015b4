package trammel.book;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.Reading;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.subject.Subject;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;

/**
 * Makes the facts of a case. What a case does not state is absent: a quantity without a value, a
 * mark that nobody knows, an empty text, a no. Of a closed list of names there is no such thing:
 * what the rule asks of must be stated, and the rest is the first of its list. A fact without
 * subject is of the front left wheel ({@code vehicle} and {@code legal-measures} of the vehicle),
 * one without standing is worse or new.
 */
final class FactReader {
  private static final String ABSENT = "absent";
  private static final Set<String> OF_THE_VEHICLE = Set.of("vehicle", "legal-measures");
  private static final Subject USUAL = Subject.parse("front-left");

  private final Set<Component> asked;
  private final Problems problems;
  private final NameReader names;

  /**
   * @param asked what the rule asks of
   */
  FactReader(Set<Component> asked, Problems problems) {
    this.asked = asked;
    this.problems = problems;
    this.names = new NameReader(problems);
  }

  /** The fact, or null if anything was refused. */
  @Nullable Fact read(FactType type, MapNode stated) {
    int before = problems.count();
    for (MapNode.Entry entry : stated.entries()) {
      if (type.component(entry.key()).isEmpty()) {
        List<String> known = type.components().stream().map(Component::ownName).toList();
        problems.add(
            entry.place(),
            stated.where()
                + ": unknown key "
                + Words.quoted(entry.key())
                + "; expected "
                + Words.anyOf(known),
            Words.didYouMean(entry.key(), known, "Remove it, or correct it."));
      }
    }
    Object[] values = new Object[type.components().size()];
    for (int i = 0; i < values.length; i++) {
      Component component = type.components().get(i);
      values[i] = value(type, component, stated.get(component.ownName()).orElse(null), stated);
    }
    return problems.count() > before ? null : make(type, values, stated);
  }

  private @Nullable Fact make(FactType type, Object[] values, MapNode stated) {
    try {
      return type.make(values);
    } catch (IllegalArgumentException complaint) {
      problems.add(
          stated.place(),
          stated.where() + ": " + String.valueOf(complaint.getMessage()).split("\n", 2)[0],
          "Correct the values that stand here.");
      return null;
    }
  }

  private @Nullable Object value(
      FactType type, Component component, @Nullable Node node, MapNode stated) {
    if (node == null) {
      return unstated(type, component, stated);
    }
    if (node instanceof ListNode list && component.declared().getType() == List.class) {
      return list.items().stream()
          .map(item -> item instanceof TextNode text ? text.text() : item.words())
          .toList();
    }
    if (!(node instanceof TextNode text)) {
      problems.add(
          node.place(),
          node.where() + ": found " + node.words() + "; expected " + component.type().words(),
          "Write one value.");
      return null;
    }
    return switch (component.type()) {
      case QUANTITY -> quantity(component, text);
      case TEXT -> text.text();
      case TEXTS -> List.of(text.text());
      case SUBJECT -> names.read(node, component) == null ? null : Subject.parse(text.text());
      case DECISION -> decision(component, text);
      default -> {
        List<String> name = names.read(node, component);
        yield name == null ? null : single(component, name.get(0));
      }
    };
  }

  private @Nullable Object unstated(FactType type, Component component, MapNode stated) {
    if (component.declared().getType() == Standing.class) {
      return Standing.WORSE_OR_NEW;
    }
    return switch (component.type()) {
      case QUANTITY -> absent(component);
      case DECISION -> Decision.ABSENT;
      case YES_NO -> false;
      case COUNT -> 0;
      case TEXT -> "";
      case TEXTS -> List.of();
      case SUBJECT -> OF_THE_VEHICLE.contains(type.name()) ? Subject.VEHICLE : USUAL;
      case TOKEN -> {
        if (!asked.contains(component)) {
          yield single(component, component.choices().get(0));
        }
        problems.add(
            stated.place(),
            stated.where()
                + ": the key "
                + Words.quoted(component.ownName())
                + " is missing; expected "
                + Words.anyOf(component.choices()),
            "The rule asks of it, and a name cannot be absent.");
        yield null;
      }
    };
  }

  private static Quantity absent(Component component) {
    Dimension dimension = component.dimension();
    if (dimension == null) {
      throw new IllegalStateException(component.name() + " measures nothing");
    }
    return Quantity.absent(
        dimension,
        new Absence(component.words(), "the case does not state it", Instrument.READ, ""));
  }

  private @Nullable Object quantity(Component component, TextNode text) {
    Quantity absent = absent(component);
    if (text.text().equals(ABSENT)) {
      return absent;
    }
    Reading reading = names.reading(text, absent.dimension());
    if (reading == null) {
      return null;
    }
    Input input =
        new Input(
            text.place().file(), text.path(), text.place().line(), "the case", Instrument.STATED);
    return Quantity.read(
        component.words(),
        absent.dimension(),
        reading.value(),
        reading.expanded().orElse(0),
        input);
  }

  private @Nullable Object decision(Component component, TextNode text) {
    if (text.text().equals(ABSENT) || text.text().equals("undecided")) {
      return Decision.valueOf(text.text().toUpperCase(Locale.ROOT));
    }
    List<String> name = names.read(text, component);
    return name == null ? null : Decision.of(name.get(0).equals("yes"));
  }

  private static Object single(Component component, String name) {
    Class<?> type = component.declared().getType();
    if (type == boolean.class) {
      return name.equals("yes");
    } else if (type == int.class) {
      return Integer.valueOf(name);
    }
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> Words.kebab(((Enum<?>) constant).name()).equals(name))
        .findFirst()
        .orElseThrow();
  }
}
