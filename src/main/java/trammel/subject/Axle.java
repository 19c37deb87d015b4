package trammel.subject;

import java.util.Locale;

/** An axle of the vehicle, beam or not. */
public enum Axle {
  FRONT,
  REAR;

  /** As files and rules write it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
