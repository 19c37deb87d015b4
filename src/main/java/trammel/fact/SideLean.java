package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How far an axle's sides differ in height with the changes.
 *
 * @param axle front or rear
 * @param lower the side that stands lower
 * @param difference left less right, hub to fender
 * @param lean the same without its sign
 */
@Fact.Since("0.1")
public record SideLean(
    Subject subject,
    Standing standing,
    List<String> parts,
    String axle,
    String lower,
    @Measured(value = LENGTH, name = "left less right") Quantity difference,
    @Measured(value = LENGTH, name = "lean to one side") Quantity lean)
    implements Fact {}
