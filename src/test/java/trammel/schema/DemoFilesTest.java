package trammel.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file of the demonstration catalog against its schema, as an editor would show it. */
class DemoFilesTest {
  private static final Path FOLDER = Path.of("catalog-demo");
  private static final String FIRST_LINE = "# yaml-language-server: $schema=";

  static List<Path> files() throws IOException {
    try (Stream<Path> found = Files.walk(FOLDER)) {
      return found.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** {@code vehicle} of {@code NAME.vehicle.yaml}, {@code catalog} of {@code catalog.yaml}. */
  private static String kind(Path file) {
    String name = file.getFileName().toString().replace(".yaml", "");
    return name.substring(name.lastIndexOf('.') + 1);
  }

  @ParameterizedTest
  @MethodSource("files")
  void isValid(Path file) throws IOException {
    assertThat(Schemas.complaints(kind(file), Files.readString(file))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void namesItsSchemaInItsFirstLine(Path file) throws IOException {
    String first = Files.readAllLines(file).get(0);
    assertThat(first).startsWith(FIRST_LINE);
    Path named = file.resolveSibling(first.substring(FIRST_LINE.length())).normalize();
    assertThat(named)
        .isEqualTo(SchemaFiles.FOLDER.resolve(kind(file) + ".schema.json"))
        .isRegularFile();
  }

  @Test
  void filesOfEveryKindThatACatalogNeedsAreAmongThem() throws IOException {
    assertThat(files().stream().map(DemoFilesTest::kind))
        .contains("catalog", "vehicle", "parts", "build")
        .isSubsetOf(SchemaFiles.READ.keySet());
  }
}
