package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A damper-mount bracket against the lift it goes with.
 *
 * @param bracket its number
 * @param shift how far it moves the mount
 * @param wanted how far the lift moves the damper: motion ratio times lift
 * @param off how far the two are apart
 */
@Fact.Concerns({PartKind.DAMPER_BRACKET})
@Fact.Since("0.3")
public record BracketMatch(
    Subject subject,
    Standing standing,
    List<String> parts,
    String bracket,
    @Measured(value = LENGTH, name = "shift of the bracket") Quantity shift,
    @Measured(value = LENGTH, name = "what the lift moves the damper") Quantity wanted,
    @Measured(value = LENGTH, name = "bracket off the lift") Quantity off)
    implements Fact {}
