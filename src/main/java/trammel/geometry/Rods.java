package trammel.geometry;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Where two straight rods come closest.
 *
 * @param onFirst point of the first rod (mm)
 * @param firstShare how far along the first rod it lies: 0 at its start, 1 at its end
 * @param onSecond point of the second rod (mm)
 * @param secondShare the same on the second
 */
public record Rods(Vector3D onFirst, double firstShare, Vector3D onSecond, double secondShare) {

  /** Their distance (mm), axis to axis. */
  public double distance() {
    return onFirst.distance(onSecond);
  }

  /**
   * The closest points of two rods: where their carrying lines are closest, or else at an end of
   * one of them. A rod without length is a point.
   */
  public static Rods closest(Vector3D start, Vector3D end, Vector3D otherStart, Vector3D otherEnd) {
    Vector3D along = end.subtract(start);
    Vector3D other = otherEnd.subtract(otherStart);
    Vector3D apart = start.subtract(otherStart);
    double a = along.getNormSq();
    double b = along.dotProduct(other);
    double c = other.getNormSq();
    double d = along.dotProduct(apart);
    double e = other.dotProduct(apart);
    double square = a * c - b * b;
    // Parallel rods have many closest pairs: the first one's start is as good as any.
    double first = square > PARALLEL * a * c ? clamp((b * e - c * d) / square) : 0;
    double second = c > 0 ? clamp((b * first + e) / c) : 0;
    first = a > 0 ? clamp((b * second - d) / a) : 0;
    return new Rods(start.add(first, along), first, otherStart.add(second, other), second);
  }

  private static final double PARALLEL = 1e-12;

  private static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
