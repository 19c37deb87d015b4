package trammel.designation;

/** The inch, of which tokens are made: 25.4 mm exactly. */
final class Inch {
  private static final double TENTHS_OF_MILLIMETERS = 254;

  private Inch() {}

  /** Tenths first, so that 8.25 in is 209.55 mm and not a hair less. */
  static double toMillimeters(double inches) {
    return inches * TENTHS_OF_MILLIMETERS / 10;
  }

  static double fromMillimeters(double millimeters) {
    return millimeters * 10 / TENTHS_OF_MILLIMETERS;
  }
}
