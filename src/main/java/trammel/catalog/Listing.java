package trammel.catalog;

import static trammel.quantity.Dimension.TIME;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Axle;
import trammel.subject.Side;

/**
 * What a catalog says of every part, whatever its kind.
 *
 * @param part the part number
 * @param name what the maker calls it
 * @param maker who makes it; where absent, the file's maker
 * @param axle the only axle it may be fitted to, or null for either
 * @param hand the only side it may be fitted to, or null for either
 * @param soldAs what one unit on an order line holds
 * @param pack how many pieces a pack holds, where sold by the pack
 * @param contains other parts in the same box, with their count
 * @param supersedes the part number it takes the place of
 * @param vehicles the vehicles it is made for; empty for any
 * @param price what one unit costs, in the catalog's currency
 * @param stock units on the shelf
 * @param leadTime how long a unit that is not on the shelf takes to come
 * @param returnableUntil up to when a unit may go back
 * @param fasteners the bolts, nuts and studs that fitting it asks for
 */
public record Listing(
    Place place,
    @Required String part,
    @Required String name,
    @Nullable String maker,
    @Nullable Axle axle,
    @Nullable Side hand,
    @Nullable SoldAs soldAs,
    @Nullable Integer pack,
    Map<String, Integer> contains,
    @Nullable String supersedes,
    List<String> vehicles,
    @Nullable Money price,
    @Nullable Integer stock,
    @Measured(value = TIME, by = Instrument.STATED, how = "ask the supplier", max = 730)
        Quantity leadTime,
    @Nullable ReturnableUntil returnableUntil,
    List<FastenerNeed> fasteners) {

  /**
   * A bolt, nut or stud that fitting a part asks for.
   *
   * @param fastener what it is
   * @param count how many for one piece of the part
   * @param supplied whether they come with it
   * @param singleUse whether it may be tightened only once, so that a new one is needed
   * @param insteadOf the shorter one that it takes the place of; null where it is of book length
   */
  public record FastenerNeed(
      Place place,
      @Required String fastener,
      @Required Integer count,
      boolean supplied,
      boolean singleUse,
      @Nullable String insteadOf) {

    /** What a job needs of it, with the count for so many pieces of the part. */
    public String words(int pieces) {
      String other = insteadOf == null ? "" : " (instead of " + insteadOf + ")";
      return count * pieces + " × " + fastener + other;
    }
  }

  /** What one unit on an order line holds. */
  public enum SoldAs {
    EACH,
    PAIR,
    AXLE_SET,
    CAR_SET,
    PACK
  }

  /** Up to when a part may go back to the supplier. */
  public enum ReturnableUntil {
    /** It is made or painted to order: it never goes back. */
    ORDERED,
    OPENED,
    /** Once a tire has been on a rim, or a bush pressed in, it is used. */
    MOUNTED,
    DRIVEN
  }

  /** How many pieces one unit holds. */
  public int pieces() {
    return switch (soldAs == null ? SoldAs.EACH : soldAs) {
      case EACH -> 1;
      case PAIR, AXLE_SET -> 2;
      case CAR_SET -> 4;
      case PACK -> pack == null ? 1 : pack;
    };
  }

  /**
   * Whether an open question ought to hold its line: it does not come back once fitted, or takes
   * long to come.
   */
  public boolean returnsOnlyUnfitted() {
    return returnableUntil != null && returnableUntil != ReturnableUntil.DRIVEN;
  }
}
