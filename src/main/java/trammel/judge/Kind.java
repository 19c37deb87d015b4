package trammel.judge;

import java.util.Locale;

/** The kinds of finding, gravest first. */
public enum Kind {
  /** Cannot be fitted or driven as proposed. */
  CONFLICT,
  /** Cannot be set within specification, or will steer or wear worse. */
  ALIGNMENT,
  /** A value is missing, or the margin is smaller than what is known about it. */
  UNPROVEN,
  /** Needs something that is not on the sheet. */
  COMPANION,
  /** Beyond a limit of the named place. */
  LAW,
  /** Fits; someone must know. */
  CAUTION;

  /** The kind of this name, as rules write it. */
  public static Kind named(String name) {
    return valueOf(name.toUpperCase(Locale.ROOT));
  }

  /** Whether an open question under a rule of this kind can decide the verdict. */
  public boolean canLeaveUnproven() {
    return this == CONFLICT || this == COMPANION || this == ALIGNMENT;
  }

  /** As rules and reports write it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
