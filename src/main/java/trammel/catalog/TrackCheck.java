package trammel.catalog;

import java.util.List;
import trammel.quantity.Quantity;

/** Finds a wheel's center that is not where the track has it. */
final class TrackCheck {
  /** How far it may be off half the track: a hub's face, or a wide wheel's (mm). */
  private static final double OFF_TRACK = 100;

  private final SurveyFaults faults;
  private final Quantity track;

  TrackCheck(SurveyFaults faults, Quantity track) {
    this.faults = faults;
    this.track = track;
  }

  void check(SurveyPoint wheel) {
    double out = wheel.out().value();
    if (!track.isKnown() || out <= 0) {
      return;
    }
    double half = track.value() / 2;
    if (Math.abs(out - half) <= OFF_TRACK) {
      return;
    }
    String advice = "Measure it again, or correct the track.";
    for (String unit : List.of("centimeters", "inches")) {
      if (Math.abs(out * PointUnit.size(unit) - half) <= OFF_TRACK) {
        advice = PointUnit.advice(wheel.out(), unit);
      }
    }
    if (Math.abs(out - track.value()) <= OFF_TRACK) {
      advice = "Was it measured from wheel to wheel? Out counts from the center plane: halve it.";
    }
    faults.at(
        wheel.out(),
        "is not where the track has the wheel; expected about "
            + SurveyFaults.length(half)
            + ", half the track of "
            + SurveyFaults.written(track),
        advice);
  }
}
