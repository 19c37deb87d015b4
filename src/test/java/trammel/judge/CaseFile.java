package trammel.judge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import trammel.fact.Fact;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.YamlReader;

/**
 * A rule book's cases, {@code NAME.cases.yaml} beside {@code NAME.drl}.
 *
 * <pre>{@code
 * base:                                # what facts are where a case says nothing else
 *   seating: { part: W-1, bore-room: 0.1 mm, ... }
 * rules:
 *   wheel.bore-too-small:
 *     given: { seating: { ... } }      # if wanted: facts in every case of this rule
 *     reported-as: other.rule          # if the rule reports findings of another one
 *     cases:
 *       - { case: 2 mm too small, seating: { bore-room: -2 mm }, expects: conflict, margin: -2 }
 * }</pre>
 *
 * <p>A case holds the facts that it names and those given; each is its base, overridden by what is
 * given and then by the case. A fact that states no subject is of {@code front-left:wheel}, one
 * without standing {@code worse-or-new}, one without parts of none.
 */
final class CaseFile {
  static final Path BOOK = Path.of("rules", "base");
  private static final Set<String> OWN_KEYS = Set.of("case", "expects", "margin");

  private final Map<String, Map<String, Node>> base = new LinkedHashMap<>();

  private CaseFile() {}

  /** The cases of every file in the base book. */
  static List<RuleCase> all() {
    try (Stream<Path> files = Files.list(BOOK)) {
      return files
          .filter(file -> file.toString().endsWith(".cases.yaml"))
          .sorted()
          .flatMap(file -> read(file).stream())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<RuleCase> read(Path file) {
    Problems problems = new Problems();
    Node root = YamlReader.read(file, file, problems).orElse(null);
    problems.refuseIfAny();
    CaseFile cases = new CaseFile();
    List<RuleCase> found = new ArrayList<>();
    cases.facts(need(map(root), "base"), cases.base);
    for (MapNode.Entry rule : map(need(map(root), "rules")).entries()) {
      cases.rule(rule.key(), map(rule.value()), found);
    }
    return found;
  }

  private void rule(String id, MapNode rule, List<RuleCase> found) {
    String reportedAs = rule.get("reported-as").map(FactMaker::text).orElse(id);
    for (Node node : list(need(rule, "cases")).items()) {
      MapNode stated = map(node);
      Map<String, Map<String, Node>> facts = new LinkedHashMap<>();
      rule.get("given").ifPresent(given -> facts(given, facts));
      OptionalDouble margin = OptionalDouble.empty();
      for (MapNode.Entry entry : stated.entries()) {
        if (!OWN_KEYS.contains(entry.key())) {
          components(entry, facts);
        } else if (entry.key().equals("margin")) {
          margin = OptionalDouble.of(Double.parseDouble(FactMaker.text(entry.value())));
        }
      }
      found.add(
          new RuleCase(
              id,
              reportedAs,
              FactMaker.text(need(stated, "case")),
              facts.entrySet().stream()
                  .map(fact -> make(fact.getKey(), fact.getValue(), node))
                  .toList(),
              FactMaker.text(need(stated, "expects")),
              margin,
              node.place()));
    }
  }

  private Fact make(String name, Map<String, Node> stated, Node node) {
    Map<String, Node> values = new LinkedHashMap<>(base.getOrDefault(name, Map.of()));
    values.putAll(stated);
    try {
      return FactMaker.make(FactMaker.type(name, node), values);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(node.place() + ": " + e.getMessage(), e);
    }
  }

  private void facts(Node node, Map<String, Map<String, Node>> into) {
    map(node).entries().forEach(entry -> components(entry, into));
  }

  private static void components(MapNode.Entry fact, Map<String, Map<String, Node>> into) {
    Map<String, Node> values = into.computeIfAbsent(fact.key(), name -> new LinkedHashMap<>());
    map(fact.value()).entries().forEach(entry -> values.put(entry.key(), entry.value()));
  }

  private static Node need(MapNode map, String key) {
    return map.get(key)
        .orElseThrow(() -> new IllegalArgumentException(map.place() + ": lacks " + key));
  }

  private static MapNode map(Node node) {
    if (node instanceof MapNode map) {
      return map;
    }
    throw new IllegalArgumentException(node.place() + ": expected keys and values");
  }

  private static ListNode list(Node node) {
    if (node instanceof ListNode list) {
      return list;
    }
    throw new IllegalArgumentException(node.place() + ": expected a list");
  }
}
