package trammel.judge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import trammel.book.Book;
import trammel.book.SheetRule;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.YamlReader;

/**
 * What rules are shown to do, for readers: the cases of the base book, which are packed beside it
 * and held against it by its tests, and those of sheets. Nothing is read before it is asked for, so
 * that a check pays for none of it.
 */
public final class Examples {
  private static final String FOLDER = "/base/";
  private static final String CASES = ".cases.yaml";

  private final Map<String, List<Example>> byRule = new HashMap<>();

  /**
   * One case.
   *
   * @param name what is so in it
   * @param expects what the rule makes of it, as {@link trammel.book.Case#expects()}
   */
  public record Example(String name, String expects) {
    @Override
    public String toString() {
      return name + ": " + expects;
    }
  }

  private Examples() {}

  /** The examples of every rule of the base book and of these books. */
  public static Examples of(List<Book> books) {
    Examples examples = new Examples();
    Set<String> groups = new TreeSet<>();
    BaseBook.rules(BaseBook.models()).forEach(rule -> groups.add(rule.group()));
    groups.forEach(group -> examples.packed(FOLDER + group + CASES));
    for (Book book : books) {
      book.rules().forEach(examples::sheet);
      book.tables().forEach(table -> examples.sheet(table.rule()));
    }
    return examples;
  }

  /** Those of a rule, in the order they are written; none for a rule that has none. */
  public List<Example> of(String rule) {
    return byRule.getOrDefault(rule, List.of());
  }

  private void sheet(SheetRule rule) {
    byRule.put(
        rule.id(),
        rule.cases().stream().map(shown -> new Example(shown.name(), shown.expects())).toList());
  }

  private void packed(String file) {
    Problems problems = new Problems();
    Node root = YamlReader.parse("program:" + file, bytes(file), problems).orElse(null);
    problems.refuseIfAny();
    for (MapNode.Entry rule : entries(root, "rules")) {
      List<Example> found = new ArrayList<>();
      if (rule.value() instanceof MapNode map
          && map.get("cases").orElse(null) instanceof ListNode cases) {
        cases.items().forEach(shown -> found.add(example(shown)));
      }
      byRule.put(rule.key(), List.copyOf(found));
    }
  }

  private static Example example(Node shown) {
    return new Example(text(shown, "case"), text(shown, "expects"));
  }

  private static Collection<MapNode.Entry> entries(@Nullable Node node, String key) {
    return node instanceof MapNode map && map.get(key).orElse(null) instanceof MapNode inner
        ? inner.entries()
        : List.of();
  }

  private static String text(Node node, String key) {
    if (node instanceof MapNode map && map.get(key).orElse(null) instanceof TextNode text) {
      return text.text();
    }
    throw new IllegalStateException(node.place() + ": a case of the base book without " + key);
  }

  private static byte[] bytes(String file) {
    try (InputStream in = Examples.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the program holds no " + file);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
