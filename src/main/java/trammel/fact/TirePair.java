package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The two tires of an axle.
 *
 * @param left designation of the left tire; {@code right} of the right
 * @param sizeAgrees whether the sizes are one and the same
 * @param buildAgrees whether they are of one construction and kind
 * @param loadAgrees whether they are of one load index or load range
 * @param treadDifference difference of tread depth
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record TirePair(
    Subject subject,
    Standing standing,
    List<String> parts,
    String left,
    String right,
    Decision sizeAgrees,
    Decision buildAgrees,
    Decision loadAgrees,
    @Measured(LENGTH) Quantity treadDifference)
    implements Fact {}
