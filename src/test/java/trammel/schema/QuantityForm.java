package trammel.schema;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Unit;
import trammel.read.Words;

/**
 * How files write a quantity: a text that {@link trammel.read.QuantityReader} takes, or a mapping
 * that says more about it. A ratio may be a bare number; everything else needs its unit.
 */
final class QuantityForm {
  private static final String BLANK =
      "[ \\n\\u00A0\\u1680\\u2000-\\u200A\\u2028\\u2029\\u202F\\u205F\\u3000]";
  private static final String BLANKS = BLANK + "*";
  private static final String FRACTIONS = "[½¼¾⅛⅜⅝⅞]";
  private static final String NUMBER =
      "(?:[0-9]*\\.[0-9]+"
          + ("|(?:[0-9]+" + BLANK + "+)?[0-9]+[/⁄]0*[1-9][0-9]*")
          + ("|(?:[0-9]+" + BLANKS + ")?" + FRACTIONS)
          + "|[0-9]+)";
  private static final String SIGN = "(?:[-+−]" + BLANKS + ")?";
  private static final String PLUS_MINUS = "(?:±|\\+/?[-−])";

  private QuantityForm() {}

  /** The schema of a quantity of a dimension. */
  static ObjectNode schema(Dimension dimension) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    String unit = dimension.unit().symbol();
    schema.put(
        "description",
        "A "
            + dimension.words()
            + (unit.isEmpty() ? "." : " in any usual unit; kept in " + unit + "."));
    var forms = schema.putArray("anyOf");
    ObjectNode text = text(dimension);
    forms.add(text);
    ObjectNode mapping = forms.addObject();
    mapping.put("type", "object").put("additionalProperties", false);
    mapping.putArray("required").add("value");
    ObjectNode properties = mapping.putObject("properties");
    properties.set("value", text.deepCopy());
    ObjectNode by = properties.putObject("by");
    by.put("description", "How it was measured; gives the uncertainty where no ± is written.");
    var instruments = by.putArray("enum");
    Arrays.stream(Instrument.values())
        .filter(instrument -> instrument.measures(dimension))
        .forEach(instrument -> instruments.add(instrument.fileName()));
    instruments.addNull();
    properties.set("source", optionalText("Who says so."));
    properties.set("note", optionalText("Anything else worth knowing."));
    return schema;
  }

  private static ObjectNode optionalText(String description) {
    ObjectNode text = FileSchema.text();
    text.withArray("type").add("null");
    return text.put("description", description);
  }

  private static ObjectNode text(Dimension dimension) {
    ObjectNode text = JsonNodeFactory.instance.objectNode();
    var types = text.putArray("type").add("string");
    if (dimension == Dimension.RATIO) {
      types.add("number");
    }
    return text.put("pattern", pattern(dimension));
  }

  /** A regular expression, of the kind that JSON Schema knows, for the text of a quantity. */
  static String pattern(Dimension dimension) {
    String unit = unit(Arrays.stream(Unit.values()).filter(u -> u.dimension() == dimension));
    String pair =
        switch (dimension) {
          case ANGLE -> pair(Unit.DEGREE, Unit.MINUTE);
          case LENGTH -> pair(Unit.FOOT, Unit.INCH);
          default -> "";
        };
    String value = pair.isEmpty() ? NUMBER + unit : "(?:" + pair + "|" + NUMBER + unit + ")";
    String uncertainty =
        "(?:" + PLUS_MINUS + BLANKS + NUMBER + "(?:" + BLANKS + "%|" + unit + ")?" + BLANKS + ")?";
    return "^" + BLANKS + SIGN + value + BLANKS + uncertainty + "$";
  }

  private static String pair(Unit large, Unit small) {
    return NUMBER + unit(Stream.of(large)) + BLANKS + NUMBER + unit(Stream.of(small));
  }

  private static String unit(Stream<Unit> units) {
    List<String> names = units.flatMap(unit -> unit.names().stream()).toList();
    String choices =
        names.stream()
            .filter(name -> !name.isEmpty())
            .map(name -> name.replace(" ", BLANK + "+"))
            .collect(Collectors.joining("|"));
    return "(?:" + BLANKS + "(?:" + choices + "))" + (names.contains("") ? "?" : "");
  }

  /** What the schema calls a dimension. */
  static String name(Dimension dimension) {
    return Words.kebab(dimension.name());
  }
}
