package trammel.fact;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * Whether what sets camber and caster still moves, on an axle whose alignment must be set anew.
 *
 * @param free whether it does
 * @param fitted whether it is there at all: some makers fit plain bolts and sell the adjuster apart
 * @param adjusters what they are, in words
 */
@Fact.Concerns({PartKind.ECCENTRIC_BOLT})
@Fact.Since("0.2")
public record AdjusterState(
    Subject subject,
    Standing standing,
    List<String> parts,
    Decision free,
    Decision fitted,
    String adjusters)
    implements Fact {}
