package trammel.physics;

import java.util.Optional;

/**
 * The gas behind a fluid ram: charged slowly, so that p · V stays what it was when charged, and
 * sprung quickly, by p · Vⁿ. Own derivation from the two gas laws. Pressures are read by gauge
 * (kPa) and used in absolute; volumes in liters.
 *
 * <p>At or below the charge pressure the separator lies on its seat and no gas moves: such a sphere
 * has no rate, and the results are empty.
 */
public final class GasSpring {
  /** Standard atmosphere (kPa), by definition. */
  public static final double ATMOSPHERE = 101.325;

  /** Polytropic index of nitrogen that neither gains nor loses heat; a quick bump. */
  public static final double ADIABATIC = 1.4;

  private static final double MM3_PER_LITER = 1e6;

  private GasSpring() {}

  /**
   * Gas volume (l), with its change by each input.
   *
   * @param value (l)
   * @param perPressure (l/kPa)
   * @param perChargePressure (l/kPa)
   * @param perChargeVolume (l/l)
   */
  public record Volume(
      double value, double perPressure, double perChargePressure, double perChargeVolume) {}

  /**
   * Rate of the gas at the wheel (N/mm), with its change by each input.
   *
   * @param value (N/mm)
   * @param perIndex (N/mm)
   * @param perPressure (N/mm/kPa)
   * @param perChargePressure (N/mm/kPa)
   * @param perChargeVolume (N/mm/l)
   * @param perArea (N/mm³)
   * @param perRamRatio (N/mm)
   */
  public record Rate(
      double value,
      double perIndex,
      double perPressure,
      double perChargePressure,
      double perChargeVolume,
      double perArea,
      double perRamRatio) {}

  /**
   * Gas volume at a static pressure: p₀ V₀ / p, absolute.
   *
   * @param pressure p, static (kPa, gauge)
   * @param chargePressure p₀, of the gas with no fluid in (kPa, gauge)
   * @param chargeVolume V₀ (l)
   */
  public static Optional<Volume> volume(
      double pressure, double chargePressure, double chargeVolume) {
    requireCharge(chargePressure, chargeVolume);
    if (!moves(pressure, chargePressure)) {
      return Optional.empty();
    }
    double absolute = pressure + ATMOSPHERE;
    double charge = chargePressure + ATMOSPHERE;
    double value = charge * chargeVolume / absolute;
    return Optional.of(
        new Volume(value, -value / absolute, chargeVolume / absolute, charge / absolute));
  }

  /**
   * Rate at the wheel: n · p² · A² · MRc² / (p₀ · V₀), absolute. It grows with the square of the
   * pressure. The part that a changing ratio of the ram adds is not in it.
   *
   * @param index n, polytropic, 1 (slow) to about 1.4 (quick)
   * @param area A, of the ram (mm²)
   * @param ramRatio MRc, ram travel over wheel travel
   */
  public static Optional<Rate> rate(
      double index,
      double pressure,
      double chargePressure,
      double chargeVolume,
      double area,
      double ramRatio) {
    Require.positive("polytropic index", index);
    Require.positive("ram area", area);
    Require.positive("motion ratio of the ram", ramRatio);
    requireCharge(chargePressure, chargeVolume);
    if (!moves(pressure, chargePressure)) {
      return Optional.empty();
    }
    double absolute = pressure + ATMOSPHERE;
    double charge = chargePressure + ATMOSPHERE;
    double force = absolute / FluidSpring.MEGAPASCAL * area * ramRatio;
    double work = charge / FluidSpring.MEGAPASCAL * chargeVolume * MM3_PER_LITER;
    double value = index * force * force / work;
    return Optional.of(
        new Rate(
            value,
            value / index,
            2 * value / absolute,
            -value / charge,
            -value / chargeVolume,
            2 * value / area,
            2 * value / ramRatio));
  }

  private static boolean moves(double pressure, double chargePressure) {
    return pressure > chargePressure;
  }

  private static void requireCharge(double chargePressure, double chargeVolume) {
    Require.positive("charge pressure", chargePressure);
    Require.positive("charge volume", chargeVolume);
  }
}
