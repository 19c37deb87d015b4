package trammel.fact;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * Whether a corner goes from droop to bump, and from lock to lock, without a joint at its end.
 *
 * @param reaches whether it does
 * @param limit what stops it where, in words
 */
@Fact.Concerns({PartKind.UPPER_ARM})
@Fact.Since("0.2")
public record LinkageReach(
    Subject subject, Standing standing, List<String> parts, Decision reaches, String limit)
    implements Fact {}
