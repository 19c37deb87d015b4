package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;

import java.util.List;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A lift that a part's maker claims.
 *
 * @param part part number
 * @param claim the lift claimed
 * @param axleLoad axle load that it was stated at
 * @param load axle load of this vehicle
 * @param loadDifference how far apart they are
 * @param balance lift over book height at the claim's load by the balance of forces
 * @param liftDifference how far the claim and the balance are apart
 * @param startExplained met where the height does not go by the claim, or nobody has measured it to
 *     start off the book's; absent where it starts off the book's and nobody has said why
 */
@Fact.Since("0.1")
public record ClaimedLift(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    @Measured(value = LENGTH, name = "claimed lift") Quantity claim,
    @Measured(value = MASS, name = "axle load of the claim") Quantity axleLoad,
    @Measured(value = MASS, name = "axle load") Quantity load,
    @Measured(value = MASS, name = "axle load against the claim's") Quantity loadDifference,
    @Measured(value = LENGTH, name = "lift by the balance") Quantity balance,
    @Measured(value = LENGTH, name = "claim against balance") Quantity liftDifference,
    Decision startExplained)
    implements Fact {}
