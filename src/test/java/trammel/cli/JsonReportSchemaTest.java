package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.schema.Schemas;

/** What the program prints as JSON against the schema that it publishes for it. */
class JsonReportSchemaTest {
  static List<String> sheets() throws IOException {
    try (Stream<Path> found = Files.list(Path.of("catalog-demo/builds"))) {
      return found
          .map(Path::toString)
          .filter(name -> name.endsWith(".build.yaml"))
          .sorted()
          .toList();
    }
  }

  private static String checked(List<String> files) {
    List<String> arguments = new ArrayList<>();
    arguments.addAll(List.of("check", "--format", "json", "--on", "2026-11-25"));
    arguments.addAll(files);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), arguments.toArray(String[]::new));
    return out.toString();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void theReportOfASheetIsValid(String sheet) {
    String report = checked(List.of(sheet));
    assertThat(report).startsWith("{\n  \"verdict\"").contains(sheet);
    assertThat(Schemas.complaints("report", report)).isEmpty();
  }

  @Test
  void theReportOfSeveralSheetsIsValidEvenIfOneCannotBeRead(@TempDir Path folder)
      throws IOException {
    List<String> files = new ArrayList<>(sheets());
    Path broken =
        Files.writeString(folder.resolve("broken.build.yaml"), "build: without a vehicle");
    files.add(broken.toString());
    String batch = checked(files);
    assertThat(batch).contains("\"verdict\" : \"unreadable\"", "broken.build.yaml");
    assertThat(Schemas.complaints("report", batch)).isEmpty();
  }

  @Test
  void aReportWithAnotherVerdictOrAnUnknownFieldIsNotValid() throws IOException {
    String report = checked(List.of(sheets().get(0)));
    String verdict = report.replaceFirst("\"verdict\" : \"[^\"]*\"", "\"verdict\" : \"may fit\"");
    String field = report.replaceFirst("\"decided-by\"", "\"decided-upon\"");
    assertThat(verdict).isNotEqualTo(report);
    assertThat(field).isNotEqualTo(report);
    assertThat(Schemas.complaints("report", verdict)).isNotEmpty();
    assertThat(Schemas.complaints("report", field)).isNotEmpty();
  }
}
