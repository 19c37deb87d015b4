package trammel.physics;

/**
 * Dimensions of a tire from its designation and its rim (mm).
 *
 * <p>They are nominal: another tread may differ by 1.5 % in diameter, and tables allow ±1 % (GOST R
 * 52899-2007, table A.1 and note 1). A measured or maker's figure outranks them.
 */
public final class TireDimensions {
  private static final double MILLIMETERS_PER_INCH = 25.4;

  /**
   * Growth of the section width with the rim width (mm per mm). UN R30, 6.1.1 from memory;
   * confirmed by a tire maker's size tables, which print 5 mm for half an inch.
   */
  public static final double WIDTH_PER_RIM_WIDTH = 0.4;

  /** Lowest static over free radius at rated load, radial tires of GOST R 52899-2007, table A.1. */
  public static final double LOWEST_RATED_RADIUS_RATIO = 0.909;

  /** Highest static over free radius at rated load, radial tires of the same table. */
  public static final double HIGHEST_RATED_RADIUS_RATIO = 0.940;

  /** Mean static over free radius at rated load of the three radial tires of the same table. */
  public static final double USUAL_RATED_RADIUS_RATIO = 0.923;

  /**
   * Rolling circumference over overall diameter of a radial tire, from memory of ETRTO; the three
   * radial tires of GOST R 52899-2007, table A.1, give 3.046 to 3.079.
   */
  public static final double CIRCUMFERENCE_PER_DIAMETER = 3.05;

  /** What a flotation tire's diameter in a metric table lies below its name (in). */
  private static final double METRIC_TABLE_REDUCTION_INCHES = 0.25;

  private TireDimensions() {}

  /** Section height (mm): width (mm) × aspect / 100. */
  public static double sectionHeight(double sectionWidth, double aspect) {
    Require.positive("section width", sectionWidth);
    Require.positive("aspect ratio", aspect);
    return sectionWidth * aspect / 100;
  }

  /**
   * Overall diameter of a metric tire (mm): rim diameter + 2 × section height, nothing rounded.
   * With the rim code × 25.4 it meets makers' inch tables within print rounding.
   *
   * @param rimDiameter (mm)
   */
  public static double overallDiameter(double sectionWidth, double aspect, double rimDiameter) {
    Require.positive("rim diameter", rimDiameter);
    return rimDiameter + 2 * sectionHeight(sectionWidth, aspect);
  }

  /**
   * Overall diameter of a metric tire as standards print it (mm): rim diameter and section height
   * each in whole millimeters, halves up. UN R30, 6.1.2 from memory.
   */
  public static double roundedOverallDiameter(
      double sectionWidth, double aspect, double rimDiameter) {
    Require.positive("rim diameter", rimDiameter);
    return Math.floor(rimDiameter + 0.5)
        + 2 * Math.floor(sectionHeight(sectionWidth, aspect) + 0.5);
  }

  /** Overall diameter of a flotation tire (mm): its name in inches × 25.4, as inch tables print. */
  public static double flotationDiameter(double nameInches) {
    Require.positive("overall diameter", nameInches);
    return nameInches * MILLIMETERS_PER_INCH;
  }

  /**
   * Overall diameter of a flotation tire as metric tables print it (mm): a quarter of an inch below
   * its name. The maker who prints 33.0 in prints 832 mm, so that the tire lies between the two.
   */
  public static double flotationDiameterInMetricTables(double nameInches) {
    return flotationDiameter(nameInches - METRIC_TABLE_REDUCTION_INCHES);
  }

  /**
   * Section width on a rim (mm): S₁ + 0.4 (A − A₁). Partials: 1 to the nominal width at given rims,
   * {@link #WIDTH_PER_RIM_WIDTH} to the rim width and its negative to the theoretical one.
   *
   * @param nominalWidth S₁, the section width on the theoretical rim (mm)
   * @param theoreticalRimWidth A₁ (mm), see {@link #theoreticalRimWidth(double, double)}
   * @param rimWidth A, between the flanges (mm)
   */
  public static double sectionWidth(
      double nominalWidth, double theoreticalRimWidth, double rimWidth) {
    Require.positive("section width", nominalWidth);
    Require.positive("theoretical rim width", theoreticalRimWidth);
    Require.positive("rim width", rimWidth);
    return nominalWidth + WIDTH_PER_RIM_WIDTH * (rimWidth - theoreticalRimWidth);
  }

  /**
   * The rim width on which a metric tire has its nominal section width (mm): 0.70 of it from aspect
   * 50 up, 0.85 below; inferred from a tire maker's size tables.
   */
  public static double theoreticalRimWidth(double nominalWidth, double aspect) {
    Require.positive("section width", nominalWidth);
    Require.positive("aspect ratio", aspect);
    return (aspect >= 50 ? 0.70 : 0.85) * nominalWidth;
  }

