package trammel.fact;

import static trammel.quantity.Dimension.TIME;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How a tire was made and how old it is.
 *
 * @param tire part number
 * @param needsTube whether it is made to run with a tube
 * @param directional whether it may turn only one way
 * @param age years since it was made
 * @param ageKnown whether a date of manufacture is stated
 */
@Fact.Concerns({PartKind.TIRE})
@Fact.Since("0.1")
public record TireState(
    Subject subject,
    Standing standing,
    List<String> parts,
    String tire,
    boolean needsTube,
    boolean directional,
    boolean asymmetric,
    boolean ageKnown,
    @Measured(TIME) Quantity age)
    implements Fact {}
