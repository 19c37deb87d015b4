package trammel.schema;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trammel.build.BuildSheet;
import trammel.build.MeasuredFile;
import trammel.build.OrderFile;
import trammel.build.OverlayFile;
import trammel.catalog.CatalogFileTypes;
import trammel.catalog.VehicleProfile;

/** The generated files, by name. */
final class SchemaFiles {
  /** Where they are. */
  static final Path FOLDER = Path.of("shared/schema");

  /** How they come about. */
  static final String COMMENT =
      "Made from the program's records; mvn test -Dtest=SchemaFilesTest -Dtrammel.write=true"
          + " writes it anew.";

  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

  /** What each kind of file that users write becomes; the key is the schema's name. */
  static final Map<String, Class<?>> READ = read();

  private SchemaFiles() {}

  private static Map<String, Class<?>> read() {
    Map<String, Class<?>> read = new LinkedHashMap<>();
    read.put("catalog", CatalogFileTypes.head());
    read.put("vehicle", VehicleProfile.class);
    read.put("parts", CatalogFileTypes.family());
    read.put("build", BuildSheet.class);
    read.put("order", OrderFile.class);
    read.put("measured", MeasuredFile.class);
    read.put("overlay", OverlayFile.class);
    return read;
  }

  /** Every generated file: its name and its text. */
  static Map<String, String> generated() {
    SourceComments comments = new SourceComments();
    Map<String, String> files = new LinkedHashMap<>();
    READ.forEach(
        (name, type) ->
            files.put(name + ".schema.json", printed(FileSchema.of(type, title(name), comments))));
    files.put("report.schema.json", printed(ReportSchema.of(title("report"), comments)));
    files.put("facts.json", printed(FactVocabulary.of(comments)));
    return files;
  }

  private static String title(String name) {
    return switch (name) {
      case "catalog" -> "Head of a catalog";
      case "vehicle" -> "Vehicle profile";
      case "parts" -> "Family of parts";
      case "build" -> "Build sheet";
      case "order" -> "Order";
      case "measured" -> "Measured on the finished vehicle";
      case "overlay" -> "What measuring one vehicle has taught";
      default -> "Report";
    };
  }

  /** The beginning of every schema. */
  static ObjectNode head(String title) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("$schema", DRAFT)
        .put("$comment", COMMENT)
        .put("title", title);
  }

  private static String printed(ObjectNode node) {
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    return JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indent))
            .build()
            .writeValueAsString(node)
        + "\n";
  }
}
