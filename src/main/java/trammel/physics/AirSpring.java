package trammel.physics;

/**
 * An air spring between body and axle. Lengths in mm, pressures in kPa above the air's, volumes in
 * liters, forces in N, rates in N/mm. Its effective area is that of a circle of the effective
 * diameter, which changes evenly with the spring's length.
 *
 * <p>F = p · A, and with the valve shut p V^n is constant (absolute): textbook mechanics, k = n p
 * A² / V − p dA/dl with l the length, own derivation.
 *
 * @param diameter effective, as mounted at book height
 * @param diameterPerLength its change for each millimeter that the spring is longer; below 0 where
 *     it necks as it is drawn out
 * @param volume of the air, as mounted at book height
 */
public record AirSpring(double diameter, double diameterPerLength, double volume) {
  private static final double MM3_PER_LITER = 1e6;

  /**
   * @throws IllegalArgumentException unless diameter and volume are above 0
   */
  public AirSpring {
    Require.positive("effective diameter", diameter);
    Require.positive("volume of an air spring", volume);
  }

  /** Effective area (mm²), drawn out by so much from as it is mounted at book height. */
  public double area(double drawnOut) {
    double d = Math.max(0, diameter + diameterPerLength * drawnOut);
    return Math.PI / 4 * d * d;
  }

  /** Force at a pressure. */
  public double force(double pressure, double drawnOut) {
    return pressure / FluidSpring.MEGAPASCAL * area(drawnOut);
  }

  /**
   * Volume (l): what the area sweeps is added to that at book height. Pressed flat it keeps a
   * hundredth of it.
   */
  public double volume(double drawnOut) {
    double c = diameterPerLength;
    double s = drawnOut;
    double swept =
        Math.PI / 4 * (diameter * diameter * s + diameter * c * s * s + c * c * s * s * s / 3);
    return Math.max(volume / 100, volume + swept / MM3_PER_LITER);
  }

  /**
   * Pressure after the spring was drawn out or pressed together with its valve shut, as it settles:
   * at the temperature it had.
   */
  public double settled(double pressure, double before, double after) {
    return (pressure + GasSpring.ATMOSPHERE) * volume(before) / volume(after)
        - GasSpring.ATMOSPHERE;
  }

  /**
   * Change of the force as the spring is pressed together: n p A² / V − p dA/dl, the first pressure
   * absolute. An index of 0 is a spring whose pressure is kept.
   *
   * @param index polytropic: 1 as it settles, about 1.3 in quick movement
   */
  public double rate(double index, double pressure, double drawnOut) {
    double area = area(drawnOut);
    double d = Math.sqrt(4 * area / Math.PI);
    double perLength = Math.PI / 2 * d * diameterPerLength;
    double absolute = (pressure + GasSpring.ATMOSPHERE) / FluidSpring.MEGAPASCAL;
    return index * absolute * area * area / (volume(drawnOut) * MM3_PER_LITER)
        - pressure / FluidSpring.MEGAPASCAL * perLength;
  }
}
