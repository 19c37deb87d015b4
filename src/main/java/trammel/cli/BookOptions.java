package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trammel.book.Book;
import trammel.book.BookShelf;
import trammel.book.Books;
import trammel.book.Unread;
import trammel.judge.Judge;
import trammel.read.UnreadableFile;

/** Which books of rules are taken besides those of the program. */
final class BookOptions {
  @Option(
      names = "--book",
      paramLabel = "FOLDER",
      description = "Judge by this book too; may be given several times.")
  private List<Path> named = List.of();

  /**
   * The user's books and those named, read and checked together.
   *
   * @throws trammel.read.UnreadableFile if one that is named cannot be read
   */
  Books.Shelved read() {
    return Books.read(shelf(), List.of(), Judge::knownRules);
  }

  /** Where the user's books and those named are. */
  BookShelf shelf() {
    return BookShelf.of(usual(), named);
  }

  /** The books of these folders alone. */
  static List<Book> read(List<Path> folders) {
    return Books.read(BookShelf.of(null, folders).named(), Judge.knownRules());
  }

  /** Says on a stream for errors which books could not be read: output goes on without them. */
  static void tell(List<Unread> unread, PrintWriter err) {
    for (Unread book : unread) {
      err.println(
          "Book "
              + book.name()
              + " was not read: none of its rules counts, and nothing that it assumes:");
      err.println(new UnreadableFile(book.problems()).getMessage());
    }
    err.flush();
  }

  private static @Nullable Path usual() {
    boolean windows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    return BookShelf.usual(System.getenv(), windows, System.getProperty("user.home"));
  }
}
