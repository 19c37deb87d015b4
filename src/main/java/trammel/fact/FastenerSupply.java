package trammel.fact;

import java.util.List;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * Whether the bolts, nuts and studs that fitting a part asks for come with it.
 *
 * @param part part number
 * @param missing those that do not come with it, with their count; empty where none is missing
 * @param complete met where all come with it; absent where nobody says what fastens it
 * @param onceOnly those that may be tightened once only and do not come with it
 * @param renewed met where each of these comes with it
 */
@Fact.Since("0.3")
public record FastenerSupply(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String missing,
    Decision complete,
    String onceOnly,
    Decision renewed)
    implements Fact {}
