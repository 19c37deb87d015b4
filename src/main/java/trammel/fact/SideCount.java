package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Pieces of one kind for the left side and for the right.
 *
 * @param kind kind of part
 * @param left pieces for the left; {@code right} for the right
 * @param odd pieces without a partner on the other side
 */
@Fact.Since("0.1")
public record SideCount(
    Subject subject,
    Standing standing,
    List<String> parts,
    String kind,
    @Measured(value = RATIO, name = "pieces for the left") Quantity left,
    @Measured(value = RATIO, name = "pieces for the right") Quantity right,
    @Measured(value = RATIO, name = "pieces without a partner") Quantity odd)
    implements Fact {}
