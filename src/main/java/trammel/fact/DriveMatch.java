package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Front against rear rolling circumference.
 *
 * @param fullTime whether both axles always drive
 * @param partTime whether they can be locked together
 * @param difference of the circumferences, as a share of the larger
 * @param limit the most that the vehicle's book allows; absent where it says nothing
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record DriveMatch(
    Subject subject,
    Standing standing,
    List<String> parts,
    boolean fullTime,
    boolean partTime,
    @Measured(value = RATIO, name = "front to rear circumference") Quantity difference,
    @Measured(value = RATIO, name = "allowed difference") Quantity limit)
    implements Fact {}
