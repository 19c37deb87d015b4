package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Drag link against panhard bar of a steered beam axle: where they slope alike, bumps do not steer.
 *
 * @param dragLink slope of the drag link in front view
 * @param bar slope of the panhard bar in front view
 * @param difference between them, whichever way
 */
@Fact.Concerns({PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET})
@Fact.Since("0.2")
public record LinkMismatch(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = ANGLE, name = "slope of the drag link") Quantity dragLink,
    @Measured(value = ANGLE, name = "slope of the panhard bar") Quantity bar,
    @Measured(value = ANGLE, name = "difference of slope") Quantity difference)
    implements Fact {}
