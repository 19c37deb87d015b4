package trammel.book;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.read.Problem;

/**
 * A book of the user's that could not be read, so that none of its rules judges.
 *
 * @param folder where it is, as messages name it
 * @param manifest what it says of itself; null where that cannot be read either
 * @param problems what is wrong with it, in order; at least one
 */
public record Unread(String folder, @Nullable Manifest manifest, List<Problem> problems) {
  public Unread {
    problems = List.copyOf(problems);
  }

  /** What reports call it by: its own name, or else its folder. */
  public String name() {
    return manifest == null ? folder : manifest.name();
  }

  /**
   * Whether its rules would judge a vehicle, or might, because it cannot be read for which vehicles
   * it is.
   *
   * @param vehicle the name of its profile
   * @param registeredAt where it is registered; empty where the sheet does not say
   */
  public boolean mayJudge(String vehicle, String registeredAt) {
    return manifest == null || manifest.appliesTo(vehicle, registeredAt);
  }

  /** Whether it holds the law of a place, or may. */
  public boolean mayBeLaw() {
    return manifest == null || manifest.kind() == Manifest.Kind.LAW;
  }
}
