package trammel.subject;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A wheel of the vehicle. */
public enum Position {
  FRONT_LEFT(Axle.FRONT, Side.LEFT),
  FRONT_RIGHT(Axle.FRONT, Side.RIGHT),
  REAR_LEFT(Axle.REAR, Side.LEFT),
  REAR_RIGHT(Axle.REAR, Side.RIGHT),
  SPARE(null, null);

  private static final List<Position> FRONT = List.of(FRONT_LEFT, FRONT_RIGHT);
  private static final List<Position> REAR = List.of(REAR_LEFT, REAR_RIGHT);
  private static final List<Position> RUNNING =
      List.of(FRONT_LEFT, FRONT_RIGHT, REAR_LEFT, REAR_RIGHT);

  /** Made once: facts name their wheel in every check. */
  private final String written = name().toLowerCase(Locale.ROOT).replace('_', '-');

  private final Optional<Axle> axle;
  private final Optional<Side> side;

  Position(@Nullable Axle axle, @Nullable Side side) {
    this.axle = Optional.ofNullable(axle);
    this.side = Optional.ofNullable(side);
  }

  /** The four wheels on the ground. */
  public static List<Position> running() {
    return RUNNING;
  }

  /** The two wheels of an axle, left first. */
  public static List<Position> of(Axle axle) {
    return axle == Axle.FRONT ? FRONT : REAR;
  }

  /** The wheel on this axle and side. */
  public static Position of(Axle axle, Side side) {
    return of(axle).get(side == Side.LEFT ? 0 : 1);
  }

  /** Its axle; none for the spare. */
  public Optional<Axle> axle() {
    return axle;
  }

  /** Its side; none for the spare. */
  public Optional<Side> side() {
    return side;
  }

  /** Its like on the left, which a left one is itself; a spare is its own. */
  public Position left() {
    return switch (this) {
      case FRONT_LEFT, FRONT_RIGHT -> FRONT_LEFT;
      case REAR_LEFT, REAR_RIGHT -> REAR_LEFT;
      case SPARE -> SPARE;
    };
  }

  /** As files and rules write it: {@code front-left}. */
  @Override
  public String toString() {
    return written;
  }
}
