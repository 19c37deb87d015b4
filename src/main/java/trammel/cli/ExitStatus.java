package trammel.cli;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** What the program tells the shell. Verdicts have their own, 0 and 3 to 6. */
final class ExitStatus {
  static final int DONE = 0;

  /** The program has failed, not its user. */
  static final int OUR_FAULT = 1;

  /** A wrong command line, or a file that cannot be read. */
  static final int UNREADABLE = 2;

  /** What was measured is not what was predicted. */
  static final int DISAGREES = 4;

  /** A case of a rule does not come out as its sheet expects. */
  static final int OTHERWISE = 5;

  /** 6 is: fits, fits with additions or not proven, and not lawful as it stands. */
  private static final List<Integer> WORST_FIRST = List.of(OUR_FAULT, UNREADABLE, 5, 6, 4, 3, DONE);

  private ExitStatus() {}

  /** The worst of several; {@link #DONE} of none. */
  static int worst(Collection<Integer> statuses) {
    return statuses.stream().min(Comparator.comparing(WORST_FIRST::indexOf)).orElse(DONE);
  }
}
