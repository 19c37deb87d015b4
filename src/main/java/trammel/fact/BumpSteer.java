package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How much a wheel steers itself over bumps.
 *
 * @param before change of toe of one wheel over 25 mm either way, as it was
 * @param after the same as proposed
 * @param more how much more that is
 */
@Fact.Concerns({PartKind.UPPER_ARM, PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET})
@Fact.Since("0.2")
public record BumpSteer(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = ANGLE, name = "bump steer before") Quantity before,
    @Measured(value = ANGLE, name = "bump steer") Quantity after,
    @Measured(value = ANGLE, name = "bump steer added") Quantity more)
    implements Fact {}
