package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.HARD_POINT;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Required;
import trammel.subject.Axle;
import trammel.subject.Side;

/**
 * A place on the vehicle at its reference height.
 *
 * @param from the axle that {@code fore} counts from; null for the axle whose profile it stands in
 * @param side the side that {@code out} counts toward; null for both, each the other's mirror image
 * @param fore forward of the axle
 * @param out outward from the center plane; negative for what crosses over
 * @param up above the ground
 */
public record SurveyPoint(
    @Nullable Axle from,
    @Nullable Side side,
    @Required @Measured(value = LENGTH, by = HARD_POINT, how = "survey", min = -6000, max = 6000)
        Quantity fore,
    @Required @Measured(value = LENGTH, by = HARD_POINT, how = "survey", min = -1300, max = 1300)
        Quantity out,
    @Required @Measured(value = LENGTH, by = HARD_POINT, how = "survey", min = -100, max = 2500)
        Quantity up) {

  /** Fore, out and up (mm), {@code out} toward whichever side it counts to. */
  Vector3D vector() {
    return new Vector3D(fore.value(), out.value(), up.value());
  }

  /** Fore, left and up (mm); a point of both sides is the left one. */
  Vector3D inVehicle() {
    double left = side == Side.RIGHT ? -out.value() : out.value();
    return new Vector3D(fore.value(), left, up.value());
  }
}
