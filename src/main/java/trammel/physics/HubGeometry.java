package trammel.physics;

/**
 * Where a wheel stands on its hub. Offset positive: mounting face outboard of the center plane. A
 * spacer moves the wheel outboard as an offset smaller by its thickness would. All lengths in mm.
 */
public final class HubGeometry {
  /**
   * One inch (mm): what two rim flanges add to the rim width, half an inch each; common practice.
   */
  private static final double BOTH_FLANGES = 25.4;

  /** From where backspace is measured. The trade uses both; they differ by 12.7 mm. */
  public enum Backspace {
    /** From the rear flange edge, as a straightedge across the wheel finds it. */
    FROM_FLANGE_EDGE(BOTH_FLANGES / 2),
    /** From the rear bead seat: half the nominal rim width plus the offset. */
    FROM_BEAD_SEAT(0);

    private final double flange;

    Backspace(double flange) {
      this.flange = flange;
    }

    /** Backspace of a rim width and offset (mm). Partials: 1/2 and 1. */
    public double of(double rimWidth, double offset) {
      Require.positive("rim width", rimWidth);
      return rimWidth / 2 + flange + offset;
    }

    /** Offset of a rim width and backspace (mm). Partials: −1/2 and 1. */
    public double offset(double rimWidth, double backspace) {
      Require.positive("rim width", rimWidth);
      return backspace - rimWidth / 2 - flange;
    }
  }

  private HubGeometry() {}

  /**
   * Distance between two studs (mm): circle · sin(step · π / count).
   *
   * @param circle diameter of the bolt circle (mm)
   * @param count number of studs
   * @param step 1 for neighbors, 2 for the next but one, and so on up to half of the count
   */
  public static double chord(double circle, int count, int step) {
    Require.positive("bolt circle", circle);
    return circle * chordFactor(count, step);
  }

  /** Bolt circle from the distance between two studs (mm): chord / sin(step · π / count). */
  public static double circle(double chord, int count, int step) {
    Require.positive("stud distance", chord);
    return chord / chordFactor(count, step);
  }

  /** Chord over circle, the partial of the chord to the circle: sin(step · π / count). */
  public static double chordFactor(int count, int step) {
    if (count < 3) {
      throw Require.refused("number of studs", count, "3 or more");
    }
    if (step < 1 || step > count / 2) {
      throw Require.refused("step between studs", step, "1 to half of the number of studs");
    }
    return Math.sin(step * Math.PI / count);
  }

  /** Offset as it acts behind a spacer (mm): offset − thickness. */
  public static double effectiveOffset(double offset, double spacer) {
    Require.notNegative("spacer thickness", spacer);
    return offset - spacer;
  }

  /** From the hub face outboard to the edge of a tire or rim (mm): width/2 − offset. */
  public static double outboardEdge(double width, double effectiveOffset) {
    Require.positive("width", width);
    return width / 2 - effectiveOffset;
  }

  /** From the hub face inboard to the edge of a tire or rim (mm): width/2 + offset. */
  public static double inboardEdge(double width, double effectiveOffset) {
    Require.positive("width", width);
    return width / 2 + effectiveOffset;
  }

  /** Change of the track of an axle whose two wheels change alike (mm): −2 × change of offset. */
  public static double trackChange(double oldEffectiveOffset, double newEffectiveOffset) {
    return -2 * (newEffectiveOffset - oldEffectiveOffset);
  }

  /**
   * Change of the scrub radius (mm), positive where the steering axis meets the ground further
   * inboard of the contact: −change of offset − change of loaded radius × tan(kingpin inclination).
   *
   * @param offsetChange new less old effective offset (mm)
   * @param loadedRadiusChange new less old loaded radius (mm)
   * @param kingpinInclination positive with the top inward (degrees)
   */
  public static double scrubChange(
      double offsetChange, double loadedRadiusChange, double kingpinInclination) {
    return -offsetChange - loadedRadiusChange * Math.tan(Math.toRadians(kingpinInclination));
  }

  /** Change of that per degree of kingpin inclination (mm/degree). */
  public static double scrubChangePerInclination(
      double loadedRadiusChange, double kingpinInclination) {
    double cosine = Math.cos(Math.toRadians(kingpinInclination));
    return -loadedRadiusChange * Math.toRadians(1) / (cosine * cosine);
  }

  /** Turns of a nut from full engagement: engaged length / pitch (both mm). */
  public static double threadTurns(double engagement, double pitch) {
    Require.notNegative("thread engagement", engagement);
    Require.positive("thread pitch", pitch);
    return engagement / pitch;
  }

  /** Engaged length in nominal diameters; one is the least for steel, common practice. */
  public static double threadDiameters(double engagement, double diameter) {
    Require.notNegative("thread engagement", engagement);
    Require.positive("thread diameter", diameter);
    return engagement / diameter;
  }

  /** Thread engagement left behind a slip-on spacer (mm): it takes its thickness, down to none. */
  public static double engagementLeft(double engagement, double spacer) {
    Require.notNegative("thread engagement", engagement);
    Require.notNegative("spacer thickness", spacer);
    return Math.max(0, engagement - spacer);
  }

  /** Hub pilot left to center the wheel behind a slip-on spacer (mm), down to none. */
  public static double pilotLeft(double pilot, double spacer) {
    Require.notNegative("pilot length", pilot);
    Require.notNegative("spacer thickness", spacer);
    return Math.max(0, pilot - spacer);
  }
}
