package trammel.catalog;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.SPEED;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;

import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Axle;

/**
 * A prop shaft.
 *
 * @param shaft what it is called
 * @param drives the axle it drives
 * @param output center of the joint at the gearbox or transfer case
 * @param outputSlope that flange's axis against level, positive where it rises toward the front
 * @param pinion center of the joint at the axle
 * @param pinionSlope the pinion's axis against level, positive where it rises toward the front
 * @param joints what its ends are
 * @param turns when it carries torque at speed
 * @param topSpeed the most it is driven at, where it turns in four-wheel drive only
 * @param splineEngaged how far its slip spline is in, at rest as surveyed
 * @param splineFull how far it is in when right in
 */
public record ShaftProfile(
    Place place,
    @Required String shaft,
    @Required Axle drives,
    @Required SurveyPoint output,
    @Measured(value = ANGLE, by = STATED, how = "angle finder on the flange", min = -30, max = 30)
        Quantity outputSlope,
    @Required SurveyPoint pinion,
    @Measured(
            value = ANGLE,
            by = STATED,
            how = "angle finder on the pinion flange",
            min = -30,
            max = 30)
        Quantity pinionSlope,
    @Required Joints joints,
    @Nullable Turns turns,
    @Measured(value = SPEED, by = STATED, how = "vehicle's handbook", min = 10, max = 250)
        Quantity topSpeed,
    @Measured(value = LENGTH, by = TAPE, how = "mark and pull it apart", min = 0, max = 250)
        Quantity splineEngaged,
    @Measured(value = LENGTH, by = TAPE, how = "mark and push it together", min = 0, max = 250)
        Quantity splineFull) {

  /** What its ends are. */
  public enum Joints {
    /** A single joint at both ends. */
    SINGLE,
    /** A double joint at the transfer case; the pinion points at it. */
    DOUBLE_AT_TRANSFER_CASE
  }

  /** When it turns under torque. */
  public enum Turns {
    ALWAYS,
    FOUR_WHEEL_DRIVE
  }
}
