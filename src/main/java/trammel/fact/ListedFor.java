package trammel.fact;

import java.util.List;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * Whether a part is listed for this vehicle.
 *
 * @param part part number
 * @param vehicles the vehicles it is listed for
 * @param vehicle this vehicle
 * @param suits whether this vehicle is one of them; met where the part is listed for any
 */
@Fact.Since("0.1")
public record ListedFor(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String vehicles,
    String vehicle,
    Decision suits)
    implements Fact {}
