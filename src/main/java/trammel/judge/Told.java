package trammel.judge;

import java.util.List;
import java.util.Map;
import trammel.catalog.AssumedValue;

/**
 * How a finding is told.
 *
 * @param by the rule whose words and figures these are: the one that found it, or a stricter one
 * @param also the stricter rules that found it too or in its stead; their reasons are shown besides
 * @param results what the rows of a table tell, by column
 * @param notAccepted what rule books assume that bears on an open question, and that the rule does
 *     not accept
 */
public record Told(
    String by, List<String> also, Map<String, String> results, List<AssumedValue> notAccepted) {
  /** Told by a rule, with what the rows of a table tell. */
  static Told by(String rule, Map<String, String> results) {
    return new Told(rule, List.of(), results, List.of());
  }

  /** Told by the rule that found it. */
  static Told by(String rule) {
    return by(rule, Map.of());
  }
}
