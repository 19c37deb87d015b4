package trammel.geometry;

import java.util.function.Supplier;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Where a linkage holds a wheel.
 *
 * @param center point of the tire's center plane on the spindle axis (mm)
 * @param axis unit spindle axis, pointing outboard
 * @param knuckle how the knuckle moved since it was surveyed; worked out when asked for
 * @param arm how the arm that carries obstacles moved since it was surveyed; the same
 */
public record Stance(
    Vector3D center, Vector3D axis, Supplier<Motion> knuckle, Supplier<Motion> arm) {

  /** How the part moved that an obstacle is fixed to. */
  public Motion of(Obstacle.FixedTo part) {
    return switch (part) {
      case BODY -> Motion.NONE;
      case KNUCKLE -> knuckle.get();
      case ARM -> arm.get();
    };
  }
}
