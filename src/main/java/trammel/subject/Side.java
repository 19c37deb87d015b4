package trammel.subject;

import java.util.Locale;

/** A side of the vehicle, seen in the direction of travel. */
public enum Side {
  LEFT,
  RIGHT;

  private final String written = name().toLowerCase(Locale.ROOT);

  /** As files and rules write it. */
  @Override
  public String toString() {
    return written;
  }
}
