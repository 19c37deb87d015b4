package trammel.judge;

import java.util.List;
import java.util.Map;

/**
 * How a finding is told.
 *
 * @param by the rule whose words and figures these are: the one that found it, or a stricter one
 * @param also the stricter rules that found it too or in its stead; their reasons are shown besides
 * @param results what the rows of a table tell, by column
 */
public record Told(String by, List<String> also, Map<String, String> results) {
  /** Told by the rule that found it. */
  static Told by(String rule) {
    return new Told(rule, List.of(), Map.of());
  }
}
