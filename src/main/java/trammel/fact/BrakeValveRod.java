package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The rod of a brake valve that feels how high the body stands over its axle.
 *
 * @param lift what the changes raise the axle by
 * @param bracket number of the bracket that moves the rod; empty where there is none
 * @param follows whether there is such a bracket and it is made for this lift; absent where nobody
 *     knows whether the valve has a rod
 */
@Fact.Concerns({PartKind.BRAKE_VALVE_BRACKET})
@Fact.Since("0.3")
public record BrakeValveRod(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "lift of the axle") Quantity lift,
    String bracket,
    Decision follows)
    implements Fact {}
