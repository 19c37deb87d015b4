package trammel.subject;

import java.util.Locale;

/** A side of the vehicle, seen in the direction of travel. */
public enum Side {
  LEFT,
  RIGHT;

  /** As files and rules write it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
