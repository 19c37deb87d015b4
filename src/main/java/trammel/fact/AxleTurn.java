package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How links or leaf springs turn a beam axle and move it fore and aft.
 *
 * @param turn of the axle, positive with the pinion's nose up
 * @param turned how far that is, whichever way
 * @param takesAlong what turns with it and minds: {@code pinion}, {@code caster}, {@code pinion and
 *     caster}; empty where the axle neither drives nor steers
 * @param shift of the wheels, forward
 * @param away how far that is, whichever way
 */
@Fact.Concerns({PartKind.AXLE_LINK, PartKind.LEAF_BLOCK, PartKind.SHACKLE})
@Fact.Since("0.2")
public record AxleTurn(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = ANGLE, name = "turn of the axle") Quantity turn,
    @Measured(value = ANGLE, name = "turn of the axle either way") Quantity turned,
    String takesAlong,
    @Measured(value = LENGTH, name = "fore shift of the axle") Quantity shift,
    @Measured(value = LENGTH, name = "shift of the wheelbase") Quantity away)
    implements Fact {}
