package trammel.fact;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * A part on the sheet that may meet a need.
 *
 * @param part part number
 * @param kind its kind
 * @param suits whether it certainly suits where it is
 */
@Fact.Concerns(PartKind.CENTERING_RING)
@Fact.Since("0.1")
public record Supply(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    PartKind kind,
    Decision suits)
    implements Fact {}
