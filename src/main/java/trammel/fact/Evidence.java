package trammel.fact;

import java.util.List;

/**
 * What rules judge by. A safety-critical rule judges by what somebody has given; every other one
 * also by what rule books assume where nobody has.
 *
 * @param facts everything that follows from the build, with what is assumed
 * @param given the same without what is assumed; the very same list where nothing is
 */
public record Evidence(List<Fact> facts, List<Fact> given) {

  /** Evidence in which nothing is assumed. */
  public static Evidence of(List<Fact> facts) {
    return new Evidence(facts, facts);
  }

  /** Whether any of it is assumed. */
  @SuppressWarnings("ReferenceEquality") // nothing assumed, nothing derived twice
  public boolean assumes() {
    return facts != given;
  }

  /** The facts that a rule judges by. */
  public List<Fact> by(boolean safetyCritical) {
    return safetyCritical ? given : facts;
  }
}
