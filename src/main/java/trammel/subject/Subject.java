package trammel.subject;

/**
 * What a finding is about: {@code axle[-side][:station or line]}, for example {@code
 * front-left:rear-mount}; or {@code vehicle}, {@code spare}, {@code order}.
 *
 * @param where the axle, wheel or whole it is at
 * @param detail the station, the part's role or the order line; empty where there is none
 */
public record Subject(String where, String detail) implements Comparable<Subject> {
  public static final Subject VEHICLE = new Subject("vehicle", "");

  public static Subject of(Axle axle) {
    return new Subject(axle.toString(), "");
  }

  public static Subject of(Axle axle, String detail) {
    return new Subject(axle.toString(), detail);
  }

  public static Subject of(Position position) {
    return new Subject(position.toString(), "");
  }

  public static Subject of(Position position, String detail) {
    return new Subject(position.toString(), detail);
  }

  /** The line of an order. */
  public static Subject line(String part) {
    return new Subject("order", part);
  }

  /**
   * Reads what {@link #toString()} prints.
   *
   * @throws IllegalArgumentException if there is nothing before the colon
   */
  public static Subject parse(String text) {
    int colon = text.indexOf(':');
    Subject subject =
        colon < 0
            ? new Subject(text.strip(), "")
            : new Subject(text.substring(0, colon).strip(), text.substring(colon + 1).strip());
    if (subject.where.isEmpty()) {
      throw new IllegalArgumentException(
          "'" + text + "' names no place; expected for example front-left:rear-mount");
    }
    return subject;
  }

  /** The same for a reader: {@code Front left, rear mount}. */
  public String words() {
    String place = where.replace('-', ' ');
    String head =
        place.isEmpty() ? "" : Character.toUpperCase(place.charAt(0)) + place.substring(1);
    return detail.isEmpty() ? head : head + ", " + detailWords();
  }

  /** A station or role in words; a part number as it is. */
  public String detailWords() {
    boolean number = detail.chars().anyMatch(c -> Character.isUpperCase(c) || Character.isDigit(c));
    return number || where.equals("order") ? detail : detail.replace('-', ' ');
  }

  @Override
  public int compareTo(Subject other) {
    int byPlace = Integer.compare(rank(), other.rank());
    return byPlace != 0 ? byPlace : toString().compareTo(other.toString());
  }

  private int rank() {
    return switch (where) {
      case "front", "front-left", "front-right" -> 0;
      case "rear", "rear-left", "rear-right" -> 1;
      case "spare" -> 2;
      case "vehicle" -> 3;
      default -> 4;
    };
  }

  @Override
  public String toString() {
    return detail.isEmpty() ? where : where + ":" + detail;
  }
}
