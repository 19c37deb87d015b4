package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Instrument.GAUGE;
import static trammel.quantity.Instrument.LOCK_GAP;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Station.FixedTo;
import trammel.subject.Station.Height;
import trammel.subject.Station.Steer;

/**
 * What is known of one clearance station of a left wheel; the right wheel's is its mirror image.
 *
 * @param none why there is no such place on this vehicle; then there are no gaps
 * @param obstacle what the tire would meet, in a fitter's words
 * @param trim what would have to be cut to gain room
 * @param shapes where it stands, as surveyed; all of them together are the obstacle
 */
public record StationProfile(
    Place place,
    @Nullable String none,
    @Nullable String obstacle,
    @Nullable FixedTo fixedTo,
    @Nullable Trim trim,
    List<PosedGap> gaps,
    List<Shape> shapes) {

  /** What stands in the way, from the easiest to the gravest to cut. */
  public enum Trim {
    PLASTIC,
    SEAM,
    STRUCTURE
  }

  /**
   * A gap in the pose it was measured in; without one it is worthless.
   *
   * @param wheel part number of the wheel it was measured with; null for the book's
   * @param tire part number of the tire it was measured with; null for the book's
   */
  public record PosedGap(
      Place place,
      @Measured(
              value = LENGTH,
              by = LOCK_GAP,
              how = "tape between tire and obstacle in the pose named",
              min = -50,
              max = 500)
          Quantity gap,
      @Required Steer steer,
      @Required Height height,
      @Nullable String wheel,
      @Nullable String tire,
      @Measured(value = PRESSURE, by = GAUGE, how = "gauge", min = 80, max = 900)
          Quantity pressure) {}
}
