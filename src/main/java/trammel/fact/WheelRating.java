package trammel.fact;

import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What a wheel may carry, and the pressure it may hold.
 *
 * @param wheel part number
 * @param rating its load rating
 * @param share half the heaviest axle rating of the vehicle (scope of SAE J2530)
 * @param maxPressure the pressure it is marked for
 * @param neededPressure the cold pressure that its tire needs
 */
@Fact.Concerns({PartKind.WHEEL})
@Fact.Since("0.1")
public record WheelRating(
    Subject subject,
    Standing standing,
    List<String> parts,
    String wheel,
    @Measured(value = MASS, name = "wheel load rating") Quantity rating,
    @Measured(value = MASS, name = "half the heaviest axle rating") Quantity share,
    @Measured(value = PRESSURE, name = "wheel pressure marking") Quantity maxPressure,
    @Measured(value = PRESSURE, name = "cold pressure needed") Quantity neededPressure)
    implements Fact {}
