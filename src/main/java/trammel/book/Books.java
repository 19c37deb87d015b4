package trammel.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.book.SheetFile.RuleEntry;
import trammel.catalog.AssumedValue;
import trammel.read.Binder;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Place;
import trammel.read.Problem;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.read.YamlReader;
import trammel.vocabulary.Version;
import trammel.vocabulary.Vocabulary;

/** Reads rule books, checks them, and checks them against each other. */
public final class Books {
  private static final String MANIFEST = "book.yaml";
  private static final String RULES = ".rules.yaml";

  private final Problems problems;

  /** Of the book that was read last, as far as it could be read. */
  private @Nullable Manifest manifest;

  private Books(Problems problems) {
    this.problems = problems;
  }

  /**
   * Reads books.
   *
   * @param known the rules that are in force whatever books are read
   * @throws trammel.read.UnreadableFile with everything that is wrong with any of them
   */
  public static List<Book> read(List<? extends BookFolder> folders, Collection<KnownRule> known) {
    Problems problems = new Problems();
    Books reader = new Books(problems);
    List<Book> books = new ArrayList<>();
    for (BookFolder folder : folders) {
      Book book = reader.book(folder);
      if (book != null) {
        books.add(book);
      }
    }
    new BookCheck(known, problems).check(books);
    problems.refuseIfAny();
    return books;
  }

  /**
   * What could be read.
   *
   * @param books the books, in the order of their folders, those of the user's own first
   * @param unread those of the user's own that could not be read
   */
  public record Shelved(List<Book> books, List<Unread> unread) {
    public Shelved {
      books = List.copyOf(books);
      unread = List.copyOf(unread);
    }
  }

  /**
   * Reads the books of a shelf. One of the user's own that cannot be read, or that does to another
   * what books must not do to each other, is left out and told; the others are as without it.
   *
   * @param law the books of the law that are taken besides
   * @param known finds the rules that are in force whatever books are read; asked once, side by
   *     side with the reading
   * @throws trammel.read.UnreadableFile if a book that is named, or one of the law, cannot be read
   */
  public static Shelved read(
      BookShelf shelf, List<BookFolder> law, Supplier<Collection<KnownRule>> known) {
    CompletableFuture<Collection<KnownRule>> inForce = CompletableFuture.supplyAsync(known);
    Problems problems = new Problems();
    List<Book> asked = new ArrayList<>();
    for (BookFolder folder : Stream.concat(shelf.named().stream(), law.stream()).toList()) {
      Book book = new Books(problems).book(folder);
      if (book != null) {
        asked.add(book);
      }
    }
    problems.refuseIfAny();
    List<Unread> unread = new ArrayList<>(shelf.unread());
    Map<BookFolder, Book> own = new LinkedHashMap<>();
    for (BookFolder folder : shelf.own()) {
      Problems its = new Problems();
      Books reader = new Books(its);
      Book book = reader.book(folder);
      if (book != null && its.isEmpty()) {
        own.put(folder, book);
      } else {
        unread.add(new Unread(folder.shownAs(), reader.manifest, its.sorted()));
      }
    }
    agree(asked, own, unread, inForce.join());
    List<Book> books = new ArrayList<>(own.values());
    books.addAll(asked);
    return new Shelved(books, unread);
  }

  /** Leaves out own books, one after the other, until the rest do nothing to each other. */
  private static void agree(
      List<Book> asked,
      Map<BookFolder, Book> own,
      List<Unread> unread,
      Collection<KnownRule> known) {
    while (true) {
      Problems problems = new Problems();
      List<Book> all = new ArrayList<>(asked);
      all.addAll(own.values());
      new BookCheck(known, problems).check(all);
      if (problems.isEmpty()) {
        return;
      }
      BookFolder first =
          own.keySet().stream()
              .filter(folder -> !of(folder, problems).isEmpty())
              .findFirst()
              .orElse(null);
      if (first == null) {
        problems.refuseIfAny();
        return;
      }
      unread.add(new Unread(first.shownAs(), own.get(first).manifest(), of(first, problems)));
      own.remove(first);
    }
  }

  private static List<Problem> of(BookFolder folder, Problems problems) {
    return problems.sorted().stream()
        .filter(problem -> problem.place().file().startsWith(folder.shownAs("")))
        .toList();
  }

  /** What a book says of itself; empty, and problems told, if that cannot be read. */
  static Optional<Manifest> manifest(BookFolder folder, Problems problems) {
    return Optional.ofNullable(new Books(problems).manifest(folder));
  }

