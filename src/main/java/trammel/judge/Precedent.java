package trammel.judge;

import trammel.fact.Fact;

/**
 * A requirement that is met without a number: sound as found, and the change moves it the safe way
 * or not at all.
 */
public record Precedent(String rule, Fact fact) {}
