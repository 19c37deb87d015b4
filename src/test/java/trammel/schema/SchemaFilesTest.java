package trammel.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The files under {@code shared/schema} are what the records give; {@code -Dtrammel.write=true}
 * writes them anew.
 */
class SchemaFilesTest {
  @Test
  void filesAreWhatTheRecordsGive() throws IOException {
    Map<String, String> generated = SchemaFiles.generated();
    if (Boolean.getBoolean("trammel.write")) {
      Files.createDirectories(SchemaFiles.FOLDER);
      for (var file : generated.entrySet()) {
        Files.writeString(SchemaFiles.FOLDER.resolve(file.getKey()), file.getValue());
      }
    }
    assertThat(names()).containsExactlyInAnyOrderElementsOf(generated.keySet());
    for (var file : generated.entrySet()) {
      assertThat(Files.readString(SchemaFiles.FOLDER.resolve(file.getKey())))
          .as("%s; -Dtrammel.write=true writes it anew", file.getKey())
          .isEqualTo(file.getValue());
    }
  }

  private static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(SchemaFiles.FOLDER)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
