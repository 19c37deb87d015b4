package trammel.book;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.book.Condition.Leaf;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;
import trammel.vocabulary.Vocabulary;

/** Reads the conditions of one rule. */
final class ConditionReader {
  private static final List<String> GROUPS = List.of("all", "any", "none");

  private final FactType about;
  private final Problems problems;
  private final LeafReader leaves;
  private int conditions;
  private int joined;

  ConditionReader(FactType about, Problems problems) {
    this.about = about;
    this.problems = problems;
    this.leaves = new LeafReader(about, problems);
  }

  /** The condition, or null if it was refused. */
  @Nullable Condition read(Node node) {
    return read(node, 1);
  }

  private @Nullable Condition read(Node node, int depth) {
    conditions++;
    if (conditions == Limits.CONDITIONS + 1) {
      problems.add(
          node.place(),
          "more than " + Limits.CONDITIONS + " conditions in one rule; expected fewer",
          "Make several rules of it, or a table.");
    }
    if (conditions > Limits.CONDITIONS) {
      return null;
    }
    if (depth > Limits.DEPTH) {
      problems.add(
          node.place(),
          "conditions nested more than " + Limits.DEPTH + " deep; expected fewer",
          "Make several rules of it.");
      return null;
    }
    if (!(node instanceof MapNode map)) {
      problems.add(
          node.place(),
          node.where() + ": found " + node.words() + "; expected a condition",
          "Write for example { value: " + example() + " }.");
      return null;
    }
    for (String group : GROUPS) {
      if (map.get(group).isPresent()) {
        return group(group, map, depth);
      }
    }
    return single(map);
  }

  private String example() {
    return about.components().stream()
        .filter(component -> component.dimension() != null)
        .findFirst()
        .map(component -> component.name() + ", at-least: 10 " + unit(component))
        .orElse(about.name() + ".subject, is: front");
  }

  private static String unit(Component component) {
    return component.dimension() == null ? "" : component.dimension().unit().symbol();
  }

  private @Nullable Condition group(String name, MapNode map, int depth) {
    for (MapNode.Entry entry : map.entries()) {
      if (!entry.key().equals(name)) {
        problems.add(
            entry.place(),
            map.where() + ": the key " + Words.quoted(entry.key()) + " beside " + name,
            "Write { " + name + ": [ … ] } and nothing else in its braces.");
        return null;
      }
    }
    Node held = map.get(name).orElseThrow();
    if (!(held instanceof ListNode list) || list.items().isEmpty()) {
      problems.add(
          held.place(),
          held.where() + ": found " + held.words() + "; expected a list of conditions",
          "Begin each condition with \"- \", or write them in brackets.");
      return null;
    }
    List<Condition> parts = new ArrayList<>();
    for (Node item : list.items()) {
      Condition part = read(item, depth + 1);
      if (part != null) {
        parts.add(part);
      }
    }
    if (parts.size() < list.items().size()) {
      return null;
    }
    return switch (name) {
      case "all" -> new Condition.All(parts);
      case "any" -> new Condition.Any(parts);
      default -> new Condition.None(parts);
    };
  }

  private @Nullable Condition single(MapNode map) {
    if (!leaves.knows(map)) {
      return null;
    }
    Node written = map.get("of").orElse(null);
    Of of = written == null ? null : choice(written, Of.values());
    if (written != null && of == null) {
      return null;
    }
    List<Leaf> read = leaves.read(map, of);
    if (read.isEmpty()) {
      return null;
    }
    if (of == null) {
      return read.size() == 1 ? read.get(0) : new Condition.All(List.copyOf(read));
    }
    FactType other = Vocabulary.fact(leaves.term(read.get(0)).component().fact()).orElseThrow();
    return join(map, new Condition.Some(of, other, read));
  }

  private @Nullable Condition join(MapNode map, Condition.Some some) {
    joined++;
    if (joined == Limits.JOINED + 1) {
      problems.add(
          map.place(),
          "more than " + Limits.JOINED + " conditions on other facts in one rule; expected fewer",
          "Make several rules of it.");
    }
    return joined > Limits.JOINED ? null : some;
  }

  /** What {@code needs} and {@code excludes} ask: that such a part is there. */
  Condition.@Nullable Some part(Node node) {
    if (!(node instanceof MapNode map)) {
      problems.add(
          node.place(),
          node.where() + ": found " + node.words() + "; expected a kind of part, or a part",
          "Write for example { kind: bump-stop, of: same-axle }.");
      return null;
    }
    List<String> keys = List.of("kind", "part", "of");
    for (MapNode.Entry entry : map.entries()) {
      if (!keys.contains(entry.key())) {
        problems.add(
            entry.place(),
            map.where()
                + ": unknown key "
                + Words.quoted(entry.key())
                + "; expected "
                + Words.anyOf(keys),
            Words.didYouMean(entry.key(), keys, "Remove it."));
        return null;
      }
    }
    Node kind = map.get("kind").orElse(null);
    Node part = map.get("part").orElse(null);
    if ((kind == null) == (part == null)) {
      problems.add(
          map.place(),
          map.where() + ": expected either kind or part",
          "Write for example { kind: bump-stop }.");
      return null;
    }
    Of of = map.get("of").map(written -> choice(written, Of.values())).orElse(Of.SAME_WHEEL);
    Component component =
        Vocabulary.component(kind == null ? "part-on-vehicle.part" : "part-on-vehicle.kind")
            .orElseThrow();
    List<String> names = leaves.names(kind == null ? part : kind, component);
    if (of == null || names == null) {
      return null;
    }
    FactType fact = Vocabulary.fact(component.fact()).orElseThrow();
    Leaf leaf = new Condition.Is(new Term(component, true), false, names);
    return join(map, new Condition.Some(of, fact, List.of(leaf))) instanceof Condition.Some some
        ? some
        : null;
  }

  private <E extends Enum<E>> @Nullable E choice(Node node, E[] choices) {
    List<String> names = new ArrayList<>();
    for (E one : choices) {
      String name = Words.kebab(one.name());
      if (node instanceof TextNode text && text.text().equals(name)) {
        return one;
      }
      names.add(name);
    }
    problems.add(
        node.place(),
        node.where() + ": found " + node.words() + "; expected " + Words.anyOf(names),
        node instanceof TextNode text
            ? Words.didYouMean(text.text(), names, "Write one of these.")
            : "Write one of these.");
    return null;
  }
}
