package trammel.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file in the folder has the exact text of its problems beside it. */
class RefusedFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/read/refused");

  static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void saysWhatIsWrong(Path file) throws IOException {
    Path name = Path.of(String.valueOf(file.getFileName()));
    Problems problems = new Problems();
    YamlReader.read(name, file, problems)
        .ifPresent(node -> Binder.bind(Sample.Sheet.class, node, problems));
    Path expected = FOLDER.resolve(name.toString().replace(".yaml", ".txt"));
    assertThat(problems + "\n").isEqualTo(Files.readString(expected, StandardCharsets.UTF_8));
  }
}
