package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Room for snow chains.
 *
 * @param chainClass class that is aimed at
 * @param room what is left between the tire and what is nearest
 * @param needed what chains of that class need
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL})
@Fact.Since("0.1")
public record ChainRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    String chainClass,
    @Measured(value = LENGTH, name = "room for chains") Quantity room,
    @Measured(value = LENGTH, name = "room that chains need") Quantity needed)
    implements Fact {}
