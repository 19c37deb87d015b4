package trammel.quantity;

import org.jspecify.annotations.Nullable;

/**
 * One value that somebody wrote or that a table holds: the leaf of every working.
 *
 * <p>Two uses of one {@code Input} object are one source of error, wherever they occur; so
 * identity, not equality, is what counts, and a reader makes exactly one for each place in a file.
 */
public final class Input {
  private final String file;
  private final String path;
  private final int line;
  private final int column;
  private final String source;
  private final Instrument instrument;
  private final @Nullable Unit unit;

  /**
   * @param file the file it stands in, or the name of the table
   * @param path the keys that lead to it
   * @param line its line, from 1; 0 where it has none
   * @param source who says so: a document, the maker, a person
   * @param instrument how it was come by
   */
  public Input(String file, String path, int line, @Nullable String source, Instrument instrument) {
    this(file, path, line, 0, source, instrument);
  }

  /**
   * @param file the file it stands in, or the name of the table
   * @param path the keys that lead to it
   * @param line its line, from 1; 0 where it has none
   * @param column its column in characters, from 1; 0 where it is not known
   * @param source who says so: a document, the maker, a person
   * @param instrument how it was come by
   */
  public Input(
      String file,
      String path,
      int line,
      int column,
      @Nullable String source,
      Instrument instrument) {
    this(file, path, line, column, source, instrument, null);
  }

  /**
   * @param file the file it stands in, or the name of the table
   * @param path the keys that lead to it
   * @param line its line, from 1; 0 where it has none
   * @param column its column in characters, from 1; 0 where it is not known
   * @param source who says so: a document, the maker, a person
   * @param instrument how it was come by
   * @param unit it was written in; null where it was not written with one
   */
  public Input(
      String file,
      String path,
      int line,
      int column,
      @Nullable String source,
      Instrument instrument,
      @Nullable Unit unit) {
    this.file = file;
    this.path = path;
    this.line = line;
    this.column = column;
    this.source = source == null ? "" : source;
    this.instrument = instrument;
    this.unit = unit;
  }

  public String file() {
    return file;
  }

  public String path() {
    return path;
  }

  public int line() {
    return line;
  }

  /** Its column in characters, from 1; 0 where it is not known. */
  public int column() {
    return column;
  }

  public String source() {
    return source;
  }

  public Instrument instrument() {
    return instrument;
  }

  /** The unit it was written in; null where it was not written with one. */
  public @Nullable Unit unit() {
    return unit;
  }

  /** Where it stands, for a reader: file, line and keys. */
  public String place() {
    return line > 0 ? file + ":" + line + " " + path : file + " " + path;
  }

  @Override
  public String toString() {
    return place();
  }
}
