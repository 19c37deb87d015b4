package trammel.designation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A text that is read from left to right, one pattern at a time. */
final class Cursor {
  private final String text;
  private int position;
  private @Nullable Matcher last;

  Cursor(String text) {
    this.text = text;
  }

  /** Steps over blanks and then over the pattern, if it stands there. */
  boolean take(Pattern pattern) {
    int from = position;
    while (from < text.length() && text.charAt(from) == ' ') {
      from++;
    }
    // Transparent bounds let a pattern look at what was read before.
    Matcher matcher = pattern.matcher(text).region(from, text.length()).useTransparentBounds(true);
    if (!matcher.lookingAt()) {
      return false;
    }
    position = matcher.end();
    last = matcher;
    return true;
  }

  /** The named part of what was last taken, if it was there. */
  @Nullable String part(String name) {
    if (last == null) {
      throw new IllegalStateException("nothing has been taken yet");
    }
    return last.group(name);
  }

  boolean atEnd() {
    return rest().isEmpty();
  }

  /** What is still to be read. */
  String rest() {
    return text.substring(position).strip();
  }

  /** The rest for a message. */
  String found() {
    return atEnd() ? "the end of the text" : Unreadable.quoted(rest());
  }
}
