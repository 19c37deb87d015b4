package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.MACHINED;

import org.jspecify.annotations.Nullable;
import trammel.designation.BoltPattern;
import trammel.designation.ThreadSize;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Required;

/**
 * What a wheel is bolted to.
 *
 * @param centers what centers the wheel
 * @param pilot diameter of the hub's spigot
 * @param pilotLength length of the spigot outboard of the hub face
 * @param pilotChamfer the part of it that is chamfered and does not center
 * @param thread thread of its studs, or of the holes for wheel bolts
 * @param studLength stud beyond the hub face; absent on a hub for wheel bolts
 * @param holeDepth thread in the hub for a wheel bolt, from the hub face
 */
public record Hub(
    @Required BoltPattern boltPattern,
    @Required Centering centers,
    @Required Fixing fixing,
    @Measured(value = LENGTH, by = MACHINED, how = "caliper over the spigot", min = 40, max = 260)
        Quantity pilot,
    @Measured(value = LENGTH, by = CALIPER, how = "depth gauge, spigot to hub face", max = 60)
        Quantity pilotLength,
    @Measured(value = LENGTH, by = CALIPER, how = "caliper", max = 15) Quantity pilotChamfer,
    @Nullable ThreadSize thread,
    @Measured(value = LENGTH, by = CALIPER, how = "caliper, hub face to stud tip", max = 150)
        Quantity studLength,
    @Measured(
            value = LENGTH,
            by = CALIPER,
            how = "depth gauge through a bolt hole, to the first part behind it",
            max = 80)
        Quantity holeDepth) {

  /** What centers the wheel. */
  public enum Centering {
    HUB,
    SEAT
  }

  /** What holds the wheel. */
  public enum Fixing {
    STUDS,
    BOLTS
  }
}
