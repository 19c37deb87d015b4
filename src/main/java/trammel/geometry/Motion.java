package trammel.geometry;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What carried a part from where it was surveyed to another pose: turned about the origin first,
 * then shifted.
 *
 * @param rotation used through {@link Rotation#applyTo(Vector3D)}
 * @param translation (mm)
 */
public record Motion(Rotation rotation, Vector3D translation) {
  /** No motion: the part stays where it was surveyed. */
  public static final Motion NONE = new Motion(Rotation.IDENTITY, Vector3D.ZERO);

  /** Where a surveyed point of the part now is. */
  public Vector3D apply(Vector3D point) {
    return rotation.applyTo(point).add(translation);
  }

  /** Where on the surveyed part a point lies that is now here. */
  public Vector3D undo(Vector3D point) {
    return rotation.applyInverseTo(point.subtract(translation));
  }

  /** A direction of now, as the surveyed part had it. */
  public Vector3D undoDirection(Vector3D direction) {
    return rotation.applyInverseTo(direction);
  }
}
