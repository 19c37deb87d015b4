package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A line that follows the wheel, with the wheel hanging.
 *
 * @param line its number; empty where nobody says which is fitted
 * @param carries what runs in it, in words
 * @param brakes whether that is brake fluid
 * @param free its free length
 * @param span between its fixed ends
 * @param slack what is left of its length
 * @param lift what the changes raise the corner by
 */
@Fact.Concerns({PartKind.FLEXIBLE_LINE})
@Fact.Since("0.3")
public record LineReach(
    Subject subject,
    Standing standing,
    List<String> parts,
    String line,
    String carries,
    boolean brakes,
    @Measured(value = LENGTH, name = "free length of the line") Quantity free,
    @Measured(value = LENGTH, name = "span with the wheel hanging") Quantity span,
    @Measured(value = LENGTH, name = "slack of the line") Quantity slack,
    @Measured(value = LENGTH, name = "suspension lift") Quantity lift)
    implements Fact {}
