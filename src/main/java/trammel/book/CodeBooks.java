package trammel.book;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trammel.read.Problems;

/** The books of the law that are packed in the program. */
public final class CodeBooks {
  private static final String ROOT = "/codes";

  /** The list of their files, one a line, {@code FOLDER/NAME}. */
  private static final String LIST = "files.txt";

  private CodeBooks() {}

  /** Every one of them, by name of its folder. */
  public static List<BookFolder> all() {
    byte[] list =
        new PackedFolder(ROOT, List.of(LIST)).read(LIST, Limits.FILE, new Problems()).orElseThrow();
    Map<String, List<String>> folders = new TreeMap<>();
    new String(list, StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.isBlank())
        .sorted()
        .forEach(
            line -> {
              int slash = line.indexOf('/');
              folders
                  .computeIfAbsent(line.substring(0, slash), folder -> new ArrayList<>())
                  .add(line.substring(slash + 1));
            });
    List<BookFolder> books = new ArrayList<>();
    folders.forEach((folder, names) -> books.add(new PackedFolder(ROOT + "/" + folder, names)));
    return List.copyOf(books);
  }

  /**
   * Those that hold the law of a place. Only their manifests are read for it.
   *
   * @param registeredAt the place as a sheet names it
   * @throws trammel.read.UnreadableFile if a manifest cannot be read
   */
  public static List<BookFolder> at(String registeredAt) {
    Problems problems = new Problems();
    List<BookFolder> found =
        all().stream()
            .filter(
                folder ->
                    Books.manifest(folder, problems)
                        .filter(manifest -> manifest.names(registeredAt))
                        .isPresent())
            .toList();
    problems.refuseIfAny();
    return found;
  }
}
