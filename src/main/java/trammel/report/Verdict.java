package trammel.report;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** What a build sheet amounts to, worst first. */
public enum Verdict {
  /** A conflict, or an alignment that no setting and no catalog part mends. */
  DOES_NOT_FIT(5),
  /** An open question that the change raises, or a part that no rule judges. */
  NOT_PROVEN(4),
  /** Something must be added to the order. */
  FITS_WITH_ADDITIONS(3),
  /** Nothing stands against it; cautions may. */
  FITS(0);

  private final int exitStatus;

  Verdict(int exitStatus) {
    this.exitStatus = exitStatus;
  }

  /** The exit status of a check that ends so. */
  public int exitStatus() {
    return exitStatus;
  }

  /** The worst of several; {@link #FITS} of none. */
  static Verdict worst(Collection<Verdict> verdicts) {
    return verdicts.stream().min(Comparator.naturalOrder()).orElse(FITS);
  }

  /** In words, as reports print it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
