package trammel.fact;

import static trammel.quantity.Dimension.TIME;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A line that would be bought.
 *
 * @param part part number
 * @param returnable up to when it goes back, in words; empty where nothing is said
 * @param trial what would settle its open question before it is paid for
 * @param staysSold whether it no longer goes back once it is tried
 * @param leadTime how long it takes to come; 0 from the shelf
 */
@Fact.Since("0.1")
public record OrderLine(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String kind,
    String returnable,
    String trial,
    boolean staysSold,
    @Measured(value = TIME, name = "lead time") Quantity leadTime)
    implements Fact {}
