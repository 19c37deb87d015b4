package trammel.fact;

import static trammel.quantity.Dimension.MASS;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What an axle carries, or the whole vehicle weighs.
 *
 * @param place which of them it is: front axle, rear axle or vehicle
 * @param before as it stands: as weighed, else by the book and what is fitted beside it
 * @param after with what is bolted on or off and what will be carried
 * @param rating the most it may carry
 * @param left what is left of the rating; negative is what it is over
 */
@Fact.Since("0.1")
@Fact.Concerns(PartKind.ACCESSORY)
public record AxleLoad(
    Subject subject,
    Standing standing,
    List<String> parts,
    String place,
    @Measured(value = MASS, name = "load today") Quantity before,
    @Measured(value = MASS, name = "load with the changes") Quantity after,
    @Measured(value = MASS, name = "rating") Quantity rating,
    @Measured(value = MASS, name = "left of the rating") Quantity left)
    implements Fact {}
