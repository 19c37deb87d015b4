package trammel.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.derive.HeightLedger;
import trammel.derive.HeightLedger.Corner;
import trammel.derive.TravelLedger;
import trammel.derive.TravelLedger.Mark;
import trammel.fact.AxleLoad;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.fact.GroundRoom;
import trammel.fact.RampAngle;
import trammel.fact.SensorRange;
import trammel.quantity.Quantity;
import trammel.report.HeightRow.Topic;

/** Heights, loads, pressures and travel as rows, which every form of the ledger is made from. */
final class HeightRows {
  private final List<HeightRow> rows = new ArrayList<>();
  private String where = "";

  private HeightRows() {}

  /** The rows of a build: wheel by wheel, then axles and the vehicle, then the underside. */
  static List<HeightRow> of(HeightLedger ledger, List<TravelLedger> travel, List<Fact> facts) {
    HeightRows rows = new HeightRows();
    for (Corner corner : ledger.corners()) {
      rows.where = corner.position().toString();
      rows.height(corner);
      rows.add(Topic.LOAD, "load on the wheel", corner.loadFound(), corner.loadProposed());
      if (corner.fluid() != null) {
        rows.fluid(corner.fluid());
      }
      if (corner.sensor() != null) {
        rows.sensor(corner.sensor());
      }
      travel.stream().filter(each -> each.position() == corner.position()).forEach(rows::travel);
    }
    ledger.axles().forEach(axle -> rows.load(axle.axle().toString(), axle.load()));
    rows.load("vehicle", ledger.gross());
    rows.where = "vehicle";
    facts.forEach(rows::ground);
    return List.copyOf(rows.rows);
  }

  private void add(
      Topic topic, String what, @Nullable Quantity today, @Nullable Quantity proposed) {
    rows.add(new HeightRow(where, topic, what, today, proposed));
  }

  private void height(Corner corner) {
    add(Topic.HEIGHT, "in the book state", corner.book(), null);
    add(Topic.HEIGHT, "by the balance of forces", corner.predicted(), null);
    if (corner.measured().isKnown()) {
      add(Topic.HEIGHT, "as measured, which outranks it", corner.measured(), null);
      add(Topic.HEIGHT, "unexplained (sag, wrong spring, load)", corner.rest(), null);
    }
    corner.lines().forEach(line -> add(Topic.HEIGHT, line.what(), null, line.lift()));
    if (moves(corner.bodyLift())) {
      add(Topic.HEIGHT, "blocks under the body", null, corner.bodyLift());
    }
    add(Topic.HEIGHT, "it stands at", corner.found(), corner.proposed());
    if (corner.aimed().isKnown()) {
      add(Topic.HEIGHT, "raised by", null, corner.lift());
      add(Topic.HEIGHT, "the sheet aims at", null, corner.aimed());
    }
    if (moves(corner.tireLift())) {
      add(Topic.HEIGHT, "beside it, raised by the tires", null, corner.tireLift());
    }
  }

  private static boolean moves(Quantity lift) {
    return !lift.isKnown() || lift.value() != 0;
  }

  private void fluid(FluidLoad fluid) {
    add(Topic.FLUID, "spring's force", fluid.forceBefore(), fluid.forceAfter());
    add(Topic.FLUID, "spring's share of the load", fluid.shareBefore(), fluid.shareAfter());
    add(Topic.FLUID, "pressure", fluid.pressureBefore(), fluid.pressureAfter());
    add(Topic.FLUID, "  least wanted", fluid.from(), fluid.from());
    add(Topic.FLUID, "  preferred", fluid.preferred(), fluid.preferred());
    add(Topic.FLUID, "  greatest allowed", fluid.to(), fluid.to());
    add(Topic.FLUID, "rate of the gas at the wheel", fluid.gasBefore(), fluid.gasAfter());
    add(Topic.FLUID, "ride frequency", fluid.frequencyBefore(), fluid.frequencyAfter());
    add(Topic.FLUID, "spring spacer that would bring it home", null, fluid.spacerWanted());
  }

  private void sensor(SensorRange sensor) {
    add(Topic.SENSOR, "height over the book's that it sees", null, sensor.height());
    add(Topic.SENSOR, "reading", null, sensor.reading());
    add(Topic.SENSOR, "range left above", null, sensor.above());
    add(Topic.SENSOR, "range left below", null, sensor.below());
  }

  private void travel(TravelLedger travel) {
    for (TravelLedger.Point point : TravelLedger.Point.values()) {
      Mark today = mark(travel.before(), point);
      Mark proposed = mark(travel.after(), point);
      if (today != null || proposed != null) {
        add(
            Topic.TRAVEL,
            point.words(),
            today == null ? null : today.rise(),
            proposed == null ? null : proposed.rise());
      }
    }
  }

  private static @Nullable Mark mark(List<Mark> marks, TravelLedger.Point point) {
    return marks.stream().filter(mark -> mark.what() == point).findFirst().orElse(null);
  }

  private void load(String place, AxleLoad load) {
    where = place;
    add(Topic.LOAD, "load", load.before(), load.after());
    add(Topic.LOAD, "rating", load.rating(), load.rating());
    add(Topic.LOAD, "left of the rating", null, load.left());
  }

  private void ground(Fact fact) {
    if (fact instanceof GroundRoom room) {
      add(Topic.GROUND, room.point() + " over the ground", room.before(), room.after());
    } else if (fact instanceof RampAngle ramp) {
      add(Topic.GROUND, ramp.angle(), ramp.before(), ramp.after());
    }
  }
}
