package trammel.read;

import java.util.Collection;
import java.util.List;

/** Says what is wrong with the keys of a map. */
final class KeyCheck {
  private final Problems problems;

  KeyCheck(Problems problems) {
    this.problems = problems;
  }

  /** A key that nobody asked for. */
  void unknown(MapNode.Entry entry, MapNode map, List<String> known) {
    problems.add(
        entry.place(),
        map.where()
            + ": unknown key "
            + Words.quoted(entry.key())
            + "; expected "
            + Words.anyOf(known),
        Words.didYouMean(entry.key(), known, "Remove the line, or correct its key."));
  }

  /** A required key that is not there. */
  void missing(MapNode map, String key, String expected) {
    problems.add(
        map.place(),
        map.where() + ": the key " + Words.quoted(key) + " is missing; expected " + expected,
        "Add a line \"" + key + ": …\".");
  }

  /** A required key that has no value. */
  void blank(MapNode map, String key, Node blank, String expected) {
    problems.add(
        blank.place(),
        map.where() + ": no value after the key " + Words.quoted(key) + "; expected " + expected,
        "Write the value after the \":\".");
  }

  /** The key that chooses among variants is not there. */
  void missingChoice(MapNode map, String key, Collection<String> choices) {
    problems.add(
        map.place(),
        map.where()
            + ": the key "
            + Words.quoted(key)
            + " is missing; expected "
            + Words.anyOf(choices),
        "Add a line such as \"" + key + ": " + choices.iterator().next() + "\".");
  }
}
