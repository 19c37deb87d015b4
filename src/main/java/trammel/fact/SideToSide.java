package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How far the two wheels of an axle differ at their best settings.
 *
 * @param camber left − right, whichever sign
 * @param caster left − right, whichever sign
 * @param camberLimit the most the maker allows
 * @param casterLimit the most the maker allows
 * @param pull which way it pulls, in words that end a sentence: {@code it pulls to the left}
 */
@Fact.Concerns({PartKind.UPPER_ARM})
@Fact.Since("0.2")
public record SideToSide(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = ANGLE, name = "difference of camber") Quantity camber,
    @Measured(value = ANGLE, name = "difference of caster") Quantity caster,
    @Measured(ANGLE) Quantity camberLimit,
    @Measured(ANGLE) Quantity casterLimit,
    String pull)
    implements Fact {}
