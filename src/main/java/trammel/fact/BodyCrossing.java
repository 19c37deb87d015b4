package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Something between body and frame, under a body that blocks raise.
 *
 * @param kit part number of the blocks
 * @param crossing what it is, as the vehicle's profile calls it
 * @param lift how much higher the body stands over the frame
 * @param slack how far it gives way as the vehicle was made
 * @param extension what the kit brings for it adds
 * @param left slack and extension less the lift; negative where it is pulled or touched
 */
@Fact.Concerns({PartKind.BODY_LIFT_KIT})
@Fact.Since("0.4")
public record BodyCrossing(
    Subject subject,
    Standing standing,
    List<String> parts,
    String kit,
    String crossing,
    @Measured(value = LENGTH, name = "lift of the body over the frame") Quantity lift,
    @Measured(value = LENGTH, name = "slack") Quantity slack,
    @Measured(value = LENGTH, name = "extension in the kit") Quantity extension,
    @Measured(value = LENGTH, name = "slack left") Quantity left)
    implements Fact {}
