package trammel.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.ListNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.QuantityReader;
import trammel.read.Reading;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.vocabulary.Component;
import trammel.vocabulary.ValueType;
import trammel.vocabulary.Vocabulary;

/** Reads the names of values, and what they may be held against. */
final class NameReader {
  private static final List<String> YES_NO = List.of("yes", "no");

  private final Problems problems;

  NameReader(Problems problems) {
    this.problems = problems;
  }

  /** The component of this name, or null if there is none. */
  @Nullable Component component(TextNode text) {
    String name = text.text();
    Component component = Vocabulary.component(name).orElse(null);
    if (component == null) {
      problems.add(
          text.place(),
          text.where() + ": no value is called " + Words.quoted(name),
          Vocabulary.nearestComponent(name)
              .map(near -> "Did you mean " + near + "?")
              .orElse("Names are fact.component, such as clearance.gap."));
    }
    return component;
  }

  /** An exact quantity of this dimension, or null if it was refused. */
  @Nullable Quantity exact(Node node, Dimension dimension) {
    if (!(node instanceof TextNode text)) {
      problems.add(
          node.place(),
          node.where()
              + ": found "
              + node.words()
              + "; expected "
              + Words.withArticle(dimension.words()),
          "Write one value with its unit.");
      return null;
    }
    Reading reading = reading(text, dimension);
    if (reading == null) {
      return null;
    }
    if (reading.expanded().isPresent()) {
      problems.add(
          node.place(),
          node.where() + ": found " + node.words() + "; expected a limit without ±",
          "A rule states its limit exactly; what is measured has the uncertainty.");
      return null;
    }
    return Quantity.exact(dimension, reading.value());
  }

  /** A value of this dimension with its uncertainty, or null if it was refused. */
  @Nullable Reading reading(TextNode text, Dimension dimension) {
    try {
      return QuantityReader.parse(text.text(), dimension);
    } catch (IllegalArgumentException complaint) {
      String[] lines = String.valueOf(complaint.getMessage()).split("\n", 2);
      problems.add(
          text.place(),
          text.where() + ": " + lines[0],
          lines.length > 1 ? lines[1] : "Correct the value.");
      return null;
    }
  }

  /** The names that a component is held against, or null if one was refused. */
  @Nullable List<String> read(Node node, Component component) {
    List<Node> items = node instanceof ListNode list ? list.items() : List.of(node);
    if (items.isEmpty() || items.size() > Limits.NAMES) {
      problems.add(
          node.place(),
          node.where() + ": " + items.size() + " values; expected 1 to " + Limits.NAMES,
          "Name what it may be.");
      return null;
    }
    Set<String> names = new LinkedHashSet<>();
    for (Node item : items) {
      String name = name(item, component);
      if (name == null) {
        return null;
      }
      names.add(name);
    }
    return List.copyOf(names);
  }

  private @Nullable String name(Node node, Component component) {
    if (!(node instanceof TextNode text) || text.text().isBlank()) {
      return refuse(node, component.type().words(), "Write one value.");
    }
    String name = text.text();
    return switch (component.type()) {
      case DECISION, YES_NO -> yesOrNo(text, component);
      case TOKEN -> known(text, component.choices());
      case COUNT ->
          name.matches("[0-9]{1,9}")
              ? String.valueOf(Integer.parseInt(name))
              : refuse(node, component.type().words(), "Write digits only.");
      case SUBJECT -> place(text);
      case TEXT, TEXTS -> name;
      case QUANTITY -> refuse(node, component.type().words(), "Hold it against a limit.");
    };
  }

  private @Nullable String yesOrNo(TextNode text, Component component) {
    boolean decision = component.type() == ValueType.DECISION;
    return switch (text.text()) {
      case "yes", "true" -> "yes";
      case "no", "false" -> "no";
      case "met" -> decision ? "yes" : known(text, YES_NO);
      case "not-met" -> decision ? "no" : known(text, YES_NO);
      default -> known(text, YES_NO);
    };
  }

  private @Nullable String known(TextNode text, List<String> choices) {
    if (choices.contains(text.text())) {
      return text.text();
    }
    return refuse(
        text,
        Words.anyOf(choices),
        Words.didYouMean(text.text(), choices, "Write one of these values."));
  }

  private @Nullable String place(TextNode text) {
    List<String> places = new ArrayList<>();
    Arrays.stream(Axle.values()).forEach(axle -> places.add(axle.toString()));
    Arrays.stream(Position.values()).forEach(position -> places.add(position.toString()));
    places.add("vehicle");
    places.add("order");
    String where = text.text().split(":", 2)[0];
    return places.contains(where)
        ? text.text()
        : refuse(text, Words.anyOf(places), Words.didYouMean(where, places, "Write one of these."));
  }

  private @Nullable String refuse(Node node, String expected, String advice) {
    problems.add(
        node.place(), node.where() + ": found " + node.words() + "; expected " + expected, advice);
    return null;
  }
}