  private @Nullable Book book(BookFolder folder) {
    List<String> names = folder.names(problems);
    if (!names.contains(MANIFEST)) {
      if (!names.isEmpty() || problems.isEmpty()) {
        problems.add(
            Place.of(folder.shownAs()),
            "no " + MANIFEST + " in this folder; expected one",
            "A book is a folder with a " + MANIFEST + " and sheets NAME" + RULES + ".");
      }
      return null;
    }
    Manifest manifest = manifest(folder);
    this.manifest = manifest;
    if (manifest == null) {
      return null;
    }
    List<String> sheets = names.stream().filter(name -> name.endsWith(RULES)).toList();
    if (sheets.isEmpty() || sheets.size() > Limits.FILES) {
      problems.add(
          manifest.place(),
          sheets.size() + " rule sheets in the folder; expected 1 to " + Limits.FILES,
          "Name sheets NAME" + RULES + ".");
      return null;
    }
    List<SheetRule> rules = new ArrayList<>();
    List<Table> tables = new ArrayList<>();
    List<AssumedValue> defaults = new ArrayList<>();
    int found = 0;
    for (String name : sheets) {
      Optional<SheetFile> sheet =
          tree(folder, name).flatMap(node -> Binder.bind(SheetFile.class, node, problems));
      if (sheet.isEmpty()) {
        continue;
      }
      found += sheet.get().rules().size() + sheet.get().tables().size();
      if (found > Limits.RULES) {
        problems.add(
            Place.of(folder.shownAs(name)),
            "more than " + Limits.RULES + " rules in one book; expected fewer",
            "Make several books of it, each for its vehicles.");
        return null;
      }
      rules(sheet.get().rules(), manifest, rules);
      TableReader table = new TableReader(manifest, folder, problems);
      sheet.get().tables().forEach(entry -> add(tables, table.read(entry)));
      DefaultReader value = new DefaultReader(manifest, problems);
      sheet.get().defaults().forEach(entry -> add(defaults, value.read(entry)));
    }
    once(defaults);
    return new Book(manifest, rules, tables, defaults);
  }

  private record Read(@Nullable SheetRule rule, Problems problems) {}

  /** Rules do not ask of each other yet: each is read for itself, with problems of its own. */
  private void rules(List<RuleEntry> entries, Manifest manifest, List<SheetRule> into) {
    List<Read> each =
        entries.parallelStream()
            .map(
                entry -> {
                  Problems its = new Problems();
                  return new Read(new RuleReader(manifest, its).read(entry), its);
                })
            .toList();
    for (Read one : each) {
      problems.addAll(one.problems());
      add(into, one.rule());
    }
  }

  /** Two defaults of one book for one value are a mistake, even where they agree. */
  private void once(List<AssumedValue> defaults) {
    Map<String, AssumedValue> first = new HashMap<>();
    for (AssumedValue value : defaults) {
      AssumedValue before = first.putIfAbsent(value.key(), value);
      if (before != null) {
        problems.add(
            value.place(),
            "a second default of " + Words.quoted(value.key()) + "; the first is " + before.place(),
            "Remove one of the two.");
      }
    }
  }

  private static <T> void add(List<T> to, @Nullable T read) {
    if (read != null) {
      to.add(read);
    }
  }

  private Optional<Node> tree(BookFolder folder, String name) {
    return folder
        .read(name, Limits.FILE, problems)
        .flatMap(bytes -> YamlReader.parse(folder.shownAs(name), bytes, problems));
  }

  private @Nullable Manifest manifest(BookFolder folder) {
    Node node = tree(folder, MANIFEST).orElse(null);
    if (node == null) {
      return null;
    }
    Manifest manifest = Binder.bind(Manifest.class, node, problems).orElse(null);
    if (manifest == null) {
      return null;
    }
    Ids.book(manifest.name(), place(node, "book"), problems);
    if (manifest.name().equals("base")) {
      problems.add(
          place(node, "book"), "a book called base; expected another name", "Rename the book.");
    }
    Version newest = Vocabulary.version();
    if (manifest.vocabulary().compareTo(newest) > 0) {
      problems.add(
          place(node, "vocabulary"),
          "book "
              + manifest.name()
              + " is written against vocabulary "
              + manifest.vocabulary()
              + "; this program knows "
              + newest,
          "Use a newer program, or the book's older version.");
    }
    law(manifest, node);
    return manifest;
  }

  private void law(Manifest manifest, Node node) {
    Map<String, Boolean> written = new HashMap<>();
    written.put("place", manifest.of() != null);
    written.put("authority", manifest.authority() != null);
    written.put("read-on", manifest.readOn() != null);
    boolean law = manifest.kind() == Manifest.Kind.LAW;
    written.forEach(
        (key, there) -> {
          if (there != law) {
            problems.add(
                place(node, law ? "kind" : key),
                law
                    ? "a book of the law without " + Words.quoted(key)
                    : "the key " + Words.quoted(key) + " in a book of kind shop",
                law ? "Add a line \"" + key + ": …\"." : "Remove it, or write kind: law.");
          }
        });
  }

  private static Place place(Node node, String key) {
    return node instanceof MapNode map ? map.get(key).orElse(node).place() : node.place();
  }
}
