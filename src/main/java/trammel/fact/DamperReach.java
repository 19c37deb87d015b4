package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A damper's own ends against those of its wheel.
 *
 * @param damper its number; empty where nobody says which is fitted
 * @param open its length pulled out
 * @param longest its length with the wheel hanging on stop or strap
 * @param openRoom what is left to pull out there: negative where the wheel hangs on the damper
 * @param hung whether it is what the maker lets the wheel hang on, so that nothing else ends its
 *     way
 * @param closed its length pushed in
 * @param shortest its length with the bump stop crushed
 * @param closedRoom what is left to push in there: negative where it bottoms
 */
@Fact.Concerns({
  PartKind.DAMPER,
  PartKind.DAMPER_BRACKET,
  PartKind.BUMP_STOP,
  PartKind.DROOP_STRAP,
  PartKind.STRUT_TOP_SPACER
})
@Fact.Since("0.3")
public record DamperReach(
    Subject subject,
    Standing standing,
    List<String> parts,
    String damper,
    @Measured(value = LENGTH, name = "open length of the damper") Quantity open,
    @Measured(value = LENGTH, name = "length at the end of droop") Quantity longest,
    @Measured(value = LENGTH, name = "damper left to pull out") Quantity openRoom,
    boolean hung,
    @Measured(value = LENGTH, name = "closed length of the damper") Quantity closed,
    @Measured(value = LENGTH, name = "length at the crushed stop") Quantity shortest,
    @Measured(value = LENGTH, name = "damper left to push in") Quantity closedRoom)
    implements Fact {}
