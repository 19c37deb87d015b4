package trammel.fact;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How many pieces of a part the order brings, and how many the job asks for.
 *
 * @param part part number
 * @param kind kind of part
 * @param needed pieces that the job asks for
 * @param supplied pieces that the order brings
 * @param spare what is left over: negative where some are missing
 * @param perUnit pieces in one unit as it is sold
 * @param keyMissing whether locks come without the key that they need
 */
@Fact.Since("0.1")
public record PieceCount(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String kind,
    @Measured(value = RATIO, name = "pieces needed") Quantity needed,
    @Measured(value = RATIO, name = "pieces on the order") Quantity supplied,
    @Measured(value = RATIO, name = "pieces left over") Quantity spare,
    @Measured(value = RATIO, name = "pieces in a unit") Quantity perUnit,
    boolean keyMissing)
    implements Fact {}
