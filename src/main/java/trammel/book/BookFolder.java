package trammel.book;

import java.util.List;
import trammel.read.Problems;

/** Where the files of a book are. */
public interface BookFolder {
  /** The folder as messages name it. */
  String shownAs();

  /** The names of the files in it, sorted. */
  List<String> names(Problems problems);

  /**
   * The content of a file.
   *
   * @param name one of {@link #names}
   * @param most the largest size that is read (bytes)
   * @return the content; empty, and a problem told, if it cannot be read, is larger, or is not in
   *     the folder itself
   */
  java.util.Optional<byte[]> read(String name, long most, Problems problems);

  /** A file as messages name it. */
  default String shownAs(String name) {
    return shownAs().isEmpty() ? name : shownAs() + "/" + name;
  }
}
