package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Whether the hub's own studs, standing proud of a bolt-on spacer, find room behind the wheel.
 *
 * @param spacer part number of the spacer
 * @param proud how far the studs stand beyond the spacer's face
 * @param room pocket depth of the wheel less that
 */
@Fact.Concerns({PartKind.WHEEL_SPACER, PartKind.WHEEL, PartKind.STUD})
@Fact.Since("0.1")
public record StudPocket(
    Subject subject,
    Standing standing,
    List<String> parts,
    String spacer,
    @Measured(value = LENGTH, name = "studs proud of the spacer") Quantity proud,
    @Measured(LENGTH) Quantity pocketDepth,
    @Measured(value = LENGTH, name = "room in the wheel's pockets") Quantity room)
    implements Fact {}
