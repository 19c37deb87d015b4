package trammel.physics;

/** Static stability factor T / 2h, and what a lift does to the height of the center of gravity. */
public final class StabilityFactor {
  private StabilityFactor() {}

  /**
   * Static stability factor: track / (2 × height). NHTSA, rollover rulemaking, chapter 5.
   *
   * @param track (mm)
   * @param height center of gravity above ground (mm)
   */
  public static double of(double track, double height) {
    require(track, height);
    return track / (2 * height);
  }

  /** Its change per mm of track. */
  public static double perTrack(double track, double height) {
    require(track, height);
    return 1 / (2 * height);
  }

  /** Its change per mm of height; negative. */
  public static double perHeight(double track, double height) {
    require(track, height);
    return -track / (2 * height * height);
  }

  /**
   * Rise of the center of gravity (mm): a suspension or body lift raises only what it carries, a
   * larger loaded radius raises all.
   *
   * @param lift (mm)
   * @param raisedFraction mass that the lift raises, over the whole mass, 0 to 1
   * @param loadedRadiusChange new less old loaded radius (mm)
   */
  public static double rise(double lift, double raisedFraction, double loadedRadiusChange) {
    if (!(raisedFraction >= 0 && raisedFraction <= 1)) {
      throw Require.refused("raised fraction", raisedFraction, "0 to 1");
    }
    return lift * raisedFraction + loadedRadiusChange;
  }

  private static void require(double track, double height) {
    Require.positive("track", track);
    Require.positive("height of the center of gravity", height);
  }
}
