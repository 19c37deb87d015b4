package trammel.read;

/**
 * A single value, as text.
 *
 * @param quoted whether it stands in quotes or is a block of text
 */
public record TextNode(Place place, Trail trail, String text, boolean quoted) implements Node {
  @Override
  public String words() {
    return Words.quoted(text);
  }
}
