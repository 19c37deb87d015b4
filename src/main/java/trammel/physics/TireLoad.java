package trammel.physics;

import java.util.OptionalDouble;

/**
 * Load capacity of a tire against its cold pressure: L = L_rated · (P / P_reference)ⁿ up to the
 * rated load, which no pressure exceeds.
 */
public final class TireLoad {
  /** Reference pressure of P-metric light and standard load tires (kPa): 35 psi. */
  public static final double P_METRIC_STANDARD_PRESSURE = 240;

  /** Reference pressure of P-metric extra load tires (kPa): 41 psi. */
  public static final double P_METRIC_EXTRA_PRESSURE = 280;

  /** Reference pressure of Euro-metric standard load passenger tires (kPa): 36 psi. */
  public static final double EURO_METRIC_STANDARD_PRESSURE = 250;

  /** Reference pressure of Euro-metric extra load and high load passenger tires (kPa): 42 psi. */
  public static final double EURO_METRIC_EXTRA_PRESSURE = 290;

  /**
   * What a passenger tire's load is divided by on a light truck: 49 CFR 571.120, S5.1.2, with the
   * NHTSA interpretation of 17 November 1976.
   */
  public static final double PASSENGER_ON_TRUCK_DIVISOR = 1.10;

  /** The rules by which standards let the load fall with the pressure. */
  public enum Standard {
    /** TRA P-metric: the exponent of its design load formula. */
    P_METRIC(0.50),
    /** TRA LT-metric and flotation: least-squares fit of a published load and inflation table. */
    LT_METRIC(0.70),
    /** ETRTO passenger tires. */
    ETRTO_PASSENGER(0.80),
    /** ETRTO passenger tires whose index the tables mark with a star. */
    ETRTO_PASSENGER_STARRED(0.65);

    private final double exponent;

    Standard(double exponent) {
      this.exponent = exponent;
    }

    public double exponent() {
      return exponent;
    }
  }

  private TireLoad() {}

  /**
   * Load capacity at a cold pressure (kg). The law is checked from 44 % of the reference pressure
   * up; below, no published table says what a tire carries.
   *
   * @param ratedLoad load of the load index (kg)
   * @param referencePressure pressure at which it carries that (kPa)
   * @param pressure actual cold pressure (kPa)
   */
  public static double capacity(
      Standard standard, double ratedLoad, double referencePressure, double pressure) {
    requireRating(ratedLoad, referencePressure);
    Require.notNegative("pressure", pressure);
    double ratio = Math.min(1, pressure / referencePressure);
    return ratedLoad * Math.pow(ratio, standard.exponent());
  }

  /** Change of the capacity with the pressure (kg/kPa); 0 above the reference pressure. */
  public static double capacityPerPressure(
      Standard standard, double ratedLoad, double referencePressure, double pressure) {
    Require.positive("pressure", pressure);
    double capacity = capacity(standard, ratedLoad, referencePressure, pressure);
    return pressure > referencePressure ? 0 : standard.exponent() * capacity / pressure;
  }

  /**
   * The cold pressure a load needs (kPa); empty where the load exceeds the rated load, because then
   * no pressure is enough.
   *
   * @param load what the tire carries (kg)
   */
  public static OptionalDouble pressureFor(
      Standard standard, double ratedLoad, double referencePressure, double load) {
    requireRating(ratedLoad, referencePressure);
    Require.notNegative("load", load);
    return load > ratedLoad
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            referencePressure * Math.pow(load / ratedLoad, 1 / standard.exponent()));
  }

  /** Change of the needed pressure with the load (kPa/kg); empty where the pressure is. */
  public static OptionalDouble pressurePerLoad(
      Standard standard, double ratedLoad, double referencePressure, double load) {
    Require.positive("load", load);
    OptionalDouble pressure = pressureFor(standard, ratedLoad, referencePressure, load);
    return pressure.isEmpty()
        ? pressure
        : OptionalDouble.of(pressure.getAsDouble() / (standard.exponent() * load));
  }

  private static void requireRating(double ratedLoad, double referencePressure) {
    Require.positive("rated load", ratedLoad);
    Require.positive("reference pressure", referencePressure);
  }

  /**
   * Design load of a P-metric tire of aspect 50 and up (kg), before it is set to the nearest load
   * index: TRA's formula as a tire engineer states it.
   *
   * @param nominalWidth section width (mm)
   * @param aspect section height in percent of width
   * @param rimDiameter in whole millimeters
   * @param pressure cold pressure (kPa)
   */
  public static double pMetricDesignLoad(
      double nominalWidth, double aspect, double rimDiameter, double pressure) {
    Require.positive("section width", nominalWidth);
    Require.positive("rim diameter", rimDiameter);
    Require.positive("pressure", pressure);
    if (!(aspect >= 50 && aspect <= 100)) {
      throw Require.refused("aspect ratio", aspect, "50 to 100");
    }
    double designWidth = (0.34848 + 0.6497 * aspect / 100) * nominalWidth;
    return 6.67e-5
        * Math.sqrt(pressure)
        * Math.pow(designWidth, 1.39)
        * (rimDiameter + designWidth);
  }

  /** Load of a passenger tire on a light truck (kg): its rated load ÷ 1.10. */
  public static double passengerOnLightTruck(double ratedLoad) {
    Require.positive("rated load", ratedLoad);
    return ratedLoad / PASSENGER_ON_TRUCK_DIVISOR;
  }
}
