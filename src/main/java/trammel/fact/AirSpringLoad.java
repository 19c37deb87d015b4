package trammel.fact;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What an air spring beside a steel spring carries with the changes, at rest.
 *
 * @param part part number
 * @param pressure in it, above the air's
 * @param from the least pressure its maker allows
 * @param to the greatest
 * @param force what it carries of the load at the wheel
 * @param rate what it adds to the rate at the wheel in quick movement
 * @param lift what the changes add at its corner
 */
@Fact.Concerns({PartKind.AIR_SPRING})
@Fact.Since("0.4")
public record AirSpringLoad(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    @Measured(value = PRESSURE, name = "pressure") Quantity pressure,
    @Measured(value = PRESSURE, name = "least pressure") Quantity from,
    @Measured(value = PRESSURE, name = "greatest pressure") Quantity to,
    @Measured(value = FORCE, name = "air spring's part of the load") Quantity force,
    @Measured(value = RATE, name = "air spring's rate at the wheel") Quantity rate,
    @Measured(value = LENGTH, name = "suspension lift") Quantity lift)
    implements Fact {}
