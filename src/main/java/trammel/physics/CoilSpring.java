package trammel.physics;

/**
 * Rate and solid length of a coil spring of round wire, to check a stated rate by a caliper. The
 * rate is G d⁴ / (8 D³ n), as pages of the trade have it; common practice.
 */
public final class CoilSpring {
  /** Shear modulus of spring steel (N/mm²); a page of the trade. 79 300 is also common. */
  public static final double SPRING_STEEL = 78_500;

  private CoilSpring() {}

  /**
   * Rate (N/mm).
   *
   * @param shearModulus G (N/mm²)
   * @param wire diameter d of the wire (mm)
   * @param coil mean diameter D of the coil, center to center of the wire (mm)
   * @param activeCoils n, coils free to move
   */
  public static double rate(double shearModulus, double wire, double coil, double activeCoils) {
    Require.positive("shear modulus", shearModulus);
    Require.positive("wire diameter", wire);
    Require.positive("coil diameter", coil);
    Require.positive("number of active coils", activeCoils);
    return shearModulus * Math.pow(wire, 4) / (8 * Math.pow(coil, 3) * activeCoils);
  }

  /** Its change with the wire's diameter (N/mm²): 4 k / d. */
  public static double ratePerWire(double rate, double wire) {
    return 4 * rate / wire;
  }

  /** Its change with the coil's mean diameter (N/mm²): −3 k / D. */
  public static double ratePerCoil(double rate, double coil) {
    return -3 * rate / coil;
  }

  /** Its change per active coil (N/mm): −k / n. */
  public static double ratePerActiveCoil(double rate, double activeCoils) {
    return -rate / activeCoils;
  }

  /**
   * Length with all coils touching (mm), ends closed and ground: (n + 2) d; from memory. Partials:
   * n + 2 by the wire, d by the number of active coils.
   */
  public static double solidLength(double wire, double activeCoils) {
    Require.positive("wire diameter", wire);
    Require.positive("number of active coils", activeCoils);
    return (activeCoils + 2) * wire;
  }
}
