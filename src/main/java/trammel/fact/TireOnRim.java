package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A tire on its rim.
 *
 * @param tire part number
 * @param rimCodeAgrees whether tire and rim are of one nominal diameter
 * @param listed whether the tire's maker lists rim widths
 * @param rimWidth width of the rim
 * @param overNarrowest rim width less the narrowest listed
 * @param underWidest widest listed less rim width
 * @param widthRatio rim width over nominal section width
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL})
@Fact.Since("0.1")
public record TireOnRim(
    Subject subject,
    Standing standing,
    List<String> parts,
    String tire,
    String wheel,
    String tireRimCode,
    String wheelRimCode,
    Decision rimCodeAgrees,
    boolean listed,
    @Measured(LENGTH) Quantity rimWidth,
    @Measured(value = LENGTH, name = "rim over the narrowest listed") Quantity overNarrowest,
    @Measured(value = LENGTH, name = "rim under the widest listed") Quantity underWidest,
    @Measured(value = RATIO, name = "rim width over section width") Quantity widthRatio)
    implements Fact {}
