package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A half shaft over travel and lock.
 *
 * @param atRest the inner joint's angle at rest
 * @param inner its angle at droop
 * @param innerLimit the most it may have
 * @param outer the outer joint's angle at droop and lock
 * @param outerLimit the most it may have
 * @param plungeLeft what the inner joint may still move, at the nearer end
 */
@Fact.Concerns({PartKind.DIFFERENTIAL_DROP})
@Fact.Since("0.2")
public record HalfShaft(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = ANGLE, name = "inner joint at rest") Quantity atRest,
    @Measured(value = ANGLE, name = "inner joint at droop") Quantity inner,
    @Measured(ANGLE) Quantity innerLimit,
    @Measured(value = ANGLE, name = "outer joint at droop and lock") Quantity outer,
    @Measured(ANGLE) Quantity outerLimit,
    @Measured(value = LENGTH, name = "plunge left") Quantity plungeLeft)
    implements Fact {}
