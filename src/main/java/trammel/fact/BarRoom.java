package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A panhard bar against what it may meet over the axle's travel.
 *
 * @param obstacle what it may meet
 * @param gap what is left in the pose that decides
 * @param pose that pose, in words
 */
@Fact.Concerns({PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET})
@Fact.Since("0.2")
public record BarRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    String obstacle,
    @Measured(LENGTH) Quantity gap,
    String pose)
    implements Fact {}
