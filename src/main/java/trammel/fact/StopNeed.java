package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A larger tire under a raised body, against the fender with the bump stop crushed.
 *
 * @param stop number of the stop; empty where nobody says which is fitted
 * @param gap what is left between tire and fender there: negative where they meet
 * @param longer how much longer the stop must be at the wheel to keep the tire off; negative where
 *     it need not
 */
@Fact.Concerns({PartKind.BUMP_STOP})
@Fact.Since("0.3")
public record StopNeed(
    Subject subject,
    Standing standing,
    List<String> parts,
    String stop,
    @Measured(value = LENGTH, name = "gap at the fender with the stop crushed") Quantity gap,
    @Measured(value = LENGTH, name = "stop too short by") Quantity longer)
    implements Fact {}
