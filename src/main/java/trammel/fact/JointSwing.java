package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The upper ball joint against its own stops.
 *
 * @param swing its greatest angle from the middle
 * @param limit the most it can
 * @param lift how much the axle is raised
 * @param pose where the greatest is, in words
 */
@Fact.Concerns({PartKind.UPPER_ARM})
@Fact.Since("0.2")
public record JointSwing(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = ANGLE, name = "swing of the upper ball joint") Quantity swing,
    @Measured(value = ANGLE, name = "limit of the upper ball joint") Quantity limit,
    @Measured(value = LENGTH, name = "suspension lift") Quantity lift,
    String pose)
    implements Fact {}
