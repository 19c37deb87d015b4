package trammel.catalog;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/** Finds prop shafts that cannot run between their joints. */
final class ShaftCheck {
  /** Joints nearer than this leave no room for a shaft (mm). */
  private static final double LEAST_SHAFT = 100;

  private final SurveyFaults faults;
  private final Quantity wheelbase;

  ShaftCheck(SurveyFaults faults, Quantity wheelbase) {
    this.faults = faults;
    this.wheelbase = wheelbase;
  }

  void check(List<ShaftProfile> shafts) {
    shafts.forEach(this::check);
  }

  private void check(ShaftProfile shaft) {
    spline(shaft);
    int before = faults.count();
    new PointUnit(faults).check(List.of(shaft.output(), shaft.pinion()), "joints");
    if (faults.count() > before) {
      return;
    }
    Axle from = from(shaft, shaft.output());
    boolean oneAxle = from == from(shaft, shaft.pinion());
    if (!oneAxle && !wheelbase.isKnown()) {
      return;
    }
    double between = oneAxle ? 0 : wheelbase.value();
    Vector3D output = at(shaft, shaft.output(), between);
    Vector3D pinion = at(shaft, shaft.pinion(), between);
    if (output.distance(pinion) < LEAST_SHAFT) {
      faults.at(
          shaft.pinion().fore(),
          "puts the "
              + shaft.shaft()
              + "'s joints "
              + SurveyFaults.length(output.distance(pinion))
              + " apart; expected "
              + SurveyFaults.length(LEAST_SHAFT)
              + " or more",
          "Measure both joints' centers again; was one copied from the other?");
    } else if (shaft.drives() == Axle.FRONT == output.getX() > pinion.getX()) {
      faults.at(
          shaft.output().fore(),
          "puts the "
              + shaft.shaft()
              + "'s output "
              + (shaft.drives() == Axle.FRONT ? "ahead of" : "behind")
              + " its pinion; expected it on the other side of it, toward the middle of the"
              + " vehicle",
          "Is the sign of fore swapped, are output and pinion, or is it counted from the other"
              + " axle?");
    }
  }

  private static Axle from(ShaftProfile shaft, SurveyPoint point) {
    return point.from() == null ? shaft.drives() : point.from();
  }

  /** Forward of the front axle, or of the one axle that both joints count from. */
  private static Vector3D at(ShaftProfile shaft, SurveyPoint point, double wheelbase) {
    double back = from(shaft, point) == Axle.REAR ? wheelbase : 0;
    return point.inVehicle().subtract(new Vector3D(back, 0, 0));
  }

  private void spline(ShaftProfile shaft) {
    Quantity engaged = shaft.splineEngaged();
    Quantity full = shaft.splineFull();
    if (engaged.isKnown() && full.isKnown() && engaged.value() > full.value()) {
      faults.at(
          engaged,
          "is more than the spline has when right in, which is "
              + SurveyFaults.written(full)
              + "; expected less",
          "Are spline-engaged and spline-full swapped?");
    }
  }
}
