package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Whether the spare goes where spares go.
 *
 * @param tire part number of the spare
 * @param carrier where it lives, in a fitter's words
 * @param diameterRoom largest allowed diameter less its own
 * @param widthRoom likewise for width
 * @param massRoom what the hinge or hanger may carry, less tire and wheel
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL})
@Fact.Since("0.1")
public record SpareRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    String tire,
    String carrier,
    @Measured(LENGTH) Quantity diameterRoom,
    @Measured(LENGTH) Quantity widthRoom,
    @Measured(MASS) Quantity massRoom,
    boolean hung)
    implements Fact {}
