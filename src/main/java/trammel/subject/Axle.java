package trammel.subject;

import java.util.Locale;

/** An axle of the vehicle, beam or not. */
public enum Axle {
  FRONT,
  REAR;

  private final String written = name().toLowerCase(Locale.ROOT);

  /** As files and rules write it. */
  @Override
  public String toString() {
    return written;
  }
}
