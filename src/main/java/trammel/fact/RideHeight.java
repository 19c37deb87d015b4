package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How high a corner stands, by the passive ledger.
 *
 * @param lift what the suspension's parts add to the book height; a measured height outranks it
 * @param bodyLift what blocks between body and frame add
 * @param tireLift what the tires add
 * @param before hub to fender today
 * @param after hub to fender with the changes
 */
@Fact.Since("0.1")
public record RideHeight(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "suspension lift") Quantity lift,
    @Measured(value = LENGTH, name = "body lift") Quantity bodyLift,
    @Measured(value = LENGTH, name = "tire lift") Quantity tireLift,
    @Measured(value = LENGTH, name = "height as found") Quantity before,
    @Measured(value = LENGTH, name = "height as proposed") Quantity after,
    @Measured(value = LENGTH, name = "height aimed at") Quantity aimed)
    implements Fact {}