  /**
   * The same for a flotation tire (mm): 0.80 of its nominal width; inferred from the same tables.
   */
  public static double flotationTheoreticalRimWidth(double nominalWidth) {
    Require.positive("section width", nominalWidth);
    return 0.80 * nominalWidth;
  }

  /**
   * The rim on which makers measure a metric tire (mm), in half inches: 0.70 of the width for
   * aspect 75 and up, 0.75 for 60 to 70, 0.80 for 50 to 55, 0.85 below; inferred from a tire
   * maker's size tables, all of whose metric rows it meets.
   */
  public static double measuringRimWidth(double nominalWidth, double aspect) {
    Require.positive("section width", nominalWidth);
    double ratio = aspect >= 75 ? 0.70 : aspect >= 60 ? 0.75 : aspect >= 50 ? 0.80 : 0.85;
    double halfInches = Math.rint(ratio * nominalWidth / MILLIMETERS_PER_INCH * 2);
    return halfInches / 2 * MILLIMETERS_PER_INCH;
  }

  /**
   * Loaded radius (mm): the free radius less a deflection in proportion to the load, which reaches
   * its rated value at the rated load. That deflection is proportional to load at one pressure is
   * common practice; with a load ratio of one half it gives the 0.95 to 0.97 of the free radius
   * that vehicles at curb load show.
   *
   * @param freeRadius half of the overall diameter (mm)
   * @param ratedRadiusRatio static over free radius at rated load, 0.909 to 0.940 for radial tires
   * @param loadRatio load carried over load capacity at the actual pressure
   */
  public static double loadedRadius(double freeRadius, double ratedRadiusRatio, double loadRatio) {
    Require.positive("free radius", freeRadius);
    requireRatio(ratedRadiusRatio);
    Require.notNegative("load ratio", loadRatio);
    return freeRadius * (1 - (1 - ratedRadiusRatio) * loadRatio);
  }

  /** Change of the loaded radius (mm) per unit of load ratio; negative. */
  public static double loadedRadiusPerLoadRatio(double freeRadius, double ratedRadiusRatio) {
    Require.positive("free radius", freeRadius);
    requireRatio(ratedRadiusRatio);
    return -freeRadius * (1 - ratedRadiusRatio);
  }

  /** Change of the loaded radius (mm) per unit of the rated radius ratio. */
  public static double loadedRadiusPerRatedRadiusRatio(double freeRadius, double loadRatio) {
    Require.positive("free radius", freeRadius);
    Require.notNegative("load ratio", loadRatio);
    return freeRadius * loadRatio;
  }

  /** Change of the loaded radius per mm of free radius. */
  public static double loadedRadiusPerFreeRadius(double ratedRadiusRatio, double loadRatio) {
    requireRatio(ratedRadiusRatio);
    Require.notNegative("load ratio", loadRatio);
    return 1 - (1 - ratedRadiusRatio) * loadRatio;
  }

  private static void requireRatio(double ratedRadiusRatio) {
    if (!(ratedRadiusRatio > 0.5 && ratedRadiusRatio < 1)) {
      throw Require.refused("static over free radius", ratedRadiusRatio, "0.5 to 1");
    }
  }

  /**
   * Effective rolling radius (mm): (2 × free radius + static radius) / 3, the fallback of a general
   * tire model; common practice. Partials: 2/3 and 1/3.
   */
  public static double rollingRadius(double freeRadius, double staticRadius) {
    Require.positive("free radius", freeRadius);
    Require.positive("static radius", staticRadius);
    return (2 * freeRadius + staticRadius) / 3;
  }

  /** Rolling circumference from overall diameter and static radius (mm): 2π × rolling radius. */
  public static double rollingCircumference(double overallDiameter, double staticRadius) {
    return 2 * Math.PI * rollingRadius(overallDiameter / 2, staticRadius);
  }

  /**
   * Rolling circumference of a radial tire from its overall diameter alone (mm): {@link
   * #CIRCUMFERENCE_PER_DIAMETER} times it.
   */
  public static double rollingCircumference(double overallDiameter) {
    Require.positive("overall diameter", overallDiameter);
    return CIRCUMFERENCE_PER_DIAMETER * overallDiameter;
  }

  /** Turns on one kilometer, from the rolling circumference (mm). */
  public static double turnsPerKilometer(double rollingCircumference) {
    Require.positive("rolling circumference", rollingCircumference);
    return 1e6 / rollingCircumference;
  }

  /** Turns on one mile of 1609.344 m, from the rolling circumference (mm). */
  public static double turnsPerMile(double rollingCircumference) {
    return 1.609344 * turnsPerKilometer(rollingCircumference);
  }
}
