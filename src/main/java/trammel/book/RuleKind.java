package trammel.book;

import java.util.Locale;

/** What a rule of a sheet amounts to when it is broken, gravest first. */
public enum RuleKind {
  /** Cannot be fitted or driven as proposed. */
  CONFLICT,
  /** Cannot be set within specification, or will steer or wear worse. */
  ALIGNMENT,
  /** Needs something that is not on the sheet. */
  COMPANION,
  /** Beyond a limit of the named place. */
  LAW,
  /** Fits; someone must know. */
  CAUTION;

  /** Whether an open question under such a rule is reported as unproven. */
  public boolean leavesUnproven() {
    return this == CONFLICT || this == ALIGNMENT || this == COMPANION;
  }

  /** As sheets write it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
