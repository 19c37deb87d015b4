package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Whether the spare is of the size of the wheels on the ground.
 *
 * @param tire designation of the spare
 * @param difference of rolling circumference, as a share of the larger
 * @param inRotation whether it takes its turn on the ground
 * @param fullTime whether both axles always drive
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record SpareMatch(
    Subject subject,
    Standing standing,
    List<String> parts,
    String tire,
    boolean inRotation,
    boolean fullTime,
    @Measured(value = RATIO, name = "spare to road circumference") Quantity difference)
    implements Fact {}
