package trammel.fact;

import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What the tires of an axle carry.
 *
 * @param tire part number
 * @param derated whether a passenger tire on a light truck counts for less (49 CFR 571.110)
 * @param capacity sum of the load ratings, derated where they must be
 * @param axleRating the most that the axle may carry
 * @param placard cold pressure on the label
 * @param placardCapacity what the axle's tires carry at that pressure
 * @param neededPressure cold pressure that carries the axle rating
 * @param tireChanged whether the label's size is no longer fitted
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record TireCapacity(
    Subject subject,
    Standing standing,
    List<String> parts,
    String tire,
    boolean derated,
    @Measured(value = MASS, name = "tire capacity of the axle") Quantity capacity,
    @Measured(MASS) Quantity axleRating,
    @Measured(value = PRESSURE, name = "placard pressure") Quantity placard,
    @Measured(value = MASS, name = "capacity at placard pressure") Quantity placardCapacity,
    @Measured(value = PRESSURE, name = "cold pressure needed") Quantity neededPressure,
    boolean tireChanged)
    implements Fact {}
