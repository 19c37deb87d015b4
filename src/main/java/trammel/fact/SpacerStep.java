package trammel.fact;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.subject.Subject;

/**
 * A spring spacer with a step that the coil's end is turned against.
 *
 * @param part number of the spacer
 * @param spring number of the spring
 * @param endAgrees whether the coil has an end that can stand against a step
 * @param springEnd how it ends, in words
 */
@Fact.Concerns({PartKind.SPRING_SPACER})
@Fact.Since("0.3")
public record SpacerStep(
    Subject subject,
    Standing standing,
    List<String> parts,
    String part,
    String spring,
    Decision endAgrees,
    String springEnd)
    implements Fact {}
