package trammel.read;

import java.util.List;
import java.util.stream.Collectors;

/** A file, or several, could not be read as it was meant: so there is no result at all. */
public final class UnreadableFile extends RuntimeException {
  /** More than a person would read through; the rest is counted. */
  private static final int SHOWN = 50;

  private final transient List<Problem> problems;

  /**
   * @param problems what is wrong, in the order to be shown
   */
  public UnreadableFile(List<Problem> problems) {
    super(text(problems));
    this.problems = List.copyOf(problems);
  }

  /** What is wrong, in order. */
  public List<Problem> problems() {
    return problems;
  }

  static String text(List<Problem> problems) {
    String text =
        problems.stream().limit(SHOWN).map(Problem::toString).collect(Collectors.joining("\n"));
    int more = problems.size() - SHOWN;
    return more > 0 ? text + "\n… and " + more + " more" : text;
  }
}
