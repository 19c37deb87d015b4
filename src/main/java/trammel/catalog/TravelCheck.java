package trammel.catalog;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import trammel.geometry.Corner;
import trammel.geometry.HardPoint;
import trammel.geometry.HardPoints;
import trammel.geometry.Heading;
import trammel.geometry.OutOfReach;
import trammel.geometry.OutOfReachException;
import trammel.geometry.WheelTravel;
import trammel.quantity.Quantity;

/**
 * Tries a surveyed linkage over the travel and the steering that its profile states. It is at fault
 * only where it falls short by more than the stated value's own uncertainty.
 */
final class TravelCheck {
  private final SurveyFaults faults;

  TravelCheck(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(AxleProfile axle) {
    Linkage linkage = axle.linkage();
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    linkage.points().forEach((name, point) -> points.put(name, point.vector()));
    if (!points.keySet().containsAll(axle.layout().joints())) {
      return;
    }
    AlignmentSpec.Angles angles = axle.alignment().asSurveyed();
    Corner<Binary64> corner;
    try {
      corner =
          Corner.of(HardPoints.of(points, orZero(angles.camber()), orZero(angles.toe())), Map.of());
    } catch (OutOfReachException e) {
      faults.at(
          linkage.place(),
          "the hard points make no linkage: " + e.getMessage(),
          "Measure these points again.");
      return;
    }
    travel(corner, axle.droopTravel(), -1, "down");
    travel(corner, axle.bumpTravel(), 1, "up");
    steer(corner, linkage.steering().rackTravel());
  }

  private static double orZero(Quantity angle) {
    return angle.isKnown() ? angle.value() : 0;
  }

  /** A stated length less its uncertainty (mm); 0 where it is not known. */
  private static double sure(Quantity length) {
    return length.isKnown() ? Math.max(0, length.value() - length.expanded()) : 0;
  }

  private static Optional<String> limit(Corner<Binary64> corner, double travel, double steer) {
    FieldVector3D<Binary64> inner =
        corner.tieRodInner().add(new FieldVector3D<>(corner.field(), new Vector3D(0, steer, 0)));
    return WheelTravel.of(corner).at(new Binary64(travel), new Heading.ByTieRod<>(inner))
            instanceof OutOfReach<Binary64> out
        ? Optional.of(out.limit())
        : Optional.empty();
  }

  private void travel(Corner<Binary64> corner, Quantity stated, int direction, String way) {
    limit(corner, direction * sure(stated), 0)
        .ifPresent(
            limit ->
                faults.at(
                    stated,
                    "is farther than the surveyed linkage goes " + way + ": " + limit,
                    "Measure the travel at the wheel's center again, and the heights of pivots and"
                        + " ball joints."));
  }

  /** Left and right lock, at rest. */
  private void steer(Corner<Binary64> corner, Quantity rack) {
    Optional<String> limit = limit(corner, 0, sure(rack)).or(() -> limit(corner, 0, -sure(rack)));
    if (limit.isPresent()) {
      faults.at(
          rack,
          "is farther than the tie rod can turn the wheel; expected less, from straight ahead to"
              + " either lock",
          "Was it measured from lock to lock? Halve it. If not, measure the tie rod's ends again.");
    }
  }
}
