package trammel.geometry;

import java.util.Arrays;
import java.util.Comparator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;

/**
 * The least distance between a tire and one obstacle, at a pose or over a patch of poses.
 *
 * <p>The distance is convex over the obstacle, which is described by up to three numbers: along a
 * segment; across a disc and along its chord; along the three edges of a box. Each number in turn
 * is where the slope of the least distance over the numbers after it changes sign, and that slope
 * is the partial derivative at their least distance (envelope theorem). By convexity slope times
 * interval bounds the error: 1e-4 mm outside the core; inside it, where ridges of the distance are
 * rounded, 0.05 mm. A number that stays at its end costs one look at the slope, so corners and
 * edges, the commonest contacts, are cheap. Over a patch, travel and steering come first in the
 * same row; the distance is not convex in them, and what is found is a local least.
 */
final class ContactSearch {
  private static final int TRAVEL = 0;
  private static final int STEER = 1;
  private static final int SHAPE = 2;

  /** Error of the distance (mm): over the shape's own numbers outside the core and inside it. */
  private static final double FINE = 1e-4;

  private static final double DEEP = 0.01;

  /** Error of the distance where it only tells where to look closer (mm). */
  static final double ROUGHLY = 0.1;

  /** The same over travel and steering. */
  private static final double COARSE = 1e-3;

  /** Rounds the ridges of the distance inside the core (mm), where the derivative would jump. */
  private static final double RIDGE = 0.2;

  private final double halfWidth;
  private final double coreRadius;
  private final double shoulder;
  private final double deepest;
  private final Vector3D middle;
  private final Vector3D[] edges;
  private final boolean round;
  private final int last;

  /** Travel, steering, then the shape's own. */
  final double[] at = new double[5];

  private final double[] lower = {0, 0, -1, -1, -1};
  private final double[] upper = {0, 0, 1, 1, 1};

  private double[] pose = new double[PosePatch.NUMBERS];
  private @Nullable PosePatch patch;

  // The latest point looked at: itself, its distance, the distance's derivatives.
  private double px;
  private double py;
  private double pz;
  private double gap;
  private double along;
  private double perAlong;
  private double perOff;
  private double ux;
  private double uy;
  private double uz;
  private int distances;

  /** Error that is allowed where it is more than {@link #FINE} or {@link #DEEP} (mm). */
  private double allowed;

  ContactSearch(TireSolid tire, Obstacle.Shape shape) {
    halfWidth = tire.coreHalfWidth();
    coreRadius = tire.coreRadius();
    shoulder = tire.shoulder();
    deepest = -Math.min(tire.width() / 2, tire.radius());
    middle = shape.middle();
    edges = edges(shape);
    round = shape instanceof Obstacle.Disc;
    last = SHAPE + edges.length - 1;
    if (round) {
      // At the very ends a chord has no length, and no slope.
      lower[SHAPE] = -Math.PI / 2 + 1e-3;
      upper[SHAPE] = Math.PI / 2 - 1e-3;
    }
  }

  private static Vector3D[] edges(Obstacle.Shape shape) {
    if (shape instanceof Obstacle.Segment segment) {
      return new Vector3D[] {segment.to().subtract(segment.from()).scalarMultiply(0.5)};
    }
    if (shape instanceof Obstacle.Disc disc) {
      Vector3D one = disc.normal().orthogonal();
      Vector3D other = disc.normal().crossProduct(one).normalize();
      return new Vector3D[] {
        one.scalarMultiply(disc.radius()), other.scalarMultiply(disc.radius())
      };
    }
    if (shape instanceof Obstacle.Box box) {
      Vector3D[] all = {box.halfLength(), box.halfWidth(), box.halfHeight()};
      // The longest last: an error in it then tells least on the slope of those before it.
      Arrays.sort(all, Comparator.comparingDouble(Vector3D::getNormSq));
      return all;
    }
    return new Vector3D[0];
  }

  /** The least distance at a pose (mm), given as center and axis in the obstacle's coordinates. */
  double gapAt(double[] standing) {
    return gapAt(standing, 0);
  }

  /** The same to {@link #ROUGHLY}: enough to tell where to look closer. */
  double roughGapAt(double[] standing) {
    return gapAt(standing, ROUGHLY);
  }

  private double gapAt(double[] standing, double error) {
    patch = null;
    pose = standing;
    distances++;
    allowed = error;
    settle(SHAPE);
    allowed = 0;
    return gap;
  }

  /**
   * A bound that no distance at a pose falls below (mm): the distance of the obstacle's middle, and
   * its slope there as far as the obstacle reaches, for the distance is convex.
   */
  double boundAt(double[] standing) {
    pose = standing;
    look(middle.getX(), middle.getY(), middle.getZ());
    double bound = gap - RIDGE;
    if (round) {
      return bound - Math.hypot(slopeToward(edges[0]), slopeToward(edges[1]));
    }
    for (Vector3D edge : edges) {
      bound -= Math.abs(slopeToward(edge));
    }
    return bound;
  }

  /** The least distance over a patch (mm), from {@link #at} on; leaves the pose there. */
  double gapOver(PosePatch over) {
    patch = over;
    pose = over.pose;
    lower[TRAVEL] = over.travel[0];
    upper[TRAVEL] = over.travel[2];
    lower[STEER] = over.steer[0];
    upper[STEER] = over.steer[2];
    settle(TRAVEL);
    return gap;
  }

  /** The point of the obstacle the latest distance was found at. */
  Vector3D point() {
    return new Vector3D(px, py, pz);
  }

  /** How many distances between tire and obstacle were computed, each a search of its own. */
  int distances() {
    return distances;
  }

