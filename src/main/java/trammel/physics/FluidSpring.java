package trammel.physics;

/**
 * A ram under pressure that shares a wheel's load with a spring: W = F · MR + p · A · MRc. Own
 * derivation from the balance of forces. Loads and forces in N, pressures in kPa (gauge), ram area
 * A in mm²; MR is spring travel, MRc ram travel over wheel travel. For the gas behind the fluid see
 * {@link GasSpring}.
 */
public final class FluidSpring {
  /** 1 N/mm² (kPa). */
  static final double MEGAPASCAL = 1000;

  private FluidSpring() {}

  /**
   * Pressure in a ram (kPa, gauge), with its change by each input.
   *
   * @param value below 0 where the spring alone carries more than the wheel's load
   * @param perLoad (kPa/N)
   * @param perSpringForce (kPa/N)
   * @param perSpringRatio (kPa)
   * @param perArea (kPa/mm²)
   * @param perRamRatio (kPa)
   */
  public record Pressure(
      double value,
      double perLoad,
      double perSpringForce,
      double perSpringRatio,
      double perArea,
      double perRamRatio) {}

  /**
   * Change of the pressure (kPa), with its change by each input.
   *
   * @param value (kPa)
   * @param perRate (kPa·mm/N)
   * @param perSpringRatio (kPa)
   * @param perMove by the lift or the spacer thickness (kPa/mm)
   * @param perArea (kPa/mm²)
   * @param perRamRatio (kPa)
   */
  public record Change(
      double value,
      double perRate,
      double perSpringRatio,
      double perMove,
      double perArea,
      double perRamRatio) {}

  /**
   * A spacer thickness (mm), with its change by each input.
   *
   * @param value below 0 where the spring would have to sit lower
   * @param perFall by the wanted fall of the pressure (mm/kPa)
   * @param perRate (mm²/N)
   * @param perSpringRatio (mm)
   * @param perArea (1/mm)
   * @param perRamRatio (mm)
   */
  public record Spacer(
      double value,
      double perFall,
      double perRate,
      double perSpringRatio,
      double perArea,
      double perRamRatio) {}

  /** Area of a ram (mm²): π d² / 4, of the rod where both sides of the piston are connected. */
  public static double ramArea(double diameter) {
    Require.positive("ram diameter", diameter);
    return Math.PI * diameter * diameter / 4;
  }

  /** Its change with the diameter (mm): π d / 2. */
  public static double ramAreaPerDiameter(double diameter) {
    Require.positive("ram diameter", diameter);
    return Math.PI * diameter / 2;
  }

  /**
   * Pressure that carries what the spring leaves of a wheel's load: (W − F · MR) / (A · MRc).
   *
   * @param load W, of the body on the wheel, the unsprung weight taken off (N)
   * @param springForce F, along the spring (N); 0 for a loose or missing spring
   * @param springRatio MR
   * @param area A (mm²)
   * @param ramRatio MRc
   */
  public static Pressure pressure(
      double load, double springForce, double springRatio, double area, double ramRatio) {
    Require.notNegative("wheel load", load);
    Require.notNegative("spring force", springForce);
    Require.positive("motion ratio of the spring", springRatio);
    double perLoad = MEGAPASCAL / forcePerMegapascal(area, ramRatio);
    double value = (load - springForce * springRatio) * perLoad;
    return new Pressure(
        value,
        perLoad,
        -springRatio * perLoad,
        -springForce * perLoad,
        -value / area,
        -value / ramRatio);
  }

  /** Part of a wheel's load on the spring, F · MR / W; 1 where the ram carries nothing. */
  public static double springShare(double load, double springForce, double springRatio) {
    Require.positive("wheel load", load);
    Require.notNegative("spring force", springForce);
    Require.positive("motion ratio of the spring", springRatio);
    return springForce * springRatio / load;
  }

  /**
   * What a higher set height adds to the pressure, the spring untouched: k · MR² · Δx / (A · MRc).
   * For one rate and ratios that do not change over the lift; {@link HeldHeight} needs neither.
   *
   * @param rate k, of the spring (N/mm)
   * @param lift Δx, at the wheel, positive up (mm)
   */
  public static Change lift(
      double rate, double springRatio, double lift, double area, double ramRatio) {
    Require.positive("motion ratio of the spring", springRatio);
    double perMove = perWheelTravel(rate, springRatio, area, ramRatio);
    double value = perMove * lift;
    return new Change(
        value, value / rate, 2 * value / springRatio, perMove, -value / area, -value / ramRatio);
  }

  /**
   * What a spacer on the spring's seat does to the pressure at the same height: −k · MR · t / (A ·
   * MRc).
   *
   * @param thickness t, along the spring (mm); below 0 for one taken out
   */
  public static Change spacer(
      double rate, double springRatio, double thickness, double area, double ramRatio) {
    Require.positive("motion ratio of the spring", springRatio);
    double perMove = -perWheelTravel(rate, springRatio, area, ramRatio) / springRatio;
    double value = perMove * thickness;
    return new Change(
        value, value / rate, value / springRatio, perMove, -value / area, -value / ramRatio);
  }

  /**
   * Spacer that lowers the pressure by a wanted amount: Δp · A · MRc / (k · MR).
   *
   * @param fall wanted fall of the pressure (kPa)
   */
  public static Spacer spacerFor(
      double fall, double rate, double springRatio, double area, double ramRatio) {
    Require.positive("motion ratio of the spring", springRatio);
    double perFall = springRatio / perWheelTravel(rate, springRatio, area, ramRatio);
    double value = fall * perFall;
    return new Spacer(
        value, perFall, -value / rate, -value / springRatio, value / area, value / ramRatio);
  }

  private static double perWheelTravel(
      double rate, double springRatio, double area, double ramRatio) {
    Require.positive("spring rate", rate);
    return MEGAPASCAL * rate * springRatio * springRatio / forcePerMegapascal(area, ramRatio);
  }

  private static double forcePerMegapascal(double area, double ramRatio) {
    Require.positive("ram area", area);
    Require.positive("motion ratio of the ram", ramRatio);
    return area * ramRatio;
  }
}
