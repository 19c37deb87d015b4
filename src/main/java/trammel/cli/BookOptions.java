package trammel.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trammel.book.Book;
import trammel.book.BookFolder;
import trammel.book.BookShelf;
import trammel.book.Books;
import trammel.judge.Judge;

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
   * @throws trammel.read.UnreadableFile if one cannot be read: then nothing is judged at all
   */
  List<Book> read() {
    return Books.read(folders(), Judge.knownRules());
  }

  /** Where the user's books and those named are. */
  List<BookFolder> folders() {
    return BookShelf.folders(usual(), named);
  }

  /** The books of these folders alone. */
  static List<Book> read(List<Path> folders) {
    return Books.read(BookShelf.folders(null, folders), Judge.knownRules());
  }

  private static @Nullable Path usual() {
    boolean windows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    return BookShelf.usual(System.getenv(), windows, System.getProperty("user.home"));
  }
}
