package trammel.quantity;

import java.util.Locale;
import java.util.Optional;

/** What a quantity measures, with the unit it is kept in and the units it is shown in. */
public enum Dimension {
  LENGTH,
  ANGLE,
  MASS,
  FORCE,
  PRESSURE,
  RATE,
  SPEED,
  TORQUE,
  RATIO,
  TIME,
  VOLUME,
  VOLTAGE,
  FREQUENCY;

  /** The unit every value of this dimension is kept in. */
  public Unit unit() {
    return switch (this) {
      case LENGTH -> Unit.MILLIMETER;
      case ANGLE -> Unit.DEGREE;
      case MASS -> Unit.KILOGRAM;
      case FORCE -> Unit.NEWTON;
      case PRESSURE -> Unit.KILOPASCAL;
      case RATE -> Unit.NEWTON_PER_MILLIMETER;
      case SPEED -> Unit.KILOMETER_PER_HOUR;
      case TORQUE -> Unit.NEWTON_METER;
      case RATIO -> Unit.ONE;
      case TIME -> Unit.DAY;
      case VOLUME -> Unit.LITER;
      case VOLTAGE -> Unit.VOLT;
      case FREQUENCY -> Unit.HERTZ;
    };
  }

  /** The other unit the trade reads this dimension in, where there is one. */
  public Optional<Unit> second() {
    return switch (this) {
      case LENGTH -> Optional.of(Unit.INCH);
      case MASS -> Optional.of(Unit.POUND);
      case FORCE -> Optional.of(Unit.POUND_FORCE);
      case PRESSURE -> Optional.of(Unit.PSI);
      case RATE -> Optional.of(Unit.POUND_FORCE_PER_INCH);
      case SPEED -> Optional.of(Unit.MILE_PER_HOUR);
      case TORQUE -> Optional.of(Unit.POUND_FORCE_FOOT);
      case ANGLE, RATIO, TIME, VOLUME, VOLTAGE, FREQUENCY -> Optional.empty();
    };
  }

  /** The dimension's name as a reader of an error message would say it. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
