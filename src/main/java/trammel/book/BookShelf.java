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
import trammel.read.Problems;

/**
 * Where a shop's books are: in the user's configuration folder, one folder a book, and in folders
 * that are named. Never in the current folder, for a book that nobody asked for must not judge.
 */
public final class BookShelf {
  private static final String OWN = "trammel";
  private static final String BOOKS = "books";

  private BookShelf() {}

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
   * The books of the user's folder by name, then those that are named, each folder once.
   *
   * @param usual the folder of the user's books; null, or not there, for none
   * @throws trammel.read.UnreadableFile if the user's folder cannot be opened, or a sheet lies
   *     loose in it
   */
  public static List<BookFolder> folders(@Nullable Path usual, List<Path> named) {
    List<Path> folders = new ArrayList<>();
    if (usual != null && Files.exists(usual)) {
      folders.addAll(within(usual));
    }
    folders.addAll(named);
    Map<Path, BookFolder> once = new LinkedHashMap<>();
    for (Path folder : folders) {
      once.putIfAbsent(real(folder), new DiskFolder(folder));
    }
    return List.copyOf(once.values());
  }

  private static List<Path> within(Path usual) {
    Problems problems = new Problems();
    List<Path> folders = new ArrayList<>();
    try (Stream<Path> found = Files.list(usual)) {
      for (Path one : found.sorted().toList()) {
        String name = String.valueOf(one.getFileName());
        if (Files.isDirectory(one) && !name.startsWith(".")) {
          folders.add(one);
        } else if (name.endsWith(".yaml")) {
          problems.add(
              Place.of(one.toString()),
              "a file among the folders of books; expected it in the folder of its book",
              "Make a folder for the book, and move the file there.");
        }
      }
    } catch (IOException e) {
      problems.add(
          Place.of(usual.toString()),
          "the folder of your books cannot be opened",
          "Check that you may read it.");
    }
    problems.refuseIfAny();
    return folders;
  }

  private static Path real(Path folder) {
    try {
      return folder.toRealPath();
    } catch (IOException e) {
      return folder.toAbsolutePath().normalize();
    }
  }
}
