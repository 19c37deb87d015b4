package trammel.schema;

import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaBuilder;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import trammel.read.Words;
import trammel.report.Batch;
import trammel.report.Report;

/** The schema of what {@link trammel.report.JsonReport} writes: one report, or several. */
final class ReportSchema {
  private ReportSchema() {}

  static ObjectNode of(String title, SourceComments comments) {
    SchemaGeneratorConfigBuilder config =
        new SchemaGeneratorConfigBuilder(
            SchemaVersion.DRAFT_2020_12,
            new OptionPreset(
                Option.ADDITIONAL_FIXED_TYPES,
                Option.STANDARD_FORMATS,
                Option.FLATTENED_ENUMS_FROM_TOSTRING,
                Option.NONPUBLIC_NONSTATIC_FIELDS_WITH_GETTERS,
                Option.NONPUBLIC_NONSTATIC_FIELDS_WITHOUT_GETTERS,
                Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT,
                Option.DEFINITIONS_FOR_ALL_OBJECTS,
                Option.PLAIN_DEFINITION_KEYS,
                Option.ALLOF_CLEANUP_AT_THE_END));
    config
        .forFields()
        .withPropertyNameOverrideResolver(field -> Words.kebab(field.getDeclaredName()))
        .withRequiredCheck(field -> true)
        .withNullableCheck(ReportSchema::isNullable)
        .withDescriptionResolver(field -> description(field, comments));
    config
        .forTypesInGeneral()
        .withDescriptionResolver(scope -> orNull(comments.of(scope.getType().getErasedType())));
    SchemaBuilder builder = new SchemaGenerator(config.build()).buildMultipleSchemaDefinitions();
    ObjectNode schema = SchemaFiles.head(title);
    ArrayNode either = schema.putArray("anyOf");
    either.add(builder.createSchemaReference(Report.class));
    either.add(builder.createSchemaReference(Batch.class));
    schema.set("$defs", builder.collectDefinitions("$defs"));
    return schema;
  }

  private static boolean isNullable(FieldScope field) {
    return !field.isFakeContainerItemScope()
        && field.getRawMember().getAnnotatedType().isAnnotationPresent(Nullable.class);
  }

  private static @Nullable String description(FieldScope field, SourceComments comments) {
    return field.isFakeContainerItemScope()
        ? null
        : orNull(comments.of(field.getRawMember().getDeclaringClass(), field.getDeclaredName()));
  }

  private static @Nullable String orNull(String text) {
    return text.isEmpty() ? null : text;
  }
}
