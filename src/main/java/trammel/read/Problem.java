package trammel.read;

import java.util.Comparator;

/**
 * One thing that is wrong with a file.
 *
 * @param place where
 * @param what the value found, and what was expected
 * @param advice one line on how to mend it
 */
public record Problem(Place place, String what, String advice) implements Comparable<Problem> {
  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::place)
          .thenComparing(Problem::what)
          .thenComparing(Problem::advice);

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column: what}, and the advice on a line of its own. */
  @Override
  public String toString() {
    return place + ": " + what + "\n  " + advice;
  }
}
