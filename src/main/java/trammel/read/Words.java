package trammel.read;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** The language of keys and messages. */
public final class Words {
  private static final int SHOWN = 60;
  private static final int FEW = 20;

  private Words() {}

  /** {@code pilotLength} or {@code PILOT_LENGTH} as {@code pilot-length}. */
  public static String kebab(String name) {
    if (name.indexOf('_') >= 0 || name.equals(name.toUpperCase(Locale.ROOT))) {
      return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (Character.isUpperCase(c)) {
        if (i > 0) {
          key.append('-');
        }
        key.append(Character.toLowerCase(c));
      } else {
        key.append(c);
      }
    }
    return key.toString();
  }

  /** {@code pilot-length} as {@code pilot length}. */
  public static String spaced(String key) {
    return key.replace('-', ' ');
  }

  /** The noun after a or an. */
  public static String withArticle(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  /** A user's text as a message shows it: in quotes, on one line, short, with nothing hidden. */
  public static String quoted(String text) {
    StringBuilder shown = new StringBuilder("\"");
    int[] all = text.codePoints().limit(SHOWN + 1L).toArray();
    for (int i = 0; i < Math.min(all.length, SHOWN); i++) {
      if (all[i] == '\n') {
        shown.append(' ');
      } else if (Characters.isHidden(all[i]) || all[i] == '\t') {
        shown.append(Characters.code(all[i]));
      } else {
        shown.appendCodePoint(all[i]);
      }
    }
    return shown.append(all.length > SHOWN ? "…\"" : "\"").toString();
  }

  /** {@code a, b or c}; of a long list only its beginning. */
  public static String anyOf(Collection<String> choices) {
    List<String> shown = choices.stream().limit(FEW).toList();
    if (choices.size() > FEW) {
      return String.join(", ", shown) + " and " + (choices.size() - FEW) + " more";
    }
    int last = shown.size() - 1;
    return last < 1
        ? String.join("", shown)
        : String.join(", ", shown.subList(0, last)) + " or " + shown.get(last);
  }

  /** The choice that a user most likely meant, if one is near enough. */
  public static Optional<String> nearest(String found, Collection<String> choices) {
    String plain = plain(found);
    int most = Math.min(3, Math.max(1, plain.length() / 3));
    DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance(most);
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String choice : choices) {
      int apart = distance.apply(plain, plain(choice));
      if (apart >= 0 && apart < least) {
        least = apart;
        best = choice;
      }
    }
    return Optional.ofNullable(best);
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /** Advice that names the nearest choice, or else what the caller has to say. */
  public static String didYouMean(String found, Collection<String> choices, String otherwise) {
    return nearest(found, choices).map(near -> "Did you mean " + near + "?").orElse(otherwise);
  }
}
