package trammel.book;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trammel.read.Problem;
import trammel.read.Problems;
import trammel.read.UnreadableFile;

/** A book that exists only in memory, file by file. */
public final class TestBook implements BookFolder {
  private static final String MANIFEST =
      """
      book: %s
      title: What we have seen
      version: 1.2
      author: A. Fitter (invented)
      license: CC0-1.0
      kind: shop
      vocabulary: 0.3
      """;

  private final String name;
  private final Map<String, String> files = new TreeMap<>();

  private TestBook(String name) {
    this.name = name;
  }

  /** A shop's book with one sheet. */
  public static TestBook shop(String name, String sheet) {
    return new TestBook(name)
        .with("book.yaml", String.format(MANIFEST, name))
        .with("seen.rules.yaml", sheet);
  }

  /** A shop's book with one rule, of which the cases are filled in. */
  public static TestBook ofRule(String rule) {
    return shop("hillside-shop", sheet(rule));
  }

  /** The law of an invented place. */
  public static TestBook law(String sheet) {
    return new TestBook("law")
        .with(
            "book.yaml",
            String.format(MANIFEST, "lowmark-law").replace("kind: shop", "kind: law")
                + """
                place: Lowmark
                also-called: [XX-LM]
                authority: the road office
                read-on: 2026-11-25
                """)
        .with("road.rules.yaml", sheet);
  }

  /** The same with another file, or another content of one. */
  public TestBook with(String file, String text) {
    files.put(file, text);
    return this;
  }

  /** The same with something replaced in its manifest. */
  public TestBook manifest(String text, String by) {
    return with("book.yaml", files.getOrDefault("book.yaml", "").replace(text, by));
  }

  /** A sheet of rules; each is written without its dash and indentation. */
  static String sheet(String... rules) {
    return Arrays.stream(rules)
        .map(
            rule ->
                rule.strip()
                    .lines()
                    .map(line -> "    " + line)
                    .collect(Collectors.joining("\n", "  - ", "\n"))
                    .replaceFirst("  -     ", "  - "))
        .collect(Collectors.joining("", "rules:\n", ""));
  }

  /** Four cases of one fact, all alike: enough where only the reading is of interest. */
  static String cases(String fact) {
    return "cases:\n"
        + IntStream.rangeClosed(1, 4)
            .mapToObj(i -> "  - { case: number " + i + ", " + fact + ", expects: nothing }\n")
            .collect(Collectors.joining());
  }

  /** The books read, with nothing in force beside them. */
  public static List<Book> read(TestBook... books) {
    return Books.read(List.of(books), List.of());
  }

  /** What is wrong with a book, place and text. */
  static List<String> problems(TestBook... books) {
    return problems(List.of(), books);
  }

  static List<String> problems(List<KnownRule> known, TestBook... books) {
    try {
      Books.read(List.of(books), known);
      return List.of();
    } catch (UnreadableFile unreadable) {
      return unreadable.problems().stream().map(Problem::toString).toList();
    }
  }

  @Override
  public String shownAs() {
    return name;
  }

  @Override
  public List<String> names(Problems problems) {
    return List.copyOf(files.keySet());
  }

  @Override
  public Optional<byte[]> read(String file, long most, Problems problems) {
    return Optional.of(files.getOrDefault(file, "").getBytes(StandardCharsets.UTF_8));
  }
}
