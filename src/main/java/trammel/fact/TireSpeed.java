package trammel.fact;

import static trammel.quantity.Dimension.SPEED;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How fast a tire may run, and how fast the vehicle goes.
 *
 * @param tire part number
 * @param symbol its speed symbol
 * @param symbolSpeed speed of its symbol
 * @param topSpeed top speed of the vehicle
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record TireSpeed(
    Subject subject,
    Standing standing,
    List<String> parts,
    String tire,
    String symbol,
    @Measured(value = SPEED, name = "speed of the tire's symbol") Quantity symbolSpeed,
    @Measured(SPEED) Quantity topSpeed)
    implements Fact {}
