package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How a wheel or a spacer sits on what it is bolted to, the hub or a spacer under it.
 *
 * @param part the number of what is bolted on
 * @param on what it sits on, in a fitter's words
 * @param pattern its bolt pattern; {@code onPattern} is that of what it sits on
 * @param patternAgrees whether the bolt patterns are one and the same
 * @param nearMiss whether they look alike and are not: within 2 mm
 * @param boreRoom bore less pilot: negative where it does not go on
 * @param hubCentered whether the pilot, not the seats, centers it
 * @param pilotLeft what is left of the pilot beyond what was slipped over it
 * @param slippedOn whether a spacer without a lip of its own is under it
 */
@Fact.Concerns({PartKind.WHEEL, PartKind.WHEEL_SPACER})
@Fact.Since("0.1")
public record Seating(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String on,
    String pattern,
    String onPattern,
    Decision patternAgrees,
    boolean nearMiss,
    @Measured(LENGTH) Quantity bore,
    @Measured(LENGTH) Quantity pilot,
    @Measured(value = LENGTH, name = "bore over pilot") Quantity boreRoom,
    boolean hubCentered,
    boolean slippedOn,
    @Measured(value = LENGTH, name = "pilot left") Quantity pilotLeft)
    implements Fact {}
