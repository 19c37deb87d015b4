package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * An angle that the ground may rise or fall by before the underside meets it.
 *
 * @param angle which: approach angle, departure angle, breakover angle
 * @param point what meets the ground first as proposed
 * @param before today
 * @param after as proposed
 * @param change of it
 */
@Fact.Since("0.3")
public record RampAngle(
    Subject subject,
    Standing standing,
    List<String> parts,
    String angle,
    String point,
    @Measured(value = ANGLE, name = "angle today") Quantity before,
    @Measured(value = ANGLE, name = "angle as proposed") Quantity after,
    @Measured(value = ANGLE, name = "change of the angle") Quantity change)
    implements Fact {}
