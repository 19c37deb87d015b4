package trammel.fact;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.FREQUENCY;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATE;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How spring and fluid share the load of a corner whose height is held, at rest.
 *
 * @param forceBefore along the spring, as it stands
 * @param forceAfter along the spring, with the changes
 * @param pressureBefore above the air's, as measured, else by the book
 * @param pressureAfter with the changes
 * @param from the least pressure it rides well at
 * @param preferred the pressure it was laid out for
 * @param to the greatest its pump, hoses and seals may hold at rest
 * @param rise of the pressure, as a share of what it was
 * @param shareBefore part of the load that the spring carries
 * @param shareAfter the same with the changes
 * @param gasBefore rate of the gas at the wheel
 * @param gasAfter the same with the changes; it grows with the square of the absolute pressure
 * @param frequencyBefore of the ride, spring and gas together, without damping
 * @param frequencyAfter the same with the changes
 * @param spacerWanted how much thicker what is packed onto the spring would have to be to bring the
 *     preferred pressure
 */
@Fact.Since("0.1")
@Fact.Concerns({PartKind.SPRING_SPACER, PartKind.SPRING})
public record FluidLoad(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = FORCE, name = "spring force today") Quantity forceBefore,
    @Measured(value = FORCE, name = "spring force with the changes") Quantity forceAfter,
    @Measured(value = PRESSURE, name = "fluid pressure today") Quantity pressureBefore,
    @Measured(value = PRESSURE, name = "fluid pressure with the changes") Quantity pressureAfter,
    @Measured(value = PRESSURE, name = "least pressure") Quantity from,
    @Measured(value = PRESSURE, name = "preferred pressure") Quantity preferred,
    @Measured(value = PRESSURE, name = "greatest pressure") Quantity to,
    @Measured(value = RATIO, name = "rise of the pressure") Quantity rise,
    @Measured(value = RATIO, name = "spring's share today") Quantity shareBefore,
    @Measured(value = RATIO, name = "spring's share with the changes") Quantity shareAfter,
    @Measured(value = RATE, name = "rate of the gas today") Quantity gasBefore,
    @Measured(value = RATE, name = "rate of the gas with the changes") Quantity gasAfter,
    @Measured(value = FREQUENCY, name = "ride frequency today") Quantity frequencyBefore,
    @Measured(value = FREQUENCY, name = "ride frequency with the changes") Quantity frequencyAfter,
    @Measured(value = LENGTH, name = "spring spacer wanted") Quantity spacerWanted)
    implements Fact {}
