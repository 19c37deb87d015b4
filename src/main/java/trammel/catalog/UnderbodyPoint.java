package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.TAPE;

import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Axle;

/**
 * The lowest part of something underneath, on the center plane, at book height on book tires.
 *
 * @param point what it is
 * @param from the axle that {@code fore} counts from
 * @param fixedTo what it moves with
 */
public record UnderbodyPoint(
    Place place,
    @Required String point,
    @Required Axle from,
    @Measured(value = LENGTH, by = TAPE, how = "tape along the sill", min = -6000, max = 6000)
        Quantity fore,
    @Measured(value = LENGTH, by = TAPE, how = "ground to its lowest part", min = 50, max = 1200)
        Quantity up,
    @Required FixedTo fixedTo) {

  /** What an underbody point moves with. */
  public enum FixedTo {
    BODY,
    FRAME,
    FRONT_AXLE,
    REAR_AXLE
  }
}
