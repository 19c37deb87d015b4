package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What wheels and spacers do to an axle's track.
 *
 * @param change of track
 * @param scrub change of the scrub radius at each wheel
 */
@Fact.Concerns({PartKind.WHEEL, PartKind.WHEEL_SPACER})
@Fact.Since("0.1")
public record TrackChange(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "change of track") Quantity change,
    @Measured(value = LENGTH, name = "change of scrub radius") Quantity scrub)
    implements Fact {}
