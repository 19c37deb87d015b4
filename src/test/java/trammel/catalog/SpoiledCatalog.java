package trammel.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import trammel.read.UnreadableFile;

/** The demo catalog with one of its files spoiled. */
final class SpoiledCatalog {
  private static final Path DEMO = Path.of("catalog-demo");

  private final Path folder;

  /** Copies the demo into a folder. */
  SpoiledCatalog(Path folder) throws IOException {
    this.folder = folder;
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(DEMO.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  /** Changes a file of it, such as {@code vehicles/skerrow.vehicle.yaml}. */
  void spoil(String file, UnaryOperator<String> change) throws IOException {
    Path path = folder.resolve(file);
    Files.writeString(path, change.apply(Files.readString(path)));
  }

  /** Replaces text that must stand there once. */
  static String replaced(String text, String old, String wrong) {
    assertThat(text.split(java.util.regex.Pattern.quote(old), -1)).as("once: " + old).hasSize(2);
    return text.replace(old, wrong);
  }

  Catalog read() {
    return CatalogFiles.read(folder);
  }

  /** All that is said, by file name without its folder: none if it is read. */
  List<String> refusal() {
    UnreadableFile refused = catchThrowableOfType(UnreadableFile.class, this::read);
    if (refused == null) {
      return List.of();
    }
    return refused.getMessage().replace(folder + "/", "").lines().toList();
  }
}
