package trammel.book;

import java.util.List;
import trammel.fact.Fact;
import trammel.read.Place;

/**
 * What a rule is shown to do.
 *
 * @param name what is so in this case
 * @param facts what is given
 * @param expects {@code nothing}, {@code precedent}, {@code unproven}, a kind, or {@code possibly}
 *     and a kind
 * @param knownGap why the rule does not do so yet; empty where it does
 */
public record Case(Place place, String name, List<Fact> facts, String expects, String knownGap) {
  /** Nothing is said. */
  public static final String NOTHING = "nothing";

  /** Met because the vehicle is sound there as found. */
  public static final String PRECEDENT = "precedent";

  /** A value is missing, or the margin is smaller than what is known about it. */
  public static final String UNPROVEN = "unproven";

  /** What stands before the kind of a finding that may or may not hold. */
  public static final String POSSIBLY = "possibly ";

  public Case {
    facts = List.copyOf(facts);
  }
}
