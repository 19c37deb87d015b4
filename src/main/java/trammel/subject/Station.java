package trammel.subject;

import java.util.Locale;

/**
 * The closed list of places where a tire or wheel may meet the vehicle. A profile says of each what
 * was measured, or that there is none and why, or nothing; the last is an absent value.
 */
public enum Station {
  /** Body mount, sill or pinch seam behind a front wheel. */
  REAR_MOUNT(Surface.OUTER_SHOULDER, Lock.OWN, "body mount behind the wheel"),
  /** Fender lip or flare over the wheel. */
  ARCH(Surface.OUTER_SHOULDER, Lock.STRAIGHT, "fender lip"),
  /** Inner liner ahead of a front wheel. */
  LINER(Surface.CROWN, Lock.OPPOSITE, "inner liner ahead of the wheel"),
  /** Bumper end or valance ahead of a front wheel. */
  BUMPER_END(Surface.OUTER_SHOULDER, Lock.OPPOSITE, "bumper end"),
  /** Frame rail or sway bar inboard of a front wheel. */
  FRAME_RAIL(Surface.INNER_SHOULDER, Lock.OWN, "frame rail"),
  /** Upper ball joint, tie-rod end or strut beside the tire. */
  INNER_SIDE(Surface.INNER_SIDEWALL, Lock.ANY, "ball joint, tie rod or strut"),
  /** Spring, damper or rail inboard of a rear wheel. */
  SPRING_SIDE(Surface.INNER_SIDEWALL, Lock.STRAIGHT, "spring or damper inboard of the tire");

  /** Made once: facts name their station in every check. */
  private final String written = name().toLowerCase(Locale.ROOT).replace('_', '-');

  private final Surface surface;
  private final Lock lock;
  private final String obstacle;

  Station(Surface surface, Lock lock, String obstacle) {
    this.surface = surface;
    this.lock = lock;
    this.obstacle = obstacle;
  }

  /** The part of the tire that comes closest there. */
  public Surface surface() {
    return surface;
  }

  /** The lock at which it is closest. */
  public Lock lock() {
    return lock;
  }

  /** Whether a wheel of the axle has it at all. */
  public boolean belongsTo(Axle axle) {
    return axle == Axle.FRONT ? this != SPRING_SIDE : this == ARCH || this == SPRING_SIDE;
  }

  /** What the tire may meet there, in a fitter's words. */
  public String obstacle() {
    return obstacle;
  }

  /** As files and rules write it: {@code rear-mount}. */
  @Override
  public String toString() {
    return written;
  }

  /** A lock, told from the wheel's own side. */
  public enum Lock {
    /** Left lock for a left wheel. */
    OWN,
    /** Right lock for a left wheel. */
    OPPOSITE,
    STRAIGHT,
    /** Whichever is worst. */
    ANY;

    /** Whether a gap taken at this steer tells of this lock, for a wheel of the side. */
    public boolean shownBy(Steer steer, Side side) {
      return switch (this) {
        case STRAIGHT -> steer == Steer.STRAIGHT;
        case ANY -> true;
        case OWN -> steer == (side == Side.LEFT ? Steer.FULL_LEFT : Steer.FULL_RIGHT);
        case OPPOSITE -> steer == (side == Side.LEFT ? Steer.FULL_RIGHT : Steer.FULL_LEFT);
      };
    }
  }

  /** A surface of a tire. */
  public enum Surface {
    CROWN,
    OUTER_SHOULDER,
    INNER_SHOULDER,
    OUTER_SIDEWALL,
    INNER_SIDEWALL;

    /** Whether it moves outboard with a wheel that moves outboard. */
    public boolean outer() {
      return this == OUTER_SHOULDER || this == OUTER_SIDEWALL;
    }

    /** Whether it moves inboard with a wheel that moves inboard. */
    public boolean inner() {
      return this == INNER_SHOULDER || this == INNER_SIDEWALL;
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** What an obstacle is fixed to, which decides what moves it. */
  public enum FixedTo {
    BODY,
    FRAME,
    KNUCKLE,
    ARM
  }

  /** Where the steering stood. */
  public enum Steer {
    STRAIGHT,
    FULL_LEFT,
    FULL_RIGHT;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The same lock for the other side of the vehicle. */
    public Steer mirrored() {
      return switch (this) {
        case STRAIGHT -> STRAIGHT;
        case FULL_LEFT -> FULL_RIGHT;
        case FULL_RIGHT -> FULL_LEFT;
      };
    }
  }

  /** Where the wheel stood in its travel. */
  public enum Height {
    REST,
    BUMP_STOP,
    DROOP;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
