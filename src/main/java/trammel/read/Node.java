package trammel.read;

/** A piece of a file that knows where it stands. */
public sealed interface Node permits MapNode, ListNode, TextNode {
  /** Where it begins. */
  Place place();

  /** The keys and indexes that lead to it. */
  Trail trail();

  /** The trail as text, such as {@code lines[2].part}; empty for the root. */
  default String path() {
    return trail().toString();
  }

  /** What it is, in a word. */
  String words();

  /** The path, or a word for the root. */
  default String where() {
    return path().isEmpty() ? "this file" : path();
  }

  /** Whether it is a value that was left empty, which counts as not written. */
  default boolean isBlank() {
    return this instanceof TextNode text && !text.quoted() && text.text().isEmpty();
  }
}
