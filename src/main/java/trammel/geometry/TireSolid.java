package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A tire as a solid of revolution: a rectangle with rounded shoulders turned about the spindle
 * axis.
 *
 * <p>Within the rounding lies a core, a cylinder of radius R − r and half-width B/2 − r. Outside it
 * the distance from the tire is the distance from the core less r; inside, the nearer of crown and
 * sidewall counts. Both are exact, so the distance of a point is convex along every line. Own
 * derivation.
 *
 * @param radius R, over the tread (mm)
 * @param width B, section width (mm)
 * @param shoulder r, radius of the shoulders (mm); below R and at most B/2
 */
public record TireSolid(double radius, double width, double shoulder) {
  /** Refuses a tire whose shoulders leave no core. */
  public TireSolid {
    if (!(shoulder >= 0 && shoulder < radius && 2 * shoulder <= width && width > 0)
        || Double.isInfinite(radius + width)) {
      throw new IllegalArgumentException(
          "tire of radius %s, width %s, shoulder %s; expected a shoulder from 0 to half the width and below the radius"
              .formatted(radius, width, shoulder));
    }
  }

  /**
   * Distance of a point from the surface (mm), negative inside.
   *
   * @param center see {@link Stance#center()}
   * @param axis unit vector
   * @param point the point (mm)
   */
  public double distance(Vector3D center, Vector3D axis, Vector3D point) {
    Vector3D from = point.subtract(center);
    double along = from.dotProduct(axis);
    double beside = Math.abs(along) - coreHalfWidth();
    double above = from.subtract(along, axis).getNorm() - coreRadius();
    double inside = Math.min(Math.max(beside, above), 0);
    return Math.hypot(Math.max(beside, 0), Math.max(above, 0)) + inside - shoulder;
  }

  /** The surface of the tire that is nearest to a point; parameters as for the distance. */
  public TireSurface surface(Vector3D center, Vector3D axis, Vector3D point) {
    Vector3D from = point.subtract(center);
    double along = from.dotProduct(axis);
    double beside = Math.abs(along) - coreHalfWidth();
    double above = from.subtract(along, axis).getNorm() - coreRadius();
    if (beside > 0 && above > 0) {
      return along > 0 ? TireSurface.OUTER_SHOULDER : TireSurface.INNER_SHOULDER;
    }
    if (beside > above) {
      return along > 0 ? TireSurface.OUTER_SIDEWALL : TireSurface.INNER_SIDEWALL;
    }
    return TireSurface.CROWN;
  }

  /** The point of the surface that is nearest to a point; parameters as for the distance. */
  public Vector3D nearest(Vector3D center, Vector3D axis, Vector3D point) {
    Vector3D from = point.subtract(center);
    double along = from.dotProduct(axis);
    Vector3D off = from.subtract(along, axis);
    // On the axis all directions are as near: any will do.
    Vector3D outward = off.getNorm() > 0 ? off.normalize() : axis.orthogonal();
    double beside = Math.abs(along) - coreHalfWidth();
    double above = off.getNorm() - coreRadius();
    double sideways = beside > above ? 1 : 0;
    double upward = 1 - sideways;
    if (beside > 0 && above > 0) {
      double away = Math.hypot(beside, above);
      sideways = beside / away;
      upward = above / away;
    }
    double gap = distance(center, axis, point);
    return point
        .subtract(gap * Math.copySign(sideways, along), axis)
        .subtract(gap * upward, outward);
  }

  /** Half-width of the core (mm). */
  double coreHalfWidth() {
    return width / 2 - shoulder;
  }

  /** Radius of the core (mm). */
  double coreRadius() {
    return radius - shoulder;
  }

  /**
   * {@link #distance} with derivatives, for the deciding pose of a sweep: there, to first order,
   * neither a change of pose nor another point of the obstacle changes the least gap, so the pose's
   * travel and steering and the point on its part are held fixed (envelope theorem).
   *
   * @param center see {@link Stance#center()}
   * @param axis unit vector
   * @param point closest point of the obstacle
   * @param radius R (mm)
   * @param width B (mm)
   * @param shoulder r (mm)
   */
  public static <T extends CalculusFieldElement<T>> T gap(
      FieldVector3D<T> center,
      FieldVector3D<T> axis,
      FieldVector3D<T> point,
      T radius,
      T width,
      T shoulder) {
    FieldVector3D<T> from = point.subtract(center);
    T along = Products.dot(from, axis);
    T beside = along.abs().subtract(width.divide(2)).add(shoulder);
    T above = from.subtract(axis.scalarMultiply(along)).getNorm().subtract(radius).add(shoulder);
    if (beside.getReal() > 0 && above.getReal() > 0) {
      return beside.square().add(above.square()).sqrt().subtract(shoulder);
    }
    return (beside.getReal() > above.getReal() ? beside : above).subtract(shoulder);
  }
}
