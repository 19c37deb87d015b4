package trammel.catalog;

import java.util.Collection;
import java.util.List;

/** Finds shapes of obstacles that are none. */
final class ShapeCheck {
  private final SurveyFaults faults;
  private final PointUnit unit;

  ShapeCheck(SurveyFaults faults) {
    this.faults = faults;
    this.unit = new PointUnit(faults);
  }

  void check(Collection<StationProfile> stations) {
    for (StationProfile station : stations) {
      station.shapes().forEach(this::check);
    }
  }

  private void check(Shape shape) {
    if (shape instanceof Shape.Spot spot) {
      unit.check(List.of(spot.at()), "lengths");
    } else if (shape instanceof Shape.Edge edge) {
      unit.check(List.of(edge.from(), edge.to()), "ends");
    } else if (shape instanceof Shape.Block block) {
      unit.check(List.of(block.from(), block.to()), "corners");
    } else {
      disc((Shape.Plate) shape);
    }
  }

  private void disc(Shape.Plate disc) {
    unit.check(List.of(disc.center(), disc.toward()), "points");
    if (!disc.radius().isKnown()) {
      faults.at(
          disc.center().out(),
          "is the center of a disc without a radius; expected one",
          "Add radius, or make it a point.");
    }
    if (disc.center().vector().distance(disc.toward().vector()) < 1) {
      faults.at(
          disc.toward().out(),
          "puts the point on the disc's axis at its center, so that it faces nowhere; expected"
              + " another place",
          "Give a point that the disc's axis goes through, a hand's breadth from its center.");
    }
  }
}