  private void settle(int number) {
    if (number > last && number >= SHAPE) {
      place();
      return;
    }
    double from = lower[number];
    double to = upper[number];
    double near = Math.min(Math.max(at[number], from), to);
    double nearSlope = slopeAt(number, near);
    double error = number < SHAPE ? COARSE : Math.max(allowed, gap < -shoulder ? DEEP : FINE);
    double flat = error / (to - from);
    double step = (to - from) / 16;
    double far = near;
    double farSlope = nearSlope;
    // Downhill until the slope changes sign.
    while (farSlope > 0 == nearSlope > 0) {
      near = far;
      nearSlope = farSlope;
      double end = nearSlope > 0 ? from : to;
      if (Math.abs(nearSlope) <= flat || near == end) {
        return;
      }
      far = nearSlope > 0 ? Math.max(near - step, from) : Math.min(near + step, to);
      farSlope = slopeAt(number, far);
      step *= 4;
    }
    close(number, near, nearSlope, far, farSlope, error, flat);
  }

  /** False position with halved weights (the Illinois rule) between slopes of unlike sign. */
  private void close(
      int number,
      double one,
      double oneSlope,
      double two,
      double twoSlope,
      double error,
      double flat) {
    double slope = twoSlope;
    int kept = 0;
    for (int turn = 0; turn < 60; turn++) {
      if (Math.abs(slope) <= flat || Math.abs(slope * (two - one)) <= 1e-4 * error) {
        return;
      }
      double between = (one * twoSlope - two * oneSlope) / (twoSlope - oneSlope);
      slope = slopeAt(number, between);
      if (slope > 0 == twoSlope > 0) {
        two = between;
        twoSlope = slope;
        oneSlope = kept == 1 ? oneSlope / 2 : oneSlope;
        kept = 1;
      } else {
        one = between;
        oneSlope = slope;
        twoSlope = kept == 2 ? twoSlope / 2 : twoSlope;
        kept = 2;
      }
    }
  }

  private double slopeAt(int number, double value) {
    at[number] = value;
    if (number == STEER && patch != null) {
      patch.interpolate(at[TRAVEL], value);
      distances++;
    }
    settle(number + 1);
    return switch (number) {
      case TRAVEL -> patch == null ? 0 : slopeOfPose(patch.perTravel);
      case STEER -> patch == null ? 0 : slopeOfPose(patch.perSteer);
      default -> slopeOfShape(number - SHAPE);
    };
  }

  /** With the point held: what moves is the tire. */
  private double slopeOfPose(double[] per) {
    double fromX = px - pose[0];
    double fromY = py - pose[1];
    double fromZ = pz - pose[2];
    double alongMoves =
        fromX * per[3]
            + fromY * per[4]
            + fromZ * per[5]
            - (per[0] * pose[3] + per[1] * pose[4] + per[2] * pose[5]);
    double offMoves =
        -(ux * per[0] + uy * per[1] + uz * per[2])
            - along * (ux * per[3] + uy * per[4] + uz * per[5]);
    return perAlong * alongMoves + perOff * offMoves;
  }

  private double slopeOfShape(int number) {
    if (!round) {
      return slopeToward(edges[number]);
    }
    double angle = at[SHAPE];
    if (number == 1) {
      // Told as on the longest chord: on a short one it must not pass for flat.
      return slopeToward(edges[1]);
    }
    return Math.cos(angle) * slopeToward(edges[0])
        - at[SHAPE + 1] * Math.sin(angle) * slopeToward(edges[1]);
  }

  private double slopeToward(Vector3D edge) {
    double x = edge.getX();
    double y = edge.getY();
    double z = edge.getZ();
    return perAlong * (x * pose[3] + y * pose[4] + z * pose[5])
        + perOff * (x * ux + y * uy + z * uz);
  }

  private void place() {
    double x = middle.getX();
    double y = middle.getY();
    double z = middle.getZ();
    for (int n = 0; n < edges.length; n++) {
      double share = at[SHAPE + n];
      if (round) {
        share = n == 0 ? Math.sin(share) : Math.cos(at[SHAPE]) * share;
      }
      x += share * edges[n].getX();
      y += share * edges[n].getY();
      z += share * edges[n].getZ();
    }
    look(x, y, z);
  }

  /** Distance of a point and its derivatives along the axis and away from it. */
  private void look(double x, double y, double z) {
    px = x;
    py = y;
    pz = z;
    double dx = x - pose[0];
    double dy = y - pose[1];
    double dz = z - pose[2];
    along = dx * pose[3] + dy * pose[4] + dz * pose[5];
    ux = dx - along * pose[3];
    uy = dy - along * pose[4];
    uz = dz - along * pose[5];
    double off = Math.sqrt(ux * ux + uy * uy + uz * uz);
    double beside = Math.abs(along) - halfWidth;
    double above = off - coreRadius;
    if (beside > 0 || above > 0) {
      double side = Math.max(beside, 0);
      double up = Math.max(above, 0);
      double away = Math.sqrt(side * side + up * up);
      gap = away - shoulder;
      perAlong = Math.copySign(side / away, along);
      perOff = up / away;
      off = Math.max(off, Double.MIN_NORMAL);
    } else {
      double ridge = above - beside;
      gap = Math.max(beside, above) - shoulder;
      perOff = (1 + ridge / Math.sqrt(ridge * ridge + RIDGE * RIDGE)) / 2;
      perAlong = (1 - perOff) * along / Math.sqrt(along * along + RIDGE * RIDGE);
      off = Math.sqrt(off * off + RIDGE * RIDGE);
      if (gap < deepest + DEEP) {
        // No deeper point is to be had anywhere.
        perAlong = 0;
        perOff = 0;
      }
    }
    ux /= off;
    uy /= off;
    uz /= off;
  }
}
