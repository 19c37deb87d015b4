package trammel.subject;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A wheel of the vehicle. */
public enum Position {
  FRONT_LEFT,
  FRONT_RIGHT,
  REAR_LEFT,
  REAR_RIGHT,
  SPARE;

  /** Made once: facts name their wheel in every check. */
  private final String written = name().toLowerCase(Locale.ROOT).replace('_', '-');

  private static final List<Position> RUNNING =
      List.of(FRONT_LEFT, FRONT_RIGHT, REAR_LEFT, REAR_RIGHT);

  /** The four wheels on the ground. */
  public static List<Position> running() {
    return RUNNING;
  }

  /** The two wheels of an axle, left first. */
  public static List<Position> of(Axle axle) {
    return axle == Axle.FRONT ? List.of(FRONT_LEFT, FRONT_RIGHT) : List.of(REAR_LEFT, REAR_RIGHT);
  }

  /** The wheel on this axle and side. */
  public static Position of(Axle axle, Side side) {
    return of(axle).get(side == Side.LEFT ? 0 : 1);
  }

  /** Its axle; none for the spare. */
  public Optional<Axle> axle() {
    return switch (this) {
      case FRONT_LEFT, FRONT_RIGHT -> Optional.of(Axle.FRONT);
      case REAR_LEFT, REAR_RIGHT -> Optional.of(Axle.REAR);
      case SPARE -> Optional.empty();
    };
  }

  /** Its side; none for the spare. */
  public Optional<Side> side() {
    return switch (this) {
      case FRONT_LEFT, REAR_LEFT -> Optional.of(Side.LEFT);
      case FRONT_RIGHT, REAR_RIGHT -> Optional.of(Side.RIGHT);
      case SPARE -> Optional.empty();
    };
  }

  /** As files and rules write it: {@code front-left}. */
  @Override
  public String toString() {
    return written;
  }
}
