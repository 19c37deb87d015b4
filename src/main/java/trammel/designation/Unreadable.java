package trammel.designation;

/** The one form in which a token is refused: what was found, what was expected, what to do. */
final class Unreadable {
  private Unreadable() {}

  static IllegalArgumentException found(String found, String expected, String advice) {
    return new IllegalArgumentException(
        "found " + found + "; expected " + expected + ". " + advice + ".");
  }

  static String quoted(String text) {
    return "'" + text + "'";
  }
}
