package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Tread against the body's outline.
 *
 * @param proud how far the tread stands outboard of the body above it
 * @param change what the proposed parts add to that
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL, PartKind.WHEEL_SPACER})
@Fact.Since("0.1")
public record Coverage(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "tread beyond the body") Quantity proud,
    @Measured(value = LENGTH, name = "change of poke") Quantity change)
    implements Fact {}
