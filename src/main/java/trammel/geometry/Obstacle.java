package trammel.geometry;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What a tire may meet: a convex shape fixed to a part, in the coordinates of the surveyed pose.
 *
 * @param shape (mm)
 * @param fixedTo the part that carries it along
 */
public record Obstacle(Shape shape, FixedTo fixedTo) {

  /** What moves an obstacle. */
  public enum FixedTo {
    BODY,
    KNUCKLE,
    ARM
  }

  /** A convex shape. */
  public sealed interface Shape {
    /** Its center. */
    Vector3D middle();
  }

  /** A single point. */
  public record Point(Vector3D at) implements Shape {
    @Override
    public Vector3D middle() {
      return at;
    }
  }

  /** A straight edge between two points. */
  public record Segment(Vector3D from, Vector3D to) implements Shape {
    @Override
    public Vector3D middle() {
      return from.add(to).scalarMultiply(0.5);
    }
  }

  /**
   * A box that lies as it will.
   *
   * @param middle its center
   * @param halfLength from the center square to a face
   * @param halfWidth the same to a second face, at right angles to the first
   * @param halfHeight the same to the third
   */
  public record Box(Vector3D middle, Vector3D halfLength, Vector3D halfWidth, Vector3D halfHeight)
      implements Shape {
    /** Refuses edges that are not at right angles (to a thousandth). */
    public Box {
      requireSquare(halfLength, halfWidth);
      requireSquare(halfWidth, halfHeight);
      requireSquare(halfHeight, halfLength);
    }

    private static void requireSquare(Vector3D one, Vector3D other) {
      if (!(Math.abs(one.dotProduct(other)) <= 1e-3 * one.getNorm() * other.getNorm())) {
        throw new IllegalArgumentException("edges of a box; expected at right angles");
      }
    }
  }

  /**
   * A flat round plate without thickness.
   *
   * @param middle its center
   * @param normal square to it, of any length but 0
   * @param radius (mm), not negative
   */
  public record Disc(Vector3D middle, Vector3D normal, double radius) implements Shape {
    /** Refuses a normal without direction and a negative radius. */
    public Disc {
      if (!(normal.getNormSq() > 0)) {
        throw new IllegalArgumentException("normal of a disc; expected a direction");
      }
      if (!(radius >= 0)) {
        throw new IllegalArgumentException("radius of a disc " + radius + "; expected not below 0");
      }
    }
  }
}
