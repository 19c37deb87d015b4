package trammel.schema;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Holds files against the schemas of {@code shared/schema}, as an editor would. */
public final class Schemas {
  private static final YAMLMapper YAML = new YAMLMapper();

  private Schemas() {}

  /** What a schema of the folder has against a YAML or JSON text; empty where nothing. */
  public static List<String> complaints(String schema, String text) {
    Path file = SchemaFiles.FOLDER.resolve(schema + ".schema.json");
    try {
      Schema held =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(Files.readString(file));
      JsonNode tree = YAML.readTree(text);
      return held.validate(tree).stream().map(Error::toString).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
