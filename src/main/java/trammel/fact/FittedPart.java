package trammel.fact;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * Whether it is known which part of a kind is at a wheel after the change.
 *
 * @param kind the kind of part, in a fitter's words
 * @param known met where it is known; absent where nobody says
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL, PartKind.FASTENER})
@Fact.Since("0.1")
public record FittedPart(
    Subject subject, Standing standing, List<String> parts, String kind, Decision known)
    implements Fact {}
