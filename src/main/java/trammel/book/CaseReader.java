package trammel.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;

/**
 * Reads the cases of a rule.
 *
 * <pre>{@code
 * cases:
 *   - { case: 8 mm left, clearance: { station: rear-mount, gap: 8 mm ± 2 mm }, expects: caution }
 * }</pre>
 *
 * <p>A fact that stands several times is a list. What a case expects is {@code nothing}, {@code
 * precedent}, {@code unproven}, a kind, or {@code possibly} and a kind. {@code known-gap} says why
 * the rule does not do so yet.
 */
final class CaseReader {
  private static final int FEWEST = 4;
  private static final String KNOWN_GAP = "known-gap";
  private static final Set<String> OWN_KEYS = Set.of("case", "expects", KNOWN_GAP);

  private final FactType about;
  private final List<String> expected;
  private final FactReader reader;
  private final Problems problems;

  /**
   * @param kinds what the rule may amount to
   * @param asked what the rule asks of, and so every case must state
   */
  CaseReader(FactType about, Set<RuleKind> kinds, Set<Component> asked, Problems problems) {
    this.about = about;
    this.reader = new FactReader(asked, problems);
    this.problems = problems;
    this.expected = new ArrayList<>(List.of(Case.NOTHING));
    for (RuleKind kind : kinds) {
      expected.add(kind.toString());
      if (kind.leavesUnproven()) {
        expected.addAll(List.of(Case.UNPROVEN, Case.PRECEDENT));
      } else {
        expected.add(Case.POSSIBLY + kind);
      }
    }
  }

  List<Case> read(List<Node> nodes, Place rule) {
    if (nodes.size() < FEWEST || nodes.size() > Limits.CASES) {
      problems.add(
          rule,
          nodes.size() + " cases; expected at least " + FEWEST + ", at most " + Limits.CASES,
          "Show where it fires, where it just does not, where it is undecided and where a value is"
              + " absent.");
    }
    List<Case> cases = new ArrayList<>();
    for (Node node : nodes) {
      if (node instanceof MapNode map) {
        Case read = one(map);
        if (read != null) {
          cases.add(read);
        }
      } else {
        problems.add(
            node.place(),
            node.where() + ": found " + node.words() + "; expected a case",
            "Write for example { case: …, " + about.name() + ": { … }, expects: nothing }.");
      }
    }
    return cases;
  }

  private @Nullable Case one(MapNode map) {
    int before = problems.count();
    String name = text(map, "case");
    String expects = text(map, "expects");
    if (expects != null && !expected.contains(expects)) {
      problems.add(
          map.get("expects").orElse(map).place(),
          map.where()
              + ": a case that expects "
              + Words.quoted(expects)
              + "; expected "
              + Words.anyOf(expected),
          Words.didYouMean(expects, expected, "Write one of these."));
    }
    String knownGap = map.get(KNOWN_GAP).isPresent() ? text(map, KNOWN_GAP) : "";
    List<Fact> facts = new ArrayList<>();
    for (MapNode.Entry entry : map.entries()) {
      if (!OWN_KEYS.contains(entry.key())) {
        facts(entry, facts);
      }
    }
    if (problems.count() > before || name == null || expects == null || knownGap == null) {
      return null;
    }
    if (facts.stream().noneMatch(about.type()::isInstance)) {
      problems.add(
          map.place(),
          map.where() + ": a case without " + about.name() + ", which the rule is about",
          "State it: " + about.name() + ": { … }.");
      return null;
    }
    return new Case(map.place(), name, facts, expects, knownGap);
  }

  private void facts(MapNode.Entry entry, List<Fact> into) {
    FactType type = LeafReader.fact(entry.key(), entry.place(), problems);
    if (type == null) {
      return;
    }
    List<Node> stated =
        entry.value() instanceof ListNode list ? list.items() : List.of(entry.value());
    for (Node node : stated) {
      if (node instanceof MapNode map) {
        Fact fact = reader.read(type, map);
        if (fact != null) {
          into.add(fact);
        }
      } else {
        problems.add(
            node.place(),
            node.where() + ": found " + node.words() + "; expected the values of a fact",
            "Write { … } with its components.");
      }
    }
  }

  private @Nullable String text(MapNode map, String key) {
    if (map.get(key).orElse(null) instanceof TextNode text && !text.text().isBlank()) {
      return text.text();
    }
    problems.add(
        map.place(),
        map.where() + ": the key " + Words.quoted(key) + " is missing; expected a text",
        "Add \"" + key + ": …\".");
    return null;
  }
}
