package trammel.report;

import org.jspecify.annotations.Nullable;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;

/**
 * One value of the ledger of heights, loads, pressures and travel, today and with the changes.
 *
 * @param where the wheel, the axle or the vehicle
 * @param topic what it belongs to
 * @param what the value
 * @param today as the vehicle stands; null where the value has no meaning today
 * @param proposed with the changes; null where it has no meaning then
 */
record HeightRow(
    String where, Topic topic, String what, @Nullable Quantity today, @Nullable Quantity proposed) {

  /** What a value belongs to, in the order of the page. */
  enum Topic {
    HEIGHT("Height, hub to fender"),
    LOAD("Load"),
    FLUID("Spring and ram"),
    SENSOR("Height sensor"),
    TRAVEL("Travel, from where the wheel stands in the book state, up"),
    GROUND("Under the body");

    private final String words;

    Topic(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    /** As tables and data write it. */
    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Why one of its values is missing; null where none is. */
  @Nullable Absence absence() {
    Absence missing = proposed == null ? null : proposed.absence();
    return missing == null && today != null ? today.absence() : missing;
  }

  /** The dimension's kept unit, as both values have it. */
  String unit() {
    Quantity any = today == null ? proposed : today;
    return any == null ? "" : any.dimension().unit().symbol();
  }
}
