package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How high something underneath stands over the ground, on level ground.
 *
 * @param point what it is
 * @param before today
 * @param after as proposed
 * @param change of it
 */
@Fact.Since("0.3")
public record GroundRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    String point,
    @Measured(value = LENGTH, name = "ground clearance today") Quantity before,
    @Measured(value = LENGTH, name = "ground clearance as proposed") Quantity after,
    @Measured(value = LENGTH, name = "change of ground clearance") Quantity change)
    implements Fact {}
