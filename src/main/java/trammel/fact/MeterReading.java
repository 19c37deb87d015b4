package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What the speedometer shows after a change of tire.
 *
 * @param growth new over old rolling circumference
 * @param overRead shown over true speed as found
 * @param shown shown over true speed after the change
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record MeterReading(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = RATIO, name = "circumference, new over old") Quantity growth,
    @Measured(value = RATIO, name = "meter over-reading") Quantity overRead,
    @Measured(value = RATIO, name = "shown over true speed") Quantity shown)
    implements Fact {}
