package trammel.fact;

import java.util.List;
import trammel.catalog.AssumedValue;

/**
 * What rules judge by. A safety-critical rule judges by what somebody has given; every other one
 * also by what rule books assume where nobody has.
 *
 * @param facts everything that follows from the build, with what is assumed
 * @param given the same without what is assumed
 * @param assumed what is
 */
public record Evidence(List<Fact> facts, List<Fact> given, List<AssumedValue> assumed) {

  /** Evidence in which nothing is assumed. */
  public static Evidence of(List<Fact> facts) {
    return new Evidence(facts, facts, List.of());
  }

  /** Whether any of it is assumed. */
  public boolean assumes() {
    return !assumed.isEmpty();
  }

  /** The facts that a rule judges by. */
  public List<Fact> by(boolean safetyCritical) {
    return safetyCritical ? given : facts;
  }
}
