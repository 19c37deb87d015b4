package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The thread left in a tie-rod end once toe is set again.
 *
 * @param left how far it is screwed in
 * @param needed one and a half diameters
 * @param change how much longer the tie rod becomes
 */
@Fact.Concerns({PartKind.UPPER_ARM})
@Fact.Since("0.2")
public record ToeThread(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "thread engaged") Quantity left,
    @Measured(value = LENGTH, name = "thread needed") Quantity needed,
    @Measured(value = LENGTH, name = "change of the tie rod") Quantity change)
    implements Fact {}
