package trammel.quantity;

/** Exact numbers with their unit, for limits in rules: {@code mm(8)}, {@code percent(1)}. */
public final class Constants {
  private Constants() {}

  public static Quantity mm(double value) {
    return Quantity.exact(Dimension.LENGTH, value);
  }

  public static Quantity degrees(double value) {
    return Quantity.exact(Dimension.ANGLE, value);
  }

  public static Quantity kg(double value) {
    return Quantity.exact(Dimension.MASS, value);
  }

  public static Quantity kPa(double value) {
    return Quantity.exact(Dimension.PRESSURE, value);
  }

  public static Quantity kmh(double value) {
    return Quantity.exact(Dimension.SPEED, value);
  }

  public static Quantity percent(double value) {
    return Quantity.exact(Dimension.RATIO, Unit.PERCENT.toKept(value));
  }

  /** A plain ratio, or a count. */
  public static Quantity number(double value) {
    return Quantity.exact(Dimension.RATIO, value);
  }

  public static Quantity years(double value) {
    return Quantity.exact(Dimension.TIME, Unit.YEAR.toKept(value));
  }

  public static Quantity days(double value) {
    return Quantity.exact(Dimension.TIME, value);
  }
}
