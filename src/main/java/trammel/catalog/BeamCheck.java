package trammel.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;

/** Finds bars and links of a beam axle that hold nothing. Limits are common practice. */
final class BeamCheck {
  private static final double LEAST_BAR = 300;
  private static final double LEAST_LINK = 100;
  private static final double MOST_LINK = 1500;

  private final SurveyFaults faults;
  private final PointUnit unit;
  private final TrackCheck track;

  BeamCheck(SurveyFaults faults, TrackCheck track) {
    this.faults = faults;
    this.unit = new PointUnit(faults);
    this.track = track;
  }

  void check(BeamLocation location) {
    BeamLocation.Panhard bar = location.panhard();
    BeamLocation.Links links = location.links();
    BeamLocation.DragLinkProfile drag = location.dragLink();
    if (bar != null) {
      check(List.of(bar.frameEnd(), bar.axleEnd()), "ends", Optional.empty(), () -> panhard(bar));
      for (BeamLocation.BarRoom room : bar.rooms()) {
        unit.check(List.of(room.from(), room.to()), "ends");
      }
    }
    if (links != null) {
      check(ends(links), "links", Optional.of(links.wheelCenter()), () -> links(links));
    }
    if (drag != null) {
      check(
          List.of(drag.boxEnd(), drag.axleEnd()),
          "ends",
          Optional.empty(),
          () ->
              length(
                  drag.axleEnd().out(),
                  "drag link",
                  drag.boxEnd().inVehicle().distance(drag.axleEnd().inVehicle())));
    }
  }

  /** What was written in another unit is told as that alone. */
  private void check(
      List<SurveyPoint> points, String words, Optional<SurveyPoint> wheel, Runnable further) {
    int before = faults.count();
    unit.check(points, words);
    if (faults.count() == before) {
      wheel.ifPresent(track::check);
      further.run();
    }
  }

  private void panhard(BeamLocation.Panhard bar) {
    for (SurveyPoint end : List.of(bar.frameEnd(), bar.axleEnd())) {
      if (end.side() == null) {
        faults.at(
            end.out(),
            "does not say toward which side it counts; expected side: left or side: right",
            "Add side to both ends: a panhard bar has no mirror image.");
        return;
      }
    }
    double frame = bar.frameEnd().inVehicle().getY();
    double axle = bar.axleEnd().inVehicle().getY();
    if (frame * axle > 0) {
      faults.at(
          bar.axleEnd().out(),
          "to the "
              + (axle > 0 ? "left" : "right")
              + " lies on the same side as the frame's end; expected the panhard bar to cross"
              + " over",
          "Is a side or a sign swapped? One end is on the left, the other on the right.");
    } else if (Math.abs(frame - axle) < LEAST_BAR) {
      faults.at(
          bar.axleEnd().out(),
          "makes a panhard bar that spans "
              + SurveyFaults.length(Math.abs(frame - axle))
              + " sideways; expected "
              + SurveyFaults.length(LEAST_BAR)
              + " or more",
          "Measure both ends again; out counts from the center plane.");
    }
  }

  private static List<SurveyPoint> ends(BeamLocation.Links links) {
    List<SurveyPoint> ends =
        new ArrayList<>(List.of(links.lowerFrame(), links.lowerAxle(), links.wheelCenter()));
    if (links.upperFrame() != null) {
      ends.add(links.upperFrame());
    }
    if (links.upperAxle() != null) {
      ends.add(links.upperAxle());
    }
    return ends;
  }

  private void links(BeamLocation.Links links) {
    link("lower link", links.lowerFrame(), links.lowerAxle());
    link("upper link", links.upperFrame(), links.upperAxle());
  }

  private void link(String link, @Nullable SurveyPoint frame, @Nullable SurveyPoint axle) {
    if (frame == null && axle == null) {
      return;
    }
    if (frame == null || axle == null) {
      SurveyPoint only = frame == null ? axle : frame;
      faults.at(
          only.out(),
          "is the "
              + link
              + "'s only end; expected its other end at the "
              + (frame == null ? "frame" : "axle"),
          "Add the other end; or remove this one if there is no such link.");
      return;
    }
    if (length(axle.out(), link, frame.inVehicle().distance(axle.inVehicle()))) {
      return;
    }
    Quantity fore = axle.fore();
    if (Math.abs(fore.value()) > Math.abs(frame.fore().value())) {
      faults.at(
          fore,
          "lies farther from the axle than the "
              + link
              + "'s end on the frame, which is at "
              + SurveyFaults.written(frame.fore())
              + "; expected the axle's end near the axle",
          "Are frame and axle swapped? Exchange the two.");
    }
  }

  private boolean length(Quantity at, String link, double length) {
    if (length >= LEAST_LINK && length <= MOST_LINK) {
      return false;
    }
    faults.at(
        at,
        "makes the "
            + link
            + " "
            + SurveyFaults.length(length)
            + " long; expected "
            + SurveyFaults.length(LEAST_LINK)
            + " to "
            + SurveyFaults.length(MOST_LINK),
        length < LEAST_LINK
            ? "Measure both ends again; was one copied from the other?"
            : "Measure both ends again; check sign, side and unit.");
    return true;
  }
}
