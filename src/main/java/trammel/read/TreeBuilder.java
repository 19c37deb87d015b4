package trammel.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLParser;

/** Builds the tree of one document, and refuses what a sheet has no use for. */
final class TreeBuilder {
  private static final int DEEPEST = 50;
  private static final int LONGEST_KEY = 200;
  private static final int LONGEST_TEXT = 10_000;
  private static final String WRITE_OUT =
      "Write the value out where it is needed; anchors, aliases and merge keys are not read.";

  private final YAMLParser parser;
  private final Source source;
  private final Problems problems;

  /** Set where the tree does not say what the file means, so that binding it would mislead. */
  private boolean misleading;

  TreeBuilder(YAMLParser parser, Source source, Problems problems) {
    this.parser = parser;
    this.source = source;
    this.problems = problems;
  }

  /** Thrown where going on would only cost time. */
  private static final class TooDeep extends RuntimeException {
    TooDeep() {
      super(null, null, false, false);
    }
  }

  /** The whole file; empty if it has no content, or none that could be trusted. */
  Optional<Node> document() {
    refuseDirective();
    JsonToken first = parser.nextToken();
    Node root;
    try {
      root = first == null ? null : value(first, Trail.ROOT, 1);
    } catch (TooDeep e) {
      return Optional.empty();
    }
    if (root == null || root.isBlank()) {
      problems.add(
          Place.of(source.file()),
          "this file is empty; expected keys and values",
          "Write at least one line such as \"key: value\"; comments do not count.");
      return Optional.empty();
    }
    if (parser.nextToken() != null) {
      problems.add(
          here(),
          "a second document begins here; expected one document in a file",
          "Remove the line \"---\" or \"...\" above, or make it a file of its own.");
    }
    return misleading ? Optional.empty() : Optional.of(root);
  }

  private void refuseDirective() {
    for (int i = 1; i <= source.lineCount(); i++) {
      String line = source.line(i);
      if (line.startsWith("%")) {
        problems.add(
            new Place(source.file(), i, 1),
            "the directive " + Words.quoted(line) + "; expected keys and values",
            "Remove the line; directives are not read.");
      } else if (!line.isBlank() && !line.startsWith("#")) {
        return;
      }
    }
  }

  private Place here() {
    return place(parser.currentTokenLocation());
  }

  private Place place(TokenStreamLocation at) {
    return new Place(source.file(), at.getLineNr(), at.getColumnNr());
  }

  private Node value(JsonToken token, Trail trail, int depth) {
    TokenStreamLocation at = parser.currentTokenLocation();
    Place place = place(at);
    refuseMarks(place, at.getCharOffset());
    if (token != JsonToken.START_OBJECT && token != JsonToken.START_ARRAY) {
      return text(place, at.getCharOffset(), trail);
    }
    if (depth > DEEPEST) {
      problems.add(
          place,
          "values nested more than " + DEEPEST + " deep; expected a few levels",
          "Check the brackets and the indentation.");
      throw new TooDeep();
    }
    return token == JsonToken.START_OBJECT ? map(place, trail, depth) : list(place, trail, depth);
  }

  private Node map(Place place, Trail trail, int depth) {
    List<MapNode.Entry> entries = new ArrayList<>();
    Map<String, Place> known = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      TokenStreamLocation at = parser.currentTokenLocation();
      Place keyPlace = place(at);
      if (keyPlace.line() != place.line() || keyPlace.column() != place.column()) {
        refuseMarks(keyPlace, at.getCharOffset());
      }
      checkKey(key, keyPlace);
      Trail inner = trail.key(key);
      Node value = value(parser.nextToken(), inner, depth + 1);
      Place earlier = known.putIfAbsent(key, keyPlace);
      if (earlier == null) {
        entries.add(new MapNode.Entry(key, keyPlace, value));
      } else {
        problems.add(
            keyPlace,
            "the key "
                + Words.quoted(key)
                + " stands twice; expected it once (the first is in line "
                + earlier.line()
                + ")",
            "Keep one of the two.");
      }
    }
    return new MapNode(place, trail, entries);
  }

  private Node list(Place place, Trail trail, int depth) {
    List<Node> items = new ArrayList<>();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      items.add(value(token, trail.item(items.size()), depth + 1));
      token = parser.nextToken();
    }
    return new ListNode(place, trail, items);
  }

  private Node text(Place place, long offset, Trail trail) {
    String text = parser.getString();
    int first = source.codePoint(offset);
    boolean quoted = first == '"' || first == '\'' || first == '|' || first == '>';
    if (text.length() > LONGEST_TEXT) {
      problems.add(
          place,
          "a text of " + text.length() + " characters; expected at most " + LONGEST_TEXT,
          "Shorten it; a quote that is never closed often makes a text too long.");
    } else {
      refuseHidden(text, place);
    }
    return new TextNode(place, trail, text, quoted);
  }

  private void checkKey(String key, Place place) {
    if (key.equals("<<")) {
      misleading = true;
      problems.add(place, "the merge key \"<<\"; expected a plain key", WRITE_OUT);
    } else if (key.isBlank()) {
      problems.add(place, "an empty key; expected a name", "Write a key before the \":\".");
    } else if (key.length() > LONGEST_KEY) {
      problems.add(
          place,
          "a key of " + key.length() + " characters; expected at most " + LONGEST_KEY,
          "Shorten it; a long text belongs after the \":\".");
    } else {
      refuseHidden(key, place);
    }
  }

  /** Escapes can hide what the look at the source did not find. */
  private void refuseHidden(String text, Place place) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (c == '\t' || c == '\r' || Characters.isHidden(c)) {
        Source.refuseHidden(place, c, problems);
        misleading = true;
        return;
      }
      i += Character.charCount(c);
    }
  }

  /** Anchors, aliases and tags show in the source at the very place where a value begins. */
  private void refuseMarks(Place place, long offset) {
    switch (source.codePoint(offset)) {
      case '&' ->
          problems.add(place, "the anchor " + mark(offset) + "; expected a plain value", WRITE_OUT);
      case '*' -> {
        problems.add(place, "the alias " + mark(offset) + "; expected a plain value", WRITE_OUT);
        misleading = true;
      }
      case '!' ->
          problems.add(
              place,
              "the tag " + mark(offset) + "; expected a plain value",
              "Remove it; what a value is follows from its key.");
      default -> {}
    }
  }

  private String mark(long offset) {
    StringBuilder mark = new StringBuilder();
    for (long i = offset; mark.length() < LONGEST_KEY; i++) {
      int c = source.codePoint(i);
      if (c <= ' ' || c == ',' || c == ']' || c == '}') {
        break;
      }
      mark.appendCodePoint(c);
    }
    return Words.quoted(mark.toString());
  }
}
