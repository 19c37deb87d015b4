package trammel.build;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Instrument.ANGLE_FINDER;
import static trammel.quantity.Instrument.FENDER;
import static trammel.quantity.Instrument.GAUGE;
import static trammel.quantity.Instrument.LOCK_GAP;
import static trammel.quantity.Instrument.TAPE;

import java.time.LocalDate;
import java.util.List;
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
    List<Gap> gaps,
    List<BeamAxle> axles,
    List<PropShaft> shafts) {

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

  /**
   * Where a beam axle stands, with the vehicle on its wheels on level ground. Slopes are against
   * level.
   *
   * @param barSlope of its panhard bar in front view, positive with the end on the frame higher
   * @param shift sideways from where it was surveyed under the frame, positive to the left
   * @param dragLinkSlope of its drag link in front view, positive where it rises to the left
   * @param lowerLinkSlope of its lower links in side view, positive with the end on the frame
   *     higher
   * @param upperLinkSlope of its upper links, the same
   * @param turn against the frame from where it was surveyed, positive with the pinion's nose up;
   *     of a front axle positive with its front down
   */
  public record BeamAxle(
      Place place,
      @Required Axle at,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder along the bar",
              min = -60,
              max = 60)
          Quantity barSlope,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "tape between frame and tire on both sides; half of what has changed",
              min = -150,
              max = 150)
          Quantity shift,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder along the drag link",
              min = -60,
              max = 60)
          Quantity dragLinkSlope,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder along a lower link",
              min = -60,
              max = 60)
          Quantity lowerLinkSlope,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder along an upper link",
              min = -60,
              max = 60)
          Quantity upperLinkSlope,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder on the axle and on the frame, before and after",
              min = -30,
              max = 30)
          Quantity turn) {}

  /**
   * A prop shaft's ends, with the vehicle on its wheels on level ground.
   *
   * @param shaft what the vehicle's profile calls it
   * @param pinionSlope of the pinion's axis against level, positive where it rises toward the front
   * @param gearboxJoint angle of its joint at gearbox or transfer case, in space
   * @param axleJoint angle of its joint at the axle, in space
   */
  public record PropShaft(
      Place place,
      @Required String shaft,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder on the pinion flange",
              min = -45,
              max = 45)
          Quantity pinionSlope,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder on flange and shaft",
              min = 0,
              max = 60)
          Quantity gearboxJoint,
      @Measured(
              value = ANGLE,
              by = ANGLE_FINDER,
              how = "angle finder on flange and shaft",
              min = 0,
              max = 60)
          Quantity axleJoint) {}

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
