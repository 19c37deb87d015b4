package trammel.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.read.Place;
import trammel.read.Problem;

/**
 * Where a shop's books are: in the user's configuration folder, one folder a book, and in folders
 * that are named. Never in the current folder, for a book that nobody asked for must not judge.
 *
 * @param own the books of the user's folder, by name, without those that are named too
 * @param named the books that are named, in that order
 * @param unread what lies in the user's folder and is no folder of a book
 */
public record BookShelf(List<BookFolder> own, List<BookFolder> named, List<Unread> unread) {
  private static final String OWN = "trammel";
  private static final String BOOKS = "books";

  public BookShelf {
    own = List.copyOf(own);
    named = List.copyOf(named);
    unread = List.copyOf(unread);
  }

  /**
   * The folder of the user's books, by the XDG Base Directory Specification ({@code
   * $XDG_CONFIG_HOME}, else {@code ~/.config}; a relative one is to be ignored), on Windows in
   * {@code %APPDATA%}.
   *
   * @param environment variables of the environment
   * @param home the user's home folder
   * @return the folder, which need not be there; null where the environment names none
   */
  public static @Nullable Path usual(
      Map<String, String> environment, boolean windows, @Nullable String home) {
    Path root = absolute(environment.get(windows ? "APPDATA" : "XDG_CONFIG_HOME"));
    if (root == null && !windows) {
      Path own = absolute(home);
      root = own == null ? null : own.resolve(".config");
    }
    return root == null ? null : root.resolve(OWN).resolve(BOOKS);
  }

  private static @Nullable Path absolute(@Nullable String text) {
    if (text == null || text.isBlank()) {
      return null;
    }
    Path path = Path.of(text);
    return path.isAbsolute() ? path : null;
  }

  /**
   * What is on the shelf. A folder that is named counts as named, wherever it lies, and once.
   *
   * @param usual the folder of the user's books; null, or not there, for none
   */
  public static BookShelf of(@Nullable Path usual, List<Path> named) {
    Map<Path, BookFolder> given = new LinkedHashMap<>();
    named.forEach(folder -> given.putIfAbsent(real(folder), new DiskFolder(folder)));
    Map<Path, BookFolder> own = new LinkedHashMap<>();
    List<Unread> unread = new ArrayList<>();
    if (usual != null && Files.exists(usual)) {
      for (Path folder : within(usual, unread)) {
        if (!given.containsKey(real(folder))) {
          own.putIfAbsent(real(folder), new DiskFolder(folder));
        }
      }
    }
    return new BookShelf(List.copyOf(own.values()), List.copyOf(given.values()), unread);
  }

  private static List<Path> within(Path usual, List<Unread> unread) {
    List<Path> folders = new ArrayList<>();
    try (Stream<Path> found = Files.list(usual)) {
      for (Path one : found.sorted().toList()) {
        String name = String.valueOf(one.getFileName());
        if (Files.isDirectory(one)) {
          if (!name.startsWith(".")) {
            folders.add(one);
          }
        } else if (name.endsWith(".yaml")) {
          unread.add(
              unread(
                  one,
                  "a file among the folders of books; expected it in the folder of its book",
                  "Make a folder for the book, and move the file there."));
        } else if (!Files.exists(one)) {
          unread.add(
              unread(
                  one,
                  "a link that leads nowhere; expected the folder of a book",
                  "Mend the link, or remove it."));
        }
      }
    } catch (IOException e) {
      unread.add(
          unread(
              usual, "the folder of your books cannot be opened", "Check that you may read it."));
    }
    return folders;
  }

  private static Unread unread(Path path, String what, String advice) {
    String shown = path.toString();
    return new Unread(shown, null, List.of(new Problem(Place.of(shown), what, advice)));
  }

  private static Path real(Path folder) {
    try {
      return folder.toRealPath();
    } catch (IOException e) {
      return folder.toAbsolutePath().normalize();
    }
  }
}
