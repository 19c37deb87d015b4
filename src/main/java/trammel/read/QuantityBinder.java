package trammel.read;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.quantity.Unit;

/**
 * Binds a quantity: a text, or a map that says more about it.
 *
 * <pre>{@code
 * fender-height: 815 mm ± 4 mm
 * fender-height: { value: 815 mm, by: fender, source: owner, note: on level ground }
 * }</pre>
 */
final class QuantityBinder {
  private static final String VALUE = "value";
  private static final String BY = "by";
  private static final String NOTE = "note";
  private static final List<String> KEYS = List.of(VALUE, BY, Scope.SOURCE, NOTE);

  private final Problems problems;
  private final TextBinder texts;

  QuantityBinder(Problems problems, TextBinder texts) {
    this.problems = problems;
    this.texts = texts;
  }

  private static Measured measured(RecordShape.@Nullable Component component) {
    if (component == null || component.measured() == null) {
      throw new IllegalStateException("a quantity must be a component that is @Measured");
    }
    return component.measured();
  }

  /** The quantity that nobody has written. */
  static Quantity absent(RecordShape.Component component, String file, Trail trail) {
    Measured measured = measured(component);
    return Quantity.absent(
        measured.value(),
        new Absence(
            component.words(),
            "not stated in " + file + " at " + trail,
            measured.by(),
            measured.how()));
  }

  /** The quantity, or null if it was refused. */
  @Nullable Quantity bind(Node node, Scope scope) {
    Measured measured = measured(scope.component());
    if (node instanceof TextNode text) {
      return quantity(text, node, measured, measured.by(), scope);
    }
    if (node instanceof MapNode map) {
      return described(map, measured, scope);
    }
    problems.add(
        node.place(),
        node.where()
            + ": found a list; expected "
            + Words.withArticle(measured.value().words())
            + " with its unit",
        "Write one value after the \":\".");
    return null;
  }

  private @Nullable Quantity described(MapNode map, Measured measured, Scope scope) {
    int before = problems.count();
    Instrument by = measured.by();
    TextNode value = null;
    for (MapNode.Entry entry : map.entries()) {
      if (!KEYS.contains(entry.key())) {
        new KeyCheck(problems).unknown(entry, map, KEYS);
      } else if (!entry.value().isBlank()) {
        Object text = texts.bind(TypeShape.of(String.class), entry.value());
        if (text != null && entry.key().equals(VALUE)) {
          value = (TextNode) entry.value();
        } else if (text != null && entry.key().equals(BY)) {
          by = instrument(entry.value(), measured, by);
        }
      }
    }
    if (value == null && problems.count() == before) {
      problems.add(
          map.place(),
          map.where() + ": the key \"value\" is missing; expected value, by, source or note",
          "Add it, or remove the whole entry if the value is not known.");
    }
    return value == null || problems.count() > before
        ? null
        : quantity(value, map, measured, by, scope.inside(map));
  }

  private Instrument instrument(Node node, Measured measured, Instrument otherwise) {
    Object named = texts.bind(TypeShape.of(Instrument.class), node);
    if (!(named instanceof Instrument found)) {
      return otherwise;
    }
    if (!found.measures(measured.value())) {
      problems.add(
          node.place(),
          node.where()
              + ": found "
              + node.words()
              + ", which measures no "
              + measured.value().words()
              + "; expected another tool",
          "Name the tool it was measured with, for example " + measured.by().fileName() + ".");
    }
    return found;
  }

  private @Nullable Quantity quantity(
      TextNode text, Node whole, Measured measured, Instrument by, Scope scope) {
    Dimension dimension = measured.value();
    Reading reading;
    try {
      reading = QuantityReader.parse(text.text(), dimension);
    } catch (IllegalArgumentException e) {
      Refusal refusal = Refusal.of(e, "Correct the value.");
      problems.add(text.place(), text.where() + ": " + refusal.what(), refusal.advice());
      return null;
    }
    String name = name(scope);
    OptionalDouble written = reading.expanded();
    double expanded = written.orElse(by.expanded(reading.value()));
    if (!isPlausible(reading.value(), measured)) {
      refuseValue(text, reading, name, measured);
      return null;
    }
    if (expanded > measured.max() - measured.min()) {
      problems.add(
          text.place(),
          text.where()
              + ": "
              + Words.quoted(text.text())
              + " has an impossible uncertainty; expected less than the "
              + range(measured)
              + " that "
              + Words.withArticle(name)
              + " can be at all",
          "Check the number after ± and its unit.");
      return null;
    }
    Input input =
        new Input(
            text.place().file(),
            whole.path(),
            text.place().line(),
            text.place().column(),
            scope.source(),
            by,
            reading.unit());
    return Quantity.read(name, dimension, reading.value(), expanded, input);
  }

  private static String name(Scope scope) {
    String name = scope.component() == null ? "" : scope.component().words();
    return scope.key() == null ? name : Words.spaced(scope.key()) + " " + name;
  }

  private static boolean isPlausible(double value, Measured measured) {
    return value >= measured.min() && value <= measured.max();
  }

  private void refuseValue(TextNode text, Reading reading, String name, Measured measured) {
    problems.add(
        text.place(),
        text.where()
            + ": "
            + Words.quoted(text.text())
            + " is an impossible value for "
            + Words.withArticle(name)
            + "; expected "
            + range(measured),
        mistake(reading, measured));
  }

  private static String range(Measured measured) {
    Dimension dimension = measured.value();
    if (measured.min() == Double.NEGATIVE_INFINITY) {
      return "at most " + QuantityWriter.shortest(dimension, measured.max());
    }
    String least = QuantityWriter.shortest(dimension, measured.min());
    return measured.max() == Double.POSITIVE_INFINITY
        ? "at least " + least
        : least + " to " + QuantityWriter.shortest(dimension, measured.max());
  }

  /** What the writer may have meant: the number in another unit, turned over, or its sign. */
  private static String mistake(Reading reading, Measured measured) {
    double number = reading.unit().fromKept(reading.value());
    String plain = QuantityWriter.digits(number);
    String others =
        Arrays.stream(Unit.values())
            .filter(unit -> unit.dimension() == measured.value() && unit != reading.unit())
            .filter(unit -> isPlausible(unit.toKept(number), measured))
            .map(unit -> QuantityWriter.withUnit(plain, unit))
            .collect(Collectors.joining(" or "));
    if (!others.isEmpty()) {
      return "Check the unit: was " + others + " meant?";
    }
    if (reading.unit() == Unit.ONE && isPlausible(1 / number, measured)) {
      return "Is it the wrong way around? Was "
          + QuantityWriter.rough(Unit.ONE, 1 / number, 3)
          + " meant?";
    }
    return isPlausible(-reading.value(), measured)
        ? "Check the sign: was "
            + QuantityWriter.withUnit(QuantityWriter.digits(-number), reading.unit())
            + " meant?"
        : "Check the number and its unit.";
  }
}
