package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Static stability factor: half the track over the height of the center of gravity.
 *
 * @param before as found; {@code after} as proposed
 * @param change as a share of what it was: negative where it falls
 */
@Fact.Since("0.1")
public record Stability(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = RATIO, name = "static stability factor as found") Quantity before,
    @Measured(value = RATIO, name = "static stability factor as proposed") Quantity after,
    @Measured(value = RATIO, name = "change of the static stability factor") Quantity change)
    implements Fact {}
