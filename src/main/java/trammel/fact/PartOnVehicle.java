package trammel.fact;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.subject.Subject;

/**
 * A part that is on the vehicle after the change, at one wheel.
 *
 * @param part part number
 * @param kind its kind
 */
@Fact.Since("0.3")
public record PartOnVehicle(
    Subject subject, Standing standing, List<String> parts, String part, PartKind kind)
    implements Fact {}
