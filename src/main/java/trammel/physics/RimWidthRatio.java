package trammel.physics;

/**
 * Rim width over nominal section width, for tires whose maker's list of rims is not at hand. A
 * listed range always decides; these bands only say what lists usually hold.
 *
 * @param lowest lower end of the band
 * @param highest upper end of the band
 */
public record RimWidthRatio(double lowest, double highest) {
  /** Beyond this a rim is unusual: most published rows lie within. A band to warn by. */
  public static final RimWidthRatio USUAL = new RimWidthRatio(0.65, 0.90);

  /**
   * Beyond this a rim is refused where no list allows it: an engineering choice of this program.
   */
  public static final RimWidthRatio UTMOST = new RimWidthRatio(0.60, 0.95);

  /** Flotation tires in a tire maker's size tables, but for low-profile 24-inch designs. */
  public static final RimWidthRatio FLOTATION = new RimWidthRatio(0.64, 0.92);

  /** Throws {@link IllegalArgumentException} for a band without width. */
  public RimWidthRatio {
    Require.positive("lowest ratio", lowest);
    if (!(highest > lowest)) {
      throw Require.refused("highest ratio", highest, "more than the lowest");
    }
  }

  /**
   * The widest band that published rim lists show for metric tires of an aspect ratio (percent): 80
   * series by an ETRTO page, the others by a tire maker's size tables.
   */
  public static RimWidthRatio published(double aspect) {
    Require.positive("aspect ratio", aspect);
    if (aspect > 75) {
      return new RimWidthRatio(0.61, 0.85);
    }
    if (aspect >= 65) {
      return new RimWidthRatio(0.64, 0.90);
    }
    if (aspect >= 50) {
      return new RimWidthRatio(0.68, 0.94);
    }
    return new RimWidthRatio(0.80, 0.94);
  }

  /** Rim width over nominal section width, both in mm. */
  public static double of(double rimWidth, double nominalWidth) {
    Require.positive("rim width", rimWidth);
    Require.positive("section width", nominalWidth);
    return rimWidth / nominalWidth;
  }

  /** Whether the ratio lies in the band, its ends included. */
  public boolean holds(double ratio) {
    return ratio >= lowest && ratio <= highest;
  }
}
