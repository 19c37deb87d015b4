package trammel.book;

import java.util.Locale;
import java.util.regex.Pattern;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;

/** Names of books and rules: plain lower case, so that none looks like another. */
final class Ids {
  private static final Pattern BOOK = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  private static final Pattern RULE =
      Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*\\.[a-z0-9]+(-[a-z0-9]+)*");
  private static final int LONGEST = 80;

  private Ids() {}

  /** Whether a book may be called so; a problem is told if not. */
  static boolean book(String name, Place place, Problems problems) {
    return check(BOOK, name, "a book", "hillside-shop", place, problems);
  }

  /** Whether a rule may be called so; a problem is told if not. */
  static boolean rule(String id, Place place, Problems problems) {
    return check(RULE, id, "a rule", "clearance.mud-behind-front", place, problems);
  }

  private static boolean check(
      Pattern form, String name, String what, String example, Place place, Problems problems) {
    if (name.length() <= LONGEST && form.matcher(name).matches()) {
      return true;
    }
    int foreign = name.codePoints().filter(c -> c > '~').findFirst().orElse(-1);
    String found =
        foreign < 0
            ? Words.quoted(name)
            : Words.quoted(name)
                + ", in which "
                + String.format(Locale.ROOT, "U+%04X", foreign)
                + " ("
                + String.valueOf(Character.getName(foreign)).toLowerCase(Locale.ROOT)
                + ") only looks plain,";
    problems.add(
        place,
        found
            + " is no name for "
            + what
            + "; expected letters a to z, digits and hyphens"
            + (form == RULE ? ", with one dot" : "")
            + ", at most "
            + LONGEST
            + " characters",
        "Write for example " + example + ".");
    return false;
  }
}
