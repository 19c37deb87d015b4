package trammel.physics;

/**
 * How far a steered tire reaches from its steering axis: a cylinder with rounded shoulders about a
 * vertical axis. The reach itself ignores the axis' inclination; the change of reach between two
 * tires is good to 0.1 mm against a brute-force sweep about an inclined axis.
 *
 * <p>An edge is given as its lateral distance from the axis (mm) at the height where tire and
 * obstacle meet. That height, not the ground, decides the lever.
 */
public final class TireSweep {
  private TireSweep() {}

  /**
   * From the axis outward to the outer edge (mm): lever + width/2.
   *
   * @param lever distance of the axis inboard of the tire's center plane at the height concerned
   * @param width section width (mm)
   */
  public static double outerEdge(double lever, double width) {
    Require.positive("width", width);
    return lever + width / 2;
  }

  /** From the axis inward to the inner edge (mm): width/2 − lever. */
  public static double innerEdge(double lever, double width) {
    Require.positive("width", width);
    return width / 2 - lever;
  }

  /**
   * The lever at the height of the wheel center (mm): scrub radius + loaded radius × tan(kingpin
   * inclination), the usual approximation.
   */
  public static double leverAtHub(double scrub, double loadedRadius, double kingpinInclination) {
    Require.positive("loaded radius", loadedRadius);
    return scrub + loadedRadius * Math.tan(Math.toRadians(kingpinInclination));
  }

  /**
   * Farthest reach of an edge fore or aft over all steering angles (mm): √((R − r)² + (x − r)²) +
   * r. Where the shoulder begins beyond the axis (x &lt; r) the crown reaches farthest, and it is
   * R.
   *
   * @param radius R, of the tire (mm)
   * @param edge x, of the edge from the axis (mm)
   * @param shoulder r, radius of the shoulder (mm), below R
   */
  public static double reach(double radius, double edge, double shoulder) {
    return hypotenuse(radius, edge, shoulder) + shoulder;
  }

  /** Its change per mm of the edge; 0 where the crown reaches farthest. */
  public static double reachPerEdge(double radius, double edge, double shoulder) {
    return beyond(edge, shoulder) / hypotenuse(radius, edge, shoulder);
  }

  /** Its change per mm of the radius. */
  public static double reachPerRadius(double radius, double edge, double shoulder) {
    return (radius - shoulder) / hypotenuse(radius, edge, shoulder);
  }

  /** Its change per mm of the shoulder radius; at most 0. */
  public static double reachPerShoulder(double radius, double edge, double shoulder) {
    return 1 - (radius - shoulder + beyond(edge, shoulder)) / hypotenuse(radius, edge, shoulder);
  }

  /** The steering angle at which an edge reaches farthest fore or aft (degrees from straight). */
  public static double angleOfReach(double radius, double edge, double shoulder) {
    hypotenuse(radius, edge, shoulder);
    return Math.toDegrees(Math.atan2(beyond(edge, shoulder), radius - shoulder));
  }

  /**
   * Reach of the inner rear corner inboard of the axis at a steering angle (mm), as a sharp edge: R
   * sin φ + x cos φ.
   *
   * @param innerEdge x, see {@link #innerEdge(double, double)}
   * @param angle φ from straight (degrees)
   */
  public static double inboardReach(double radius, double innerEdge, double angle) {
    Require.positive("tire radius", radius);
    double phi = Math.toRadians(angle);
    return radius * Math.sin(phi) + innerEdge * Math.cos(phi);
  }

  /** Its change per degree of the angle (mm/degree). */
  public static double inboardReachPerAngle(double radius, double innerEdge, double angle) {
    Require.positive("tire radius", radius);
    double phi = Math.toRadians(angle);
    return Math.toRadians(1) * (radius * Math.cos(phi) - innerEdge * Math.sin(phi));
  }

  /** Its change per mm of the inner edge: cos φ. */
  public static double inboardReachPerEdge(double angle) {
    return Math.cos(Math.toRadians(angle));
  }

  /** Its change per mm of the radius: sin φ. */
  public static double inboardReachPerRadius(double angle) {
    return Math.sin(Math.toRadians(angle));
  }

  private static double beyond(double edge, double shoulder) {
    return Math.max(0, edge - shoulder);
  }

  private static double hypotenuse(double radius, double edge, double shoulder) {
    Require.positive("tire radius", radius);
    Require.notNegative("shoulder radius", shoulder);
    if (!(shoulder < radius)) {
      throw Require.refused("shoulder radius", shoulder, "less than the tire radius");
    }
    return Math.hypot(radius - shoulder, beyond(edge, shoulder));
  }
}
