package trammel.quantity;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A unit a user may write, with its factor to the unit the program keeps.
 *
 * <p>Factors are those of NIST SP 811 (2008), appendix B, except that a year is the Julian year of
 * 365.25 days, which leap years do not move; the tests hold them against a general units library.
 */
public enum Unit {
  MILLIMETER(Dimension.LENGTH, 1, "mm"),
  CENTIMETER(Dimension.LENGTH, 10, "cm"),
  METER(Dimension.LENGTH, 1000, "m"),
  INCH(Dimension.LENGTH, 25.4, "in", "inch", "inches", "\"", "″"),
  FOOT(Dimension.LENGTH, 304.8, "ft", "feet"),
  DEGREE(Dimension.ANGLE, 1, "°", "deg", "degrees"),
  MINUTE(Dimension.ANGLE, 1 / 60.0, "'", "′", "arcmin"),
  KILOGRAM(Dimension.MASS, 1, "kg"),
  POUND(Dimension.MASS, 0.45359237, "lb", "lbs"),
  TONNE(Dimension.MASS, 1000, "t"),
  NEWTON(Dimension.FORCE, 1, "N"),
  KILONEWTON(Dimension.FORCE, 1000, "kN"),
  POUND_FORCE(Dimension.FORCE, 4.4482216152605, "lbf"),
  KILOPASCAL(Dimension.PRESSURE, 1, "kPa"),
  MEGAPASCAL(Dimension.PRESSURE, 1000, "MPa"),
  BAR(Dimension.PRESSURE, 100, "bar"),
  PSI(Dimension.PRESSURE, 4.4482216152605 / (25.4 * 25.4) * 1000, "psi"),
  NEWTON_PER_MILLIMETER(Dimension.RATE, 1, "N/mm"),
  KILONEWTON_PER_METER(Dimension.RATE, 1, "kN/m"),
  POUND_FORCE_PER_INCH(Dimension.RATE, 4.4482216152605 / 25.4, "lbf/in", "lb/in"),
  KILOMETER_PER_HOUR(Dimension.SPEED, 1, "km/h"),
  MILE_PER_HOUR(Dimension.SPEED, 1.609344, "mph"),
  NEWTON_METER(Dimension.TORQUE, 1, "N m", "Nm", "N·m"),
  POUND_FORCE_FOOT(Dimension.TORQUE, 4.4482216152605 * 0.3048, "lbf ft", "lb ft", "ft lb"),
  ONE(Dimension.RATIO, 1, ""),
  PERCENT(Dimension.RATIO, 0.01, "%"),
  DAY(Dimension.TIME, 1, "d", "day", "days"),
  WEEK(Dimension.TIME, 7, "week", "weeks"),
  YEAR(Dimension.TIME, 365.25, "year", "years"),
  LITER(Dimension.VOLUME, 1, "l", "L", "liter", "liters"),
  VOLT(Dimension.VOLTAGE, 1, "V"),
  MILLIVOLT(Dimension.VOLTAGE, 0.001, "mV"),
  HERTZ(Dimension.FREQUENCY, 1, "Hz");

  private static final Map<String, Unit> BY_NAME = new HashMap<>();

  static {
    for (Unit unit : values()) {
      for (String name : unit.names) {
        if (BY_NAME.put(name, unit) != null) {
          throw new IllegalStateException("two units are called " + name);
        }
      }
    }
  }

  private final Dimension dimension;
  private final double factor;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<String> names;

  Unit(Dimension dimension, double factor, String... names) {
    this.dimension = dimension;
    this.factor = factor;
    this.names = List.of(names);
  }

  /** The unit that a user wrote, if there is one of that name. */
  public static Optional<Unit> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /** Every name a user may write for a unit of the dimension, in order. */
  public static List<String> namesOf(Dimension dimension) {
    TreeSet<String> all = new TreeSet<>();
    for (Unit unit : values()) {
      if (unit.dimension() == dimension) {
        all.addAll(unit.names);
      }
    }
    all.remove("");
    return List.copyOf(all);
  }

  /** Every name of every unit. */
  public static List<String> allNames() {
    return BY_NAME.keySet().stream().filter(name -> !name.isEmpty()).sorted().toList();
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The name the program prints. */
  public String symbol() {
    return names.get(0);
  }

  /** Every name this unit is read by. */
  public List<String> names() {
    return names;
  }

  /** A value of this unit in the unit the program keeps. */
  public double toKept(double value) {
    // In decimals, so that 7 in is 177.8 mm to the last digit and equal to what 177.8 mm reads as.
    return BigDecimal.valueOf(value).multiply(BigDecimal.valueOf(factor)).doubleValue();
  }

  /** A kept value in this unit. */
  public double fromKept(double kept) {
    return kept / factor;
  }
}
