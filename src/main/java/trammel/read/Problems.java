package trammel.read;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one or several files. */
public final class Problems {
  private final List<Problem> found = new ArrayList<>();

  /** Adds a problem. */
  public void add(Place place, String what, String advice) {
    found.add(new Problem(place, what, advice));
  }

  void add(Problem problem) {
    found.add(problem);
  }

  /** Adds those of another collection, in its order. */
  public void addAll(Problems others) {
    found.addAll(others.found);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many there are. */
  public int count() {
    return found.size();
  }

  /** All problems by file, line and column; one that was found twice is told once. */
  public List<Problem> sorted() {
    return found.stream().distinct().sorted().toList();
  }

  /**
   * Ends the reading if anything is wrong.
   *
   * @throws UnreadableFile with all problems, if there are any
   */
  public void refuseIfAny() {
    if (!isEmpty()) {
      throw new UnreadableFile(sorted());
    }
  }

  /** All problems as a user reads them. */
  @Override
  public String toString() {
    return UnreadableFile.text(sorted());
  }
}
