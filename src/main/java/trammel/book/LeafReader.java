package trammel.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.book.Condition.Leaf;
import trammel.quantity.Comparison.Sense;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;
import trammel.vocabulary.ValueType;
import trammel.vocabulary.Vocabulary;

/** Reads conditions on one value: what is asked must be something that value can answer. */
final class LeafReader {
  private static final Map<String, Sense> SENSES =
      Map.of(
          "at-least", Sense.AT_LEAST,
          "at-most", Sense.AT_MOST,
          "above", Sense.ABOVE,
          "below", Sense.BELOW);
  private static final List<String> ASKING =
      List.of("at-least", "at-most", "above", "below", "is", "is-not", "is-one-of");
  private static final List<String> KEYS =
      List.of(
          "value",
          "of",
          "at-least",
          "at-most",
          "above",
          "below",
          "is",
          "is-not",
          "is-one-of",
          "all",
          "any",
          "none");

  private final FactType about;
  private final Problems problems;
  private final NameReader names;

  LeafReader(FactType about, Problems problems) {
    this.about = about;
    this.problems = problems;
    this.names = new NameReader(problems);
  }

  /** Whether all keys are those of a condition; a problem is told of each that is not. */
  boolean knows(MapNode map) {
    boolean known = true;
    for (MapNode.Entry entry : map.entries()) {
      if (!KEYS.contains(entry.key())) {
        known = false;
        problems.add(
            entry.place(),
            map.where()
                + ": unknown key "
                + Words.quoted(entry.key())
                + "; expected "
                + Words.anyOf(KEYS),
            Words.didYouMean(entry.key(), KEYS, "Remove it, or correct it."));
      }
    }
    return known;
  }

  /** What a condition asks of its value, one for each key; empty if anything was refused. */
  List<Leaf> read(MapNode map, @Nullable Of of) {
    Node value = map.get("value").orElse(null);
    if (value == null) {
      problems.add(
          map.place(),
          map.where()
              + ": the key \"value\" is missing; expected the name of a value, or all, any"
              + " or none",
          "Write for example { value: " + about.name() + ".subject, is: front }.");
      return List.of();
    }
    Term term = term(value, of != null, null);
    if (term == null) {
      return List.of();
    }
    List<Leaf> read = new ArrayList<>();
    int asked = 0;
    for (MapNode.Entry entry : map.entries()) {
      if (ASKING.contains(entry.key())) {
        asked++;
        Leaf leaf =
            SENSES.containsKey(entry.key())
                ? compare(entry, term, of != null)
                : is(entry, term.component(), term);
        if (leaf != null) {
          read.add(leaf);
        }
      }
    }
    if (asked == 0) {
      problems.add(
          map.place(),
          map.where() + ": nothing is asked of " + term + "; expected " + Words.anyOf(ASKING),
          "Write for example at-least: 10 mm, or is: yes.");
    }
    return read.size() < asked ? List.of() : read;
  }

  /** What a condition on one value asks of. */
  Term term(Leaf leaf) {
    return leaf instanceof Condition.Compare compare
        ? compare.term()
        : ((Condition.Is) leaf).term();
  }

  /**
   * The component that a name stands for.
   *
   * @param joined whether the condition speaks of another fact
   * @param spoken the fact that its value is of, where a limit is read; null for the value itself
   */
  private @Nullable Term term(Node node, boolean joined, @Nullable String spoken) {
    if (!(node instanceof TextNode text)) {
      problems.add(
          node.place(),
          node.where() + ": found " + node.words() + "; expected the name of a value",
          "Write for example " + about.name() + ".subject.");
      return null;
    }
    Component component = names.component(text);
    if (component == null) {
      return null;
    }
    if (spoken == null && joined) {
      return new Term(component, true);
    }
    if (component.fact().equals(spoken) && joined) {
      return new Term(component, true);
    }
    if (component.fact().equals(about.name())) {
      return new Term(component, false);
    }
    problems.add(
        node.place(),
        node.where()
            + ": "
            + component.name()
            + " is of another fact than "
            + (spoken == null ? about.name() : "those this condition speaks of"),
        joined
            ? "Use values of " + about.name() + " and " + spoken + "."
            : "Say where that fact stands: of: same-wheel, same-axle, vehicle or any.");
    return null;
  }

