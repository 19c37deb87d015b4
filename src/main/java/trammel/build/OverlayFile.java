package trammel.build;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Instrument.FENDER;
import static trammel.quantity.Instrument.LOCK_GAP;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.quantity.Quantity;
import trammel.read.Inline;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Station;
import trammel.subject.Subject;

/**
 * What measuring one finished vehicle has taught about it. A build sheet that names it is worked
 * out with these values in place of its vehicle profile's; what the sheet itself measures outranks
 * both.
 *
 * @param overlay its title
 * @param vehicle the profile it lies over
 * @param sheet the build sheet that was compared
 * @param measured the file of measured values it was learned from
 * @param on the day they were measured
 */
public record OverlayFile(
    Place place,
    @Required String overlay,
    @Required String vehicle,
    @Nullable String sheet,
    @Nullable String measured,
    @Required LocalDate on,
    List<SpringRatio> springs,
    List<Printout> alignment,
    List<Gap> gaps) {

  /**
   * The motion ratio of an axle's springs, by what a spacer of known thickness gave.
   *
   * @param motionRatio spring travel over wheel travel
   */
  public record SpringRatio(
      Place place,
      @Required Axle at,
      @Required
          @Measured(
              value = RATIO,
              how = "thickness of a spacer over the lift it gives",
              min = 0.2,
              max = 1.5)
          Quantity motionRatio) {}

  /**
   * The angles of one wheel at one height, the adjusters and arms as they were found.
   *
   * @param height hub to fender on the rack
   */
  public record Printout(
      Place place,
      @Required Position at,
      @Required
          @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub center to fender edge",
              min = 200,
              max = 1000)
          Quantity height,
      @Inline Angles angles) {}

  /**
   * A gap in its pose.
   *
   * @param with numbers of the wheel, tire and spacers it was measured with
   * @param lifted how much higher the suspension stood at rest than the profile's book height
   */
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
      @Required Station.Height height,
      List<String> with,
      @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub to fender less the book's",
              min = -150,
              max = 300)
          Quantity lifted) {}
}
