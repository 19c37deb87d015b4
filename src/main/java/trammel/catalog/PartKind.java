package trammel.catalog;

import java.util.Locale;

/** The kinds of part a catalog may hold. */
public enum PartKind {
  TIRE(true),
  WHEEL(true),
  WHEEL_SPACER(false),
  CENTERING_RING(true),
  FASTENER(true),
  STUD(true),
  PRESSURE_SENSOR(true),
  SPRING(true),
  SPRING_SPACER(false),
  STRUT_TOP_SPACER(false),
  DAMPER(true),
  DAMPER_BRACKET(true),
  UPPER_ARM(true),
  PANHARD_BAR(true),
  PANHARD_BRACKET(true),
  SWAY_BAR_LINK(true),
  BUMP_STOP(true),
  FLEXIBLE_LINE(false),
  HEIGHT_SENSOR_LINK(true),
  BODY_LIFT_KIT(true),
  ECCENTRIC_BOLT(true),
  AXLE_LINK(false),
  DIFFERENTIAL_DROP(true),
  LEAF_BLOCK(true),
  SHACKLE(true),
  ACCESSORY(false),
  COIL_RETAINER(true),
  DROOP_STRAP(true),
  BRAKE_VALVE_BRACKET(true),
  AIR_SPRING(true);

  private final boolean takesThePlace;

  PartKind(boolean takesThePlace) {
    this.takesThePlace = takesThePlace;
  }

  /** Whether fitting one takes the place of the one that was there; otherwise it goes beside it. */
  public boolean takesThePlace() {
    return takesThePlace;
  }

  /** Whether it goes with a wheel rather than with an axle's side, so that the spare has it too. */
  public boolean ofTheWheel() {
    return this == TIRE || this == WHEEL || this == PRESSURE_SENSOR;
  }

  /** Whether it sets how high the vehicle stands, or what a height control takes for its height. */
  public boolean setsHeight() {
    return switch (this) {
      case SPRING,
          SPRING_SPACER,
          STRUT_TOP_SPACER,
          LEAF_BLOCK,
          SHACKLE,
          AIR_SPRING,
          BODY_LIFT_KIT,
          HEIGHT_SENSOR_LINK ->
          true;
      default -> false;
    };
  }

  /** Whether it holds a wheel or an axle in its place. */
  public boolean locatesWheel() {
    return this == UPPER_ARM || this == AXLE_LINK || this == PANHARD_BAR || this == PANHARD_BRACKET;
  }

  /** In a fitter's words. */
  public String words() {
    return switch (this) {
      case FASTENER -> "wheel nut or bolt";
      case DAMPER_BRACKET -> "damper-mount bracket";
      case UPPER_ARM -> "upper control arm";
      default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }

  /** As files and rules write it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
