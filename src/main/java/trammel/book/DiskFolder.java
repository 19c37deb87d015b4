package trammel.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import trammel.read.Place;
import trammel.read.Problems;

/** A book's folder on disk. A link that leads out of it is not followed. */
public final class DiskFolder implements BookFolder {
  private static final double MEGABYTE = 1e6;

  private final Path folder;

  /** The book in this folder. */
  public DiskFolder(Path folder) {
    this.folder = folder;
  }

  @Override
  public String shownAs() {
    return folder.toString();
  }

  @Override
  public List<String> names(Problems problems) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> !Files.isDirectory(file))
          .map(file -> String.valueOf(file.getFileName()))
          .sorted()
          .toList();
    } catch (IOException e) {
      problems.add(
          Place.of(shownAs()),
          "this folder cannot be opened; expected a folder with a book.yaml",
          "Check its name, and that you may read it.");
      return List.of();
    }
  }

  @Override
  public Optional<byte[]> read(String name, long most, Problems problems) {
    Place place = Place.of(shownAs(name));
    Path file = folder.resolve(name);
    try {
      if (!file.toRealPath().startsWith(folder.toRealPath())) {
        problems.add(
            place,
            "this file is a link that leads out of its book's folder; expected a file in it",
            "Copy the file into the folder.");
        return Optional.empty();
      }
      byte[] bytes;
      try (InputStream in = Files.newInputStream(file)) {
        bytes = in.readNBytes((int) most + 1);
      }
      if (bytes.length > most) {
        problems.add(
            place,
            String.format(
                Locale.ROOT, "this file has more than %.0f MB; expected less", most / MEGABYTE),
            "Split it, or check that it is the file you mean.");
        return Optional.empty();
      }
      return Optional.of(bytes);
    } catch (IOException e) {
      problems.add(place, "this file cannot be opened", "Check that it is there to be read.");
      return Optional.empty();
    }
  }
}
