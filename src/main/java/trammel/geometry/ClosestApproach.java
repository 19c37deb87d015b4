package trammel.geometry;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Where a swept tire comes closest to an obstacle. For what moves with the knuckle every pose is as
 * close as any other, and one of them is named.
 *
 * @param obstacle the obstacle
 * @param gap distance from the tire's surface (mm); negative: how deep the obstacle stands in it
 * @param travel of the deciding pose (mm)
 * @param steer of the deciding pose, in the linkage's unit
 * @param stance the deciding pose
 * @param onSurveyed point of the obstacle that is closest, in the surveyed coordinates of the part
 *     it is fixed to
 * @param onObstacle the same point where the pose has put it
 * @param onTire point of the tire's surface closest to it
 * @param surface the surface of the tire it lies on
 */
public record ClosestApproach(
    Obstacle obstacle,
    double gap,
    double travel,
    double steer,
    Stance stance,
    Vector3D onSurveyed,
    Vector3D onObstacle,
    Vector3D onTire,
    TireSurface surface) {}
