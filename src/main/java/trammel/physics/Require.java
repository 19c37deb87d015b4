package trammel.physics;

/** The one way in which an impossible number is refused. */
final class Require {
  private Require() {}

  static void positive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw refused(name, value, "a number above 0");
    }
  }

  static void notNegative(String name, double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw refused(name, value, "0 or more");
    }
  }

  static IllegalArgumentException refused(String name, double value, String expected) {
    return new IllegalArgumentException(
        "found "
            + value
            + " as "
            + name
            + "; expected "
            + expected
            + ". Check the sign and the unit.");
  }
}
