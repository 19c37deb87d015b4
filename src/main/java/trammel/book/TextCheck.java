package trammel.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;

/** Checks the sentences of a rule: not too long, and naming only what can be filled in. */
final class TextCheck {
  private static final Pattern NAME = Pattern.compile("\\{([a-z-]+)(%?)}");

  /** What a comparison fills in. */
  private static final List<String> OF_A_COMPARISON = List.of("value", "limit", "short");

  private final Place place;
  private final Problems problems;

  TextCheck(Place place, Problems problems) {
    this.place = place;
    this.problems = problems;
  }

  /** Tells of texts that are too long. */
  void length(String key, String text) {
    if (text.length() > Limits.TEXT) {
      problems.add(
          place,
          key + ": a text of " + text.length() + " characters; expected at most " + Limits.TEXT,
          "Shorten it; what else is known belongs in a document that the source names.");
    }
  }

  /**
   * Tells of names in braces that nothing can fill in.
   *
   * @param compares whether what is demanded is one comparison of the fact itself
   * @param more what else may be named
   */
  void names(String key, String text, FactType about, boolean compares, Collection<String> more) {
    length(key, text);
    Matcher named = NAME.matcher(text);
    while (named.find()) {
      String name = named.group(1);
      if (more.contains(name)
          || (compares && OF_A_COMPARISON.contains(name))
          || about.component(name).isPresent()) {
        continue;
      }
      List<String> known = new ArrayList<>(more);
      about.components().stream().map(Component::ownName).forEach(known::add);
      if (compares) {
        known.addAll(OF_A_COMPARISON);
      }
      problems.add(
          place,
          key + ": nothing fills in {" + name + "}; expected a component of " + about.name(),
          OF_A_COMPARISON.contains(name)
              ? "Only where a rule demands one comparison is there a " + name + "."
              : Words.didYouMean(name, known, "Write it without braces."));
    }
  }
}
