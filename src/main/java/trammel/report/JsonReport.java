package trammel.report;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reports as JSON: the records' own fields, in their own order, in kebab case. */
public final class JsonReport {
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .enable(EnumFeature.WRITE_ENUMS_USING_TO_STRING)
          .enable(SerializationFeature.INDENT_OUTPUT)
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .defaultPrettyPrinter(
              new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT))
          .build();

  private JsonReport() {}

  /** One report. */
  public static String of(Report report) {
    return JSON.writeValueAsString(report) + "\n";
  }

  /** The ledger of heights. */
  public static String of(HeightsTable heights) {
    return JSON.writeValueAsString(heights) + "\n";
  }

  /** A comparison of a finished vehicle with its predictions. */
  public static String of(Comparisons comparisons) {
    return JSON.writeValueAsString(comparisons) + "\n";
  }

  /** Several reports under one verdict. */
  public static String of(Batch batch) {
    return JSON.writeValueAsString(batch) + "\n";
  }
}
