package trammel.vocabulary;

/**
 * A version of the fact vocabulary or of a rule book: {@code 0.3}.
 *
 * @param major raised when a name changes what it means
 * @param minor raised when something is added
 */
public record Version(int major, int minor) implements Comparable<Version> {
  private static final int LONGEST = 4;

  /**
   * Reads {@code major.minor}, digits only.
   *
   * @throws IllegalArgumentException if the text is no such version
   */
  public static Version parse(String text) {
    int dot = text.indexOf('.');
    if (dot > 0 && isNumber(text.substring(0, dot)) && isNumber(text.substring(dot + 1))) {
      return new Version(
          Integer.parseInt(text.substring(0, dot)), Integer.parseInt(text.substring(dot + 1)));
    }
    throw new IllegalArgumentException(
        "'" + text + "' is no version; expected two numbers and a dot\nWrite for example 1.0.");
  }

  private static boolean isNumber(String text) {
    return !text.isEmpty()
        && text.length() <= LONGEST
        && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  @Override
  public int compareTo(Version other) {
    return major == other.major
        ? Integer.compare(minor, other.minor)
        : Integer.compare(major, other.major);
  }

  @Override
  public String toString() {
    return major + "." + minor;
  }
}
