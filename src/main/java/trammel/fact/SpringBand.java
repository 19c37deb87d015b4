package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The load of an axle against what its spring was made for.
 *
 * @param spring part number of the spring
 * @param load axle load with the changes
 * @param from the least axle load the spring was made for
 * @param to the greatest
 * @param outside how far the load lies outside both; negative inside
 * @param liftError how much lower (positive) or higher it stands for that
 */
@Fact.Since("0.1")
@Fact.Concerns(PartKind.SPRING)
public record SpringBand(
    Subject subject,
    Standing standing,
    List<String> parts,
    String spring,
    @Measured(value = MASS, name = "axle load") Quantity load,
    @Measured(value = MASS, name = "least load of the spring") Quantity from,
    @Measured(value = MASS, name = "greatest load of the spring") Quantity to,
    @Measured(value = MASS, name = "load outside the spring's band") Quantity outside,
    @Measured(value = LENGTH, name = "height lost by that") Quantity liftError)
    implements Fact {}
