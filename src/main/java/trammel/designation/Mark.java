package trammel.designation;

/** What may be stamped beside the size and changes neither dimensions nor load. */
public enum Mark {
  TUBELESS("TL"),
  TUBE_TYPE("TT"),
  MUD_AND_SNOW("M+S"),
  /** The three-peak mountain with snowflake. */
  SEVERE_SNOW("3PMSF"),
  PROFESSIONAL_OFF_ROAD("POR");

  private final String mark;

  Mark(String mark) {
    this.mark = mark;
  }

  /** Reads {@code TL}, {@code TT}, {@code M+S} (also with &amp;, a point or a slash), ... */
  public static Mark parse(String text) {
    return switch (Lettering.plain(text).replace(" ", "")) {
      case "TL", "TUBELESS" -> TUBELESS;
      case "TT", "TUBETYPE" -> TUBE_TYPE;
      case "M+S", "M&S", "M.S", "M/S", "MS" -> MUD_AND_SNOW;
      case "3PMSF" -> SEVERE_SNOW;
      case "POR" -> PROFESSIONAL_OFF_ROAD;
      default ->
          throw Unreadable.found(
              Unreadable.quoted(text) + " as a mark",
              "TL, TT, M+S, 3PMSF or POR",
              "Leave out what concerns tread, letters or looks");
    };
  }

  @Override
  public String toString() {
    return mark;
  }
}
