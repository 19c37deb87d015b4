package trammel.physics;

/**
 * The largest dimensions that the tire standards allow a tire of a size, on its rim and inflated
 * (mm). All factors are those of UN R30 and UN R54, from memory; no text of them could be read. For
 * diagonal tires only the height's factor is remembered, so that their width is not worked out.
 */
public final class TireEnvelope {
  /** Greatest over calculated section width of a radial tire. */
  public static final double WIDTH_GROWTH = 1.04;

  /** Greatest over calculated section height of a radial tire for normal use. */
  public static final double HEIGHT_GROWTH = 1.04;

  /** The same of a light truck's tire for special use, as on and off the road. */
  public static final double SPECIAL_HEIGHT_GROWTH = 1.06;

  private TireEnvelope() {}

  /** Greatest section width (mm): {@link #WIDTH_GROWTH} times the one calculated for the rim. */
  public static double width(double sectionWidth) {
    Require.positive("section width", sectionWidth);
    return sectionWidth * WIDTH_GROWTH;
  }

  /**
   * Greatest overall diameter (mm): rim diameter + 2 × section height × growth. Partials: growth to
   * the overall diameter at a given rim, twice the section height to the growth.
   *
   * @param rimDiameter (mm)
   * @param sectionHeight half of what the overall diameter exceeds the rim's by (mm)
   * @param growth {@link #HEIGHT_GROWTH} or {@link #SPECIAL_HEIGHT_GROWTH}
   */
  public static double diameter(double rimDiameter, double sectionHeight, double growth) {
    Require.positive("rim diameter", rimDiameter);
    Require.positive("section height", sectionHeight);
    Require.positive("growth", growth);
    return rimDiameter + 2 * sectionHeight * growth;
  }
}
