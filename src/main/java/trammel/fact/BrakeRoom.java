package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Room between a wheel and what stands inside it.
 *
 * @param wheel part number
 * @param barrelRoom barrel to caliper
 * @param spokeRoom back of the spokes to caliper face
 * @param capRoom center bore to the hub's cap
 */
@Fact.Concerns({PartKind.WHEEL, PartKind.WHEEL_SPACER})
@Fact.Since("0.1")
public record BrakeRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    String wheel,
    @Measured(value = LENGTH, name = "barrel to caliper") Quantity barrelRoom,
    @Measured(value = LENGTH, name = "spoke to caliper") Quantity spokeRoom,
    @Measured(value = LENGTH, name = "bore over hub cap") Quantity capRoom)
    implements Fact {}
