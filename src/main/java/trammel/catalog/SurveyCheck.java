package trammel.catalog;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import trammel.geometry.HardPoint;
import trammel.read.Problems;
import trammel.subject.Axle;

/**
 * Checks that what was surveyed can be true: sides, signs, units, lengths, ranges, and whether a
 * linkage reaches the travel that its profile states. What is not stated is no fault; it only
 * lowers how well the vehicle is known.
 */
final class SurveyCheck {
  private final SurveyFaults faults;

  SurveyCheck(Problems problems) {
    this.faults = new SurveyFaults(problems);
  }

  void check(Collection<VehicleProfile> vehicles, Collection<Part> parts) {
    for (VehicleProfile vehicle : vehicles) {
      for (Axle axle : Axle.values()) {
        check(vehicle.axle(axle));
      }
      new ShaftCheck(faults, vehicle.wheelbase()).check(vehicle.shafts());
    }
    new StrokeCheck(faults, parts).check(vehicles);
    for (Part part : parts) {
      if (part instanceof SuspensionPart.UpperArm arm) {
        new AdjusterCheck(faults).ofUpperArm(arm.adjusters());
      }
    }
  }

  private void check(AxleProfile axle) {
    int before = faults.count();
    Map<HardPoint, SurveyPoint> points = axle.linkage().points();
    TrackCheck track = new TrackCheck(faults, axle.track());
    new PointUnit(faults).check(points.values(), "hard points");
    boolean measured = faults.count() == before;
    if (measured) {
      Optional.ofNullable(points.get(HardPoint.WHEEL_CENTER)).ifPresent(track::check);
    }
    if (faults.count() == before) {
      new HardPointSides(faults).check(points);
    }
    if (faults.count() == before) {
      new ArmCheck(faults).check(points);
    }
    if (measured) {
      new LinkageFittings(faults).check(axle.linkage());
    }
    AlignmentCheck alignment = new AlignmentCheck(faults);
    if (faults.count() == before) {
      alignment.caster(axle);
    }
    alignment.windows(axle.alignment());
    if (faults.count() == before) {
      new TravelCheck(faults).check(axle);
    }
    new AdjusterCheck(faults).check(axle.adjusters());
    new BeamCheck(faults, track).check(axle.location());
    new ShapeCheck(faults).check(axle.stations().values());
  }
}
