package trammel.catalog;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;

/** Finds springs, dampers, links, joints and half shafts of a linkage that cannot be as written. */
final class LinkageFittings {
  private static final double LEAST_SPRING = 50;
  private static final double LEAST_SENSOR_LINK = 20;
  private static final double LEAST_SHAFT = 100;

  private final SurveyFaults faults;

  LinkageFittings(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(Linkage linkage) {
    PointUnit unit = new PointUnit(faults);
    for (Linkage.ArmRoom room : linkage.armRooms()) {
      unit.check(List.of(room.from(), room.to()), "ends");
    }
    standing(linkage.spring(), "spring");
    standing(linkage.damper(), "damper");
    length(linkage.sensor(), "height sensor's link", LEAST_SENSOR_LINK);
    if (linkage.halfShaft() != null) {
      halfShaft(linkage.halfShaft());
    }
    swing(linkage.upperSwing());
  }

  private void standing(Linkage.@Nullable MountProfile mount, String what) {
    if (mount == null || length(mount, what, LEAST_SPRING)) {
      return;
    }
    if (mount.body().up().value() <= mount.moving().up().value()) {
      faults.at(
          mount.body().up(),
          "is no higher than the "
              + what
              + "'s moving end, which is at "
              + SurveyFaults.written(mount.moving().up())
              + "; expected its end on the body above",
          "Are body and moving swapped? Exchange the two.");
    }
  }

  /** Whether its length, or a unit, is at fault. */
  private boolean length(Linkage.@Nullable MountProfile mount, String what, double least) {
    if (mount == null) {
      return false;
    }
    int before = faults.count();
    new PointUnit(faults).check(List.of(mount.body(), mount.moving()), "ends");
    if (faults.count() > before) {
      return true;
    }
    double length = mount.body().vector().distance(mount.moving().vector());
    if (length >= least) {
      return false;
    }
    faults.at(
        mount.moving().out(),
        "makes the "
            + what
            + " "
            + SurveyFaults.length(length)
            + " long; expected "
            + SurveyFaults.length(least)
            + " or more",
        "Measure both ends again; was one copied from the other?");
    return true;
  }

  private void halfShaft(Linkage.HalfShaftProfile shaft) {
    int before = faults.count();
    new PointUnit(faults).check(List.of(shaft.inner(), shaft.outer()), "joints");
    if (faults.count() > before) {
      return;
    }
    Quantity inner = shaft.inner().out();
    Quantity outer = shaft.outer().out();
    double length = shaft.inner().vector().distance(shaft.outer().vector());
    if (length < LEAST_SHAFT) {
      faults.at(
          outer,
          "puts the half shaft's joints "
              + SurveyFaults.length(length)
              + " apart; expected "
              + SurveyFaults.length(LEAST_SHAFT)
              + " or more",
          "Measure both joints' centers again; was one copied from the other?");
    } else if (inner.value() >= outer.value()) {
      faults.at(
          inner,
          "lies no farther in than the half shaft's outer joint, which is at "
              + SurveyFaults.written(outer)
              + "; expected the inner joint inboard of it",
          "Are inner and outer swapped? Exchange the two.");
    }
  }

  private void swing(Linkage.Swing swing) {
    if (swing.limit().isKnown()
        && swing.atRest().isKnown()
        && swing.atRest().value() > swing.limit().value()) {
      faults.at(
          swing.atRest(),
          "at rest is past the ball joint's limit of "
              + SurveyFaults.written(swing.limit())
              + "; expected less",
          "Are limit and at-rest swapped? Both count from the joint's middle, either way.");
    }
  }
}
