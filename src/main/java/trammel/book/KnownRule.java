package trammel.book;

import java.util.Set;
import trammel.fact.Fact;

/**
 * A rule that is in force whatever books are read: what a sheet must know of it to be stricter.
 *
 * @param facts the facts it has a condition on
 * @param safetyCritical whether no waiver can lift it
 */
public record KnownRule(String id, Set<Class<? extends Fact>> facts, boolean safetyCritical) {}
