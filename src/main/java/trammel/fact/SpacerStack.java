package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Spacers at one wheel.
 *
 * @param count how many there are
 * @param adapters how many of them change the bolt pattern
 * @param thickness of all together
 * @param nutsMissing whether one is bolted on and nothing brings the nuts that hold it to the hub
 */
@Fact.Concerns({PartKind.WHEEL_SPACER})
@Fact.Since("0.1")
public record SpacerStack(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = RATIO, name = "spacers") Quantity count,
    @Measured(RATIO) Quantity adapters,
    @Measured(value = LENGTH, name = "spacer thickness") Quantity thickness,
    boolean nutsMissing)
    implements Fact {}
