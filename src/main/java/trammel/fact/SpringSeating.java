package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A spring spacer between a spring and its seat.
 *
 * @param part part number of the spacer; {@code spring} of the spring
 * @param boreRoom spacer's bore less the seat's pilot: negative where it does not go on
 * @param cupRoom seat's cup less the spacer's flange
 * @param collarRoom inside of the coil less the spacer's collar
 * @param coilOnFlange spacer's flange less the outside of the coil
 * @param endAgrees whether it was made for the shape of the coil's end
 * @param stacked whether it is one of several, and not all of them may be
 */
@Fact.Concerns(PartKind.SPRING_SPACER)
@Fact.Since("0.1")
public record SpringSeating(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String spring,
    @Measured(value = LENGTH, name = "spacer bore over the seat's pilot") Quantity boreRoom,
    @Measured(value = LENGTH, name = "cup over spacer") Quantity cupRoom,
    @Measured(value = LENGTH, name = "coil over the spacer's collar") Quantity collarRoom,
    @Measured(value = LENGTH, name = "flange beyond the coil") Quantity coilOnFlange,
    Decision endAgrees,
    String end,
    String springEnd,
    boolean stacked)
    implements Fact {}
