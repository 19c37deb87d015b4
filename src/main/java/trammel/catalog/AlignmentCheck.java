package trammel.catalog;

import trammel.geometry.HardPoint;
import trammel.quantity.Quantity;

/** Finds windows that hold nothing, and a caster that the hard points do not have. */
final class AlignmentCheck {
  /** A rack and a survey differ by rake, and by their uncertainties, but not by this (degrees). */
  private static final double MOST_APART = 2.5;

  private final SurveyFaults faults;

  AlignmentCheck(SurveyFaults faults) {
    this.faults = faults;
  }

  void windows(AlignmentSpec alignment) {
    window(alignment.camber());
    window(alignment.caster());
    window(alignment.toe());
  }

  private void window(AlignmentSpec.Window window) {
    Quantity from = window.from();
    Quantity to = window.to();
    Quantity preferred = window.preferred();
    if (from.isKnown() && to.isKnown() && from.value() > to.value()) {
      faults.at(
          from,
          "is above to, which is " + SurveyFaults.written(to) + "; expected from at or below to",
          "Are from and to swapped? Or is a sign missing?");
    } else if (preferred.isKnown()
        && ((from.isKnown() && preferred.value() < from.value())
            || (to.isKnown() && preferred.value() > to.value()))) {
      faults.at(
          preferred,
          "lies outside its window; expected "
              + (from.isKnown() ? SurveyFaults.written(from) : "anything")
              + " to "
              + (to.isKnown() ? SurveyFaults.written(to) : "anything"),
          "Is a sign missing? Or is it of another table than from and to?");
    }
  }

  /** The caster that a rack showed against that of the surveyed ball joints. */
  void caster(AxleProfile axle) {
    SurveyPoint upper = HardPoint.upperPoint(axle.linkage().points());
    SurveyPoint lower = axle.linkage().points().get(HardPoint.LOWER_BALL_JOINT);
    Quantity shown = axle.alignment().asSurveyed().caster();
    if (upper == null || lower == null || !shown.isKnown()) {
      return;
    }
    double rise = upper.up().value() - lower.up().value();
    double back = lower.fore().value() - upper.fore().value();
    boolean strut = axle.linkage().points().containsKey(HardPoint.STRUT_TOP);
    double surveyed = Math.toDegrees(Math.atan2(back, rise));
    if (rise > 0 && Math.abs(surveyed - shown.value()) > MOST_APART) {
      faults.at(
          shown,
          "is not the caster of the surveyed "
              + (strut ? "strut top and ball joint" : "ball joints")
              + ", which is "
              + SurveyFaults.angle(surveyed)
              + "; expected the two within "
              + SurveyFaults.angle(MOST_APART),
          Math.abs(surveyed + shown.value()) <= MOST_APART
              ? SurveyFaults.signSwapped(shown)
                  + " Caster is positive with the steering axis' top rearward."
              : "Were both taken at one height? Measure "
                  + (strut ? "the fore of both" : "the ball joints' fore")
                  + " again.");
    }
  }
}
