package trammel.designation;

/** The load class of a passenger tire. Where none is stamped, it is a standard-load tire. */
public enum LoadClass {
  LIGHT("LL"),
  STANDARD("SL"),
  /** Extra load, which Europe also calls reinforced. */
  EXTRA("XL");

  private final String mark;

  LoadClass(String mark) {
    this.mark = mark;
  }

  /** Reads {@code XL}, {@code Extra Load}, {@code RF}, {@code Reinforced}, {@code SL}, ... */
  public static LoadClass parse(String text) {
    return switch (Lettering.plain(text)) {
      case "XL", "EXTRA LOAD", "RF", "REINFORCED" -> EXTRA;
      case "SL", "STANDARD LOAD" -> STANDARD;
      case "LL", "LIGHT LOAD" -> LIGHT;
      default ->
          throw Unreadable.found(
              Unreadable.quoted(text) + " as a load class",
              "XL, RF, SL or LL",
              "Leave it out where the sidewall names none");
    };
  }

  @Override
  public String toString() {
    return mark;
  }
}
