package trammel.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
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

  @Test
  void schemasAreSchemas() throws IOException {
    Schema draft =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
    for (String name : names()) {
      if (name.endsWith(".schema.json")) {
        String text = Files.readString(SchemaFiles.FOLDER.resolve(name));
        assertThat(draft.validate(text, InputFormat.JSON)).as(name).isEmpty();
        assertThat(draft.validate(text.replace("\"object\"", "\"objekt\""), InputFormat.JSON))
            .as("%s, misspelled", name)
            .isNotEmpty();
      }
    }
  }

  private static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(SchemaFiles.FOLDER)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
