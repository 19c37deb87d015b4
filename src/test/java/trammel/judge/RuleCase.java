package trammel.judge;

import java.util.List;
import java.util.OptionalDouble;
import trammel.fact.Fact;
import trammel.read.Place;

/**
 * One thing that a rule must do.
 *
 * @param rule the rule under test
 * @param reportedAs the rule whose finding it reports: its own, unless it speaks for others
 * @param name what the case shows
 * @param facts all that is known
 * @param expects {@code nothing}, {@code precedent}, or the finding's kind, with {@code possibly}
 *     before it where it is so worded
 * @param margin how far inside the limit, in the kept unit; empty where no known number decides
 * @param place where the case stands
 */
record RuleCase(
    String rule,
    String reportedAs,
    String name,
    List<Fact> facts,
    String expects,
    OptionalDouble margin,
    Place place) {
  static final String NOTHING = "nothing";
  static final String PRECEDENT = "precedent";

  /** Whether the rule speaks in it. */
  boolean fires() {
    return !expects.equals(NOTHING) && !expects.equals(PRECEDENT);
  }
}
