package trammel.physics;

/**
 * A wheel whose height a sensor holds: at a given travel the spring gives what its length gives,
 * and the ram carries the rest, W = F · MR + p · A · MRc. Exact for any path of the spring. Own
 * derivation from the balance of forces.
 *
 * @param coil how the coil stands; where {@code BOUND} the force is the least it gives, so that the
 *     pressure is the most there can be
 * @param springForce along the spring (N)
 * @param springRatio MR, there
 * @param pressure in the ram (kPa, gauge), below 0 where the spring alone lifts the wheel's load
 * @param perSpacer change of the pressure with the spacer's thickness, the same as with the free
 *     length (kPa/mm)
 * @param perTravel its change with the travel, the ram's ratio held (kPa/mm)
 * @param perRelativeRate its change per relative error of the spring's rate (kPa)
 */
public record HeldHeight(
    FittedSpring.Coil coil,
    double springForce,
    double springRatio,
    FluidSpring.Pressure pressure,
    double perSpacer,
    double perTravel,
    double perRelativeRate) {

  /** What a wanted pressure asks of a spacer. */
  public enum Outcome {
    /** A spacer of that thickness brings it. */
    FOUND,
    /** The ram alone then carries more than the load: no spacer helps; the coil is just loose. */
    NO_SPRING_NEEDED,
    /** The coil is solid before it takes enough; the thickest spacer that leaves it free. */
    COIL_BOUND
  }

  /**
   * Thickness of a spacer on the seat that brings a wanted pressure at a travel.
   *
   * @param outcome whether it does; otherwise the thickness is that of the limit
   * @param thickness the whole of it, what is fitted now included (mm); below 0 for a seat to be
   *     lowered
   * @param springForce with it (N)
   * @param perLoad change of the thickness with the load (mm/N); this and the next are 0 where the
   *     outcome is not {@code FOUND}
   * @param perPressure with the wanted pressure (mm/kPa)
   * @param perTravel with the travel, the ram's ratio held
   * @param perFreeLength with the spring's free length
   * @param perRelativeRate per relative error of the spring's rate (mm)
   */
  public record SpacerThickness(
      Outcome outcome,
      double thickness,
      double springForce,
      double perLoad,
      double perPressure,
      double perTravel,
      double perFreeLength,
      double perRelativeRate) {}

  /**
   * What spring and ram carry at a travel.
   *
   * @param travel at which the height is held (mm)
   * @param load W, of the body on the wheel (N)
   * @param area A, of the ram (mm²)
   * @param ramRatio MRc, at that travel
   */
  public static HeldHeight of(
      FittedSpring spring,
      SpringPath path,
      double travel,
      double load,
      double area,
      double ramRatio) {
    double seats = path.seatDistance(travel);
    double ratio = path.ratio(travel);
    double force = spring.force(seats);
    FluidSpring.Pressure pressure = FluidSpring.pressure(load, force, ratio, area, ramRatio);
    FittedSpring.Coil coil = spring.coil(seats);
    double slope =
        coil == FittedSpring.Coil.WORKING ? spring.curve().slope(spring.deflection(seats)) : 0;
    return new HeldHeight(
        coil,
        force,
        ratio,
        pressure,
        pressure.perSpringForce() * slope,
        pressure.perSpringForce() * slope * ratio
            + pressure.perSpringRatio() * path.ratioPerTravel(travel),
        pressure.perSpringForce() * force);
  }

  /**
   * The spacer that brings a pressure at a travel, for any path: the spring must give F = (W − p ·
   * A · MRc) / MR, and its curve says how far it must be pressed for that.
   *
   * @param spring whatever spacer it stands on is not counted
   * @param pressure wanted (kPa, gauge)
   */
  public static SpacerThickness spacerFor(
      FittedSpring spring,
      SpringPath path,
      double travel,
      double load,
      double area,
      double ramRatio,
      double pressure) {
    Require.notNegative("wheel load", load);
    Require.notNegative("pressure", pressure);
    Require.positive("ram area", area);
    Require.positive("motion ratio of the ram", ramRatio);
    double ratio = path.ratio(travel);
    Require.positive("motion ratio of the spring", ratio);
    double seats = path.seatDistance(travel);
    double ramPerPressure = area * ramRatio / FluidSpring.MEGAPASCAL;
    double force = (load - pressure * ramPerPressure) / ratio;
    double loose = seats - spring.freeLength();
    if (force < 0) {
      return limit(Outcome.NO_SPRING_NEEDED, loose, 0);
    }
    SpringCurve curve = spring.curve();
    double deflection = curve.deflection(force);
    double solid = spring.solidDeflection();
    if (deflection >= solid) {
      return limit(Outcome.COIL_BOUND, loose + solid, curve.force(solid));
    }
    double perForce = curve.deflectionPerForce(force);
    return new SpacerThickness(
        Outcome.FOUND,
        loose + deflection,
        force,
        perForce / ratio,
        -perForce * ramPerPressure / ratio,
        -ratio - perForce * force * path.ratioPerTravel(travel) / ratio,
        -1,
        curve.deflectionPerRelativeRate(force));
  }

  private static SpacerThickness limit(Outcome outcome, double thickness, double force) {
    return new SpacerThickness(outcome, thickness, force, 0, 0, 0, 0, 0);
  }
}
