package trammel.read;

import java.util.Comparator;

/**
 * Where something stands in a file.
 *
 * @param file the file as the user named it
 * @param line the line, from 1; 0 for the file as a whole
 * @param column the column in characters, from 1; 0 for the file as a whole
 */
public record Place(String file, int line, int column) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column);

  /** The file as a whole. */
  public static Place of(String file) {
    return new Place(file, 0, 0);
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column}, or the file alone. */
  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
