package trammel.compare;

import trammel.quantity.Quantity;
import trammel.subject.Subject;

/**
 * A measured value with its prediction.
 *
 * @param pose how the vehicle stood, where that matters; else empty
 * @param predicted absent where nothing foretells it
 */
public record Pair(
    Kind kind, Subject subject, String pose, Quantity measured, Quantity predicted) {}