  private @Nullable Leaf compare(MapNode.Entry entry, Term term, boolean joined) {
    Dimension dimension = term.component().dimension();
    if (dimension == null) {
      problems.add(
          entry.place(),
          term
              + " is "
              + term.component().type().words()
              + "; expected a quantity before "
              + entry.key(),
          "Ask with is, is-not or is-one-of.");
      return null;
    }
    Limit limit =
        entry.value() instanceof MapNode map
            ? following(map, term, dimension, joined)
            : stated(entry.value(), dimension);
    return limit == null ? null : new Condition.Compare(term, SENSES.get(entry.key()), limit);
  }

  private Limit.@Nullable Stated stated(Node node, Dimension dimension) {
    Quantity exact = names.exact(node, dimension);
    return exact == null ? null : new Limit.Stated(exact);
  }

  private @Nullable Limit following(MapNode map, Term term, Dimension dimension, boolean joined) {
    List<String> keys = List.of("value", "times", "plus");
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
    Node value = map.get("value").orElse(null);
    if (value == null) {
      problems.add(
          map.place(),
          map.where() + ": the key \"value\" is missing; expected the name of a quantity",
          "Write a limit such as 12 mm, or { value: … }.");
      return null;
    }
    Term of = term(value, joined, term.component().fact());
    if (of == null) {
      return null;
    }
    if (of.component().dimension() != dimension) {
      problems.add(
          value.place(),
          of
              + " is "
              + kind(of.component())
              + "; expected "
              + kind(term.component())
              + " as "
              + term
              + " is",
          "Compare values that measure the same.");
      return null;
    }
    Quantity times = map.get("times").map(node -> names.exact(node, Dimension.RATIO)).orElse(null);
    Quantity plus = map.get("plus").map(node -> names.exact(node, dimension)).orElse(null);
    if ((map.get("times").isPresent() && times == null)
        || (map.get("plus").isPresent() && plus == null)) {
      return null;
    }
    return new Limit.Following(
        of, times == null ? 1 : times.value(), plus == null ? Quantity.exact(dimension, 0) : plus);
  }

  private static String kind(Component component) {
    return component.dimension() == null
        ? component.type().words()
        : Words.withArticle(component.dimension().words());
  }

  private @Nullable Leaf is(MapNode.Entry entry, Component component, Term term) {
    if (component.type() == ValueType.QUANTITY) {
      problems.add(
          entry.place(),
          component.name() + " is a quantity; expected at-least, at-most, above or below",
          "A measured value is never exactly another: hold it against a limit.");
      return null;
    }
    boolean several = entry.key().equals("is-one-of");
    if (!several && entry.value() instanceof ListNode) {
      problems.add(
          entry.value().place(),
          entry.value().where() + ": found a list; expected one value",
          "Ask with is-one-of.");
      return null;
    }
    List<String> read = names(entry.value(), component);
    return read == null ? null : new Condition.Is(term, entry.key().equals("is-not"), read);
  }

  /** The names that a value is held against, or null if one was refused. */
  @Nullable List<String> names(Node node, Component component) {
    return names.read(node, component);
  }

  /** The fact that a name stands for, or null if there is none. */
  static @Nullable FactType fact(String name, trammel.read.Place place, Problems problems) {
    FactType fact = Vocabulary.fact(name).orElse(null);
    if (fact == null) {
      problems.add(
          place,
          "no fact is called " + Words.quoted(name),
          Vocabulary.nearestFact(name)
              .map(near -> "Did you mean " + near + "?")
              .orElse("The names are in the list of facts."));
    }
    return fact;
  }
}
