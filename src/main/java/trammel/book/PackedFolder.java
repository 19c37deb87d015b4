package trammel.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import trammel.read.Problems;

/** A book's folder inside the program, which was tested when the program was built. */
final class PackedFolder implements BookFolder {
  private final String folder;
  private final List<String> names;

  /**
   * @param folder where it is among the program's own files
   * @param names the names of its files, sorted
   */
  PackedFolder(String folder, List<String> names) {
    this.folder = folder;
    this.names = List.copyOf(names);
  }

  @Override
  public String shownAs() {
    return "program:" + folder;
  }

  @Override
  public List<String> names(Problems problems) {
    return names;
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalStateException if the program was packed without the file
   */
  @Override
  public Optional<byte[]> read(String name, long most, Problems problems) {
    try (InputStream in = PackedFolder.class.getResourceAsStream(folder + "/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the program holds no " + folder + "/" + name);
      }
      return Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
