package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.TAPE;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;

/**
 * A body on a frame of its own: how it is mounted, and how far what runs between the two gives way
 * when the body goes up, from where it stands in the book to where it would be pulled, kinked or
 * touch.
 *
 * @param mounts how many places the body stands on
 * @param none what this vehicle has not, or has whole on one side of the mounts
 * @param steeringShaft how far the shaft slips out and still holds as much of its spline as its
 *     maker wants
 * @param brakeLines slack of the shortest brake line between body and frame
 * @param shiftLinkage slack of the shift and transfer-case linkage
 * @param fillerNeck slack of the fuel filler's hose and vent
 * @param wires slack of the shortest wire or ground strap
 * @param radiatorHoses slack of the tighter radiator hose
 * @param fan from the fan's blades to the shroud, upward of the lowest place
 * @param bumpers from a frame-mounted bumper up to the body, beyond the gap that may show
 */
public record BodyOnFrame(
    @Nullable Integer mounts,
    List<Crossing> none,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "how far the shaft still slips out of its coupling, less the engagement it needs",
            min = 0,
            max = 200)
        Quantity steeringShaft,
    @Measured(value = LENGTH, by = TAPE, how = "lift the line's loop", min = 0, max = 300)
        Quantity brakeLines,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "how far the linkage may be pulled and still finds every gear",
            min = 0,
            max = 200)
        Quantity shiftLinkage,
    @Measured(value = LENGTH, by = TAPE, how = "lift the hose at its bow", min = 0, max = 300)
        Quantity fillerNeck,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "lift the shortest strap and harness at their bows",
            min = 0,
            max = 500)
        Quantity wires,
    @Measured(value = LENGTH, by = TAPE, how = "lift each hose at its bow", min = 0, max = 200)
        Quantity radiatorHoses,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "lowest blade to the shroud under it",
            min = 0,
            max = 150)
        Quantity fan,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "how much wider the gap between bumper and body may become",
            min = 0,
            max = 150)
        Quantity bumpers) {

  /** What runs or stands between body and frame. */
  public enum Crossing {
    STEERING_SHAFT,
    BRAKE_LINES,
    SHIFT_LINKAGE,
    FILLER_NECK,
    WIRES,
    RADIATOR_HOSES,
    FAN,
    BUMPERS;

    /** As files and rules write it. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** How far one of them gives way; absent where nobody has measured it. */
  public Quantity slack(Crossing crossing) {
    return switch (crossing) {
      case STEERING_SHAFT -> steeringShaft;
      case BRAKE_LINES -> brakeLines;
      case SHIFT_LINKAGE -> shiftLinkage;
      case FILLER_NECK -> fillerNeck;
      case WIRES -> wires;
      case RADIATOR_HOSES -> radiatorHoses;
      case FAN -> fan;
      case BUMPERS -> bumpers;
    };
  }
}
