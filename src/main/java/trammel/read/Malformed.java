package trammel.read;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;

/** Says in plain words why a text is no YAML, without a word of the parser's own. */
final class Malformed {
  private static final String ALIGN = "Give keys and list items of one level the same indentation.";

  private final Source source;
  private final String context;
  private final String complaint;
  private final Place begin;
  private final Place at;

  private Malformed(Source source, MarkedYamlEngineException cause, Place outer) {
    this.source = source;
    this.context = String.valueOf(cause.getContext());
    this.complaint = String.valueOf(cause.getProblem());
    this.at = place(cause.getProblemMark(), outer);
    this.begin = place(cause.getContextMark(), at);
  }

  static Problem problem(Source source, JacksonException e) {
    Place outer =
        e.getLocation() == null || e.getLocation().getLineNr() < 1
            ? Place.of(source.file())
            : new Place(source.file(), e.getLocation().getLineNr(), e.getLocation().getColumnNr());
    if (e.getCause() instanceof MarkedYamlEngineException cause) {
      return new Malformed(source, cause, outer).inWords();
    }
    String message = String.valueOf(e.getOriginalMessage());
    if (message.startsWith("Expected a property name")) {
      return message.contains("=ALI")
          ? new Problem(
              outer,
              "an alias where a key should stand; expected a plain key",
              "Write the key out; anchors and aliases are not read.")
          : new Problem(
              outer,
              "a list or map where a key should stand; expected a plain key",
              "Write a name before the \":\"; a text with brackets or braces needs quotes.");
    }
    return new Problem(
        outer, "this is not well-formed YAML; expected lines such as \"key: value\"", ALIGN);
  }

  private Place place(Optional<Mark> mark, Place otherwise) {
    return mark.map(m -> new Place(source.file(), m.getLine() + 1, m.getColumn() + 1))
        .orElse(otherwise);
  }

  private Problem inWords() {
    if (complaint.contains("(TAB)")) {
      return new Problem(at, "a tab; expected spaces", "Replace each tab by two spaces.");
    }
    if (complaint.contains("cannot start any token")) {
      return new Problem(
          at,
          "a value that begins with " + found(at) + "; expected a letter, a digit or a quote",
          "Put the value in quotes.");
    }
    if (complaint.contains("mapping values are not allowed")) {
      return strayColon();
    }
    if (complaint.contains("unexpected end of stream")) {
      return new Problem(
          begin,
          "the quote " + raw(begin) + " is never closed; expected a second one",
          "Close the quote at the end of the value.");
    }
    if (complaint.contains("unknown escape")) {
      return new Problem(
          at,
          "the unknown escape \"\\" + raw(at) + "\"; expected plain text in the quotes",
          "Use single quotes, in which a backslash is only a backslash.");
    }
    if (complaint.contains("could not find expected ':'")) {
      return new Problem(
          begin,
          Words.quoted(source.line(begin.line()).strip()) + " has no \":\"; expected key: value",
          "Write a \":\" and a space after the key.");
    }
    return context.contains("flow") ? bracket() : layout();
  }

  private Problem strayColon() {
    String line = source.line(at.line());
    String before = line.substring(0, Math.min(at.column() - 1, line.length()));
    if (before.contains(": ")) {
      return new Problem(
          at,
          "a second \":\" in " + Words.quoted(line.strip()) + "; expected one key and its value",
          "Put the value in quotes if the \":\" belongs to it.");
    }
    return new Problem(
        at,
        "the key in "
            + Words.quoted(line.strip())
            + " does not line up; expected it under the keys above",
        ALIGN + " Write a space after each \":\".");
  }

  private Problem bracket() {
    if (complaint.startsWith("expected ','")) {
      String close = complaint.contains("'}'") ? "}" : "]";
      return new Problem(
          at,
          "the "
              + found(begin)
              + " in line "
              + begin.line()
              + " is not closed before "
              + rest(at)
              + "; expected \",\" or \""
              + close
              + "\"",
          "Close it with \"" + close + "\", or put a comma between the values.");
    }
    return noValue();
  }

  private Problem noValue() {
    return new Problem(
        at,
        found(at) + " where a value should stand",
        "Write a value there, or put the text in quotes.");
  }

  private Problem layout() {
    if (complaint.startsWith("expected the node content")) {
      return noValue();
    }
    if (complaint.contains("document start")) {
      return new Problem(
          at,
          found(at) + " after the end of the content; expected nothing more",
          "Remove it, or check the brackets before it.");
    }
    if (complaint.contains("sequence start") || complaint.endsWith("'-'")) {
      return new Problem(
          at,
          "the list item in "
              + Words.quoted(source.line(at.line()).strip())
              + " does not line up; expected it under the items above",
          ALIGN);
    }
    if (complaint.contains("'<scalar>'")) {
      return new Problem(
          at,
          rest(at) + " after the end of a value; expected a new line with the next key",
          "Check the quotes and the indentation of this line.");
    }
    return new Problem(
        at,
        Words.quoted(source.line(at.line()).strip())
            + " does not go on with what stands above; expected the same kind of line",
        ALIGN);
  }

  private String raw(Place place) {
    String line = source.line(place.line());
    int length = line.codePointCount(0, line.length());
    if (place.column() > length) {
      return "";
    }
    int start = line.offsetByCodePoints(0, place.column() - 1);
    return line.substring(start, line.offsetByCodePoints(start, 1));
  }

  private String found(Place place) {
    return raw(place).isEmpty() ? rest(place) : Words.quoted(raw(place));
  }

  /** What stands from a place to the end of its line. */
  private String rest(Place place) {
    String line = source.line(place.line());
    int length = line.codePointCount(0, line.length());
    if (place.column() <= length) {
      return Words.quoted(line.substring(line.offsetByCodePoints(0, place.column() - 1)).strip());
    }
    return place.line() >= source.lineCount() ? "the end of the file" : "the end of the line";
  }
}
