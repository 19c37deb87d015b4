package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What the tires do to the gearing.
 *
 * @param growth new over old rolling circumference, less 1
 * @param finalDrive ratio of the axles
 * @param effective ratio it acts like on the old tires
 * @param restoring ratio that would bring the old gearing back
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record GearChange(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = RATIO, name = "growth of circumference") Quantity growth,
    @Measured(RATIO) Quantity finalDrive,
    @Measured(value = RATIO, name = "effective final drive") Quantity effective,
    @Measured(value = RATIO, name = "final drive that restores the gearing") Quantity restoring)
    implements Fact {}
