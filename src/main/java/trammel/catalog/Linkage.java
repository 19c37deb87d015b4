package trammel.catalog;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.geometry.HardPoint;
import trammel.geometry.Mount.Carrier;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;

/**
 * The surveyed linkage of an independently carried wheel, in the state that {@code bookState}
 * names.
 *
 * @param points its hard points
 * @param armRooms what the upper arm may meet as it swings; none on a strut corner
 * @param upperSwing of the upper ball joint; none on a strut corner
 * @param spring where the spring is fixed; left out where it sits around a strut
 * @param damper where the damper is fixed; left out where it is a strut
 * @param sensor where the link of the height sensor is fixed
 */
public record Linkage(
    Place place,
    Map<HardPoint, SurveyPoint> points,
    Steering steering,
    TieRod tieRod,
    List<ArmRoom> armRooms,
    Swing upperSwing,
    @Nullable MountProfile spring,
    @Nullable MountProfile damper,
    @Nullable MountProfile sensor,
    @Nullable HalfShaftProfile halfShaft) {

  /**
   * What moves the tie rods' inner ends.
   *
   * @param rackTravel of a rack, from straight ahead to either lock
   * @param pitmanPivot where a pitman or idler arm turns about an upright axis; null for a rack
   * @param pitmanAngle from straight ahead to either lock
   */
  public record Steering(
      @Measured(value = LENGTH, by = TAPE, how = "rack, lock to lock, halved", min = 10, max = 150)
          Quantity rackTravel,
      @Nullable SurveyPoint pitmanPivot,
      @Measured(value = ANGLE, by = STATED, how = "lock to lock, halved", min = 10, max = 60)
          Quantity pitmanAngle) {}

  /**
   * The thread on which toe is set.
   *
   * @param thread its diameter
   * @param engaged how far it is screwed in, as surveyed
   */
  public record TieRod(
      @Measured(value = LENGTH, by = CALIPER, how = "caliper over the thread", min = 6, max = 40)
          Quantity thread,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "thread showing against the end's length",
              min = 0,
              max = 120)
          Quantity engaged) {}

  /**
   * A rod-shaped thing beside the upper arm: the coil, the strut's tower.
   *
   * @param from one end of its axis
   * @param to the other
   * @param radius its own radius and the arm's half thickness together
   */
  public record ArmRoom(
      Place place,
      @Required String obstacle,
      @Required SurveyPoint from,
      @Required SurveyPoint to,
      @Measured(value = LENGTH, by = TAPE, how = "caliper", min = 0, max = 200) Quantity radius) {}

  /**
   * How far a ball joint swings.
   *
   * @param limit from its middle, either way
   * @param atRest how far it stands from its middle as surveyed
   */
  public record Swing(
      @Measured(
              value = ANGLE,
              by = STATED,
              how = "swing a loose joint from stop to stop",
              min = 0,
              max = 60)
          Quantity limit,
      @Measured(
              value = ANGLE,
              by = STATED,
              how = "angle of the stud against its housing",
              min = 0,
              max = 60)
          Quantity atRest) {}

  /** The ends of a spring, a damper or a link. */
  public record MountProfile(
      @Required Carrier on, @Required SurveyPoint body, @Required SurveyPoint moving) {}

  /**
   * The half shaft.
   *
   * @param inner center of the inner joint
   * @param outer center of the outer joint
   * @param innerLimit the inner joint's greatest angle
   * @param outerLimit the outer joint's greatest angle
   * @param plungeOut how far the inner joint may still be drawn out, as surveyed
   * @param plungeIn how far it may still be pushed in, as surveyed
   */
  public record HalfShaftProfile(
      @Required SurveyPoint inner,
      @Required SurveyPoint outer,
      @Measured(value = ANGLE, by = STATED, how = "ask the shaft's maker", min = 0, max = 60)
          Quantity innerLimit,
      @Measured(value = ANGLE, by = STATED, how = "ask the shaft's maker", min = 0, max = 60)
          Quantity outerLimit,
      @Measured(value = LENGTH, by = TAPE, how = "joint apart, boot off", min = 0, max = 80)
          Quantity plungeOut,
      @Measured(value = LENGTH, by = TAPE, how = "joint apart, boot off", min = 0, max = 80)
          Quantity plungeIn) {}
}
