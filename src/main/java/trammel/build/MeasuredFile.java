package trammel.build;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Instrument.FENDER;
import static trammel.quantity.Instrument.GAUGE;
import static trammel.quantity.Instrument.LOCK_GAP;

import java.time.LocalDate;
import java.util.List;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.quantity.Quantity;
import trammel.read.Inline;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Position;
import trammel.subject.Station;
import trammel.subject.Subject;

/**
 * What was measured on the finished vehicle, all of it with everything of the build sheet fitted.
 *
 * @param measured its title
 * @param on the day it was measured
 */
public record MeasuredFile(
    Place place,
    @Required String measured,
    @Required LocalDate on,
    List<FenderHeight> heights,
    List<Rack> alignment,
    List<FluidPressure> pressures,
    List<Gap> gaps) {

  /** A hub-to-fender height. */
  public record FenderHeight(
      Place place,
      @Required Position at,
      @Required
          @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub center to fender edge",
              min = 200,
              max = 1000)
          Quantity height) {}

  /**
   * What an alignment rack printed of one wheel.
   *
   * @param height hub to fender on the rack; without it the one that stands under heights
   * @param adjusted whether the adjusters had been set to what was proposed; without it they stood
   *     as they did before the work
   */
  public record Rack(
      Place place,
      @Required Position at,
      boolean adjusted,
      @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub center to fender edge",
              min = 200,
              max = 1000)
          Quantity height,
      @Inline Angles angles) {}

  /** The pressure of a ram or an air spring at rest, above the air's. */
  public record FluidPressure(
      Place place,
      @Required Position at,
      @Required
          @Measured(
              value = PRESSURE,
              by = GAUGE,
              how = "gauge or diagnostic reading at rest",
              // Wide enough that the check against the profile says what is wrong.
              min = 1,
              max = 1000000)
          Quantity pressure) {}

  /** A gap at a clearance station, in the pose it was measured in. */
  public record Gap(
      Place place,
      @Required Subject at,
      @Required
          @Measured(
              value = LENGTH,
              by = LOCK_GAP,
              how = "tape between tire and obstacle in the pose named",
              min = -50,
              max = 500)
          Quantity gap,
      @Required Station.Steer steer,
      @Required Station.Height height) {

    /** Its wheel; a file that was read has no gap of anything else. */
    public Position wheel() {
      return Position.running().stream()
          .filter(position -> position.toString().equals(at.where()))
          .findFirst()
          .orElseThrow();
    }

    /** Its station; a file that was read has no gap anywhere else. */
    public Station station() {
      return java.util.Arrays.stream(Station.values())
          .filter(station -> station.toString().equals(at.detail()))
          .findFirst()
          .orElseThrow();
    }
  }
}
