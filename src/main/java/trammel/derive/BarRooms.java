package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.BarRoom;
import trammel.catalog.SurveyPoint;
import trammel.geometry.LinkChange;
import trammel.geometry.PanhardBar;
import trammel.geometry.Rods;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Side;

/** What a panhard bar leaves to what it may meet, over the axle's travel. */
final class BarRooms {
  private static final Formula ROOM =
      new Formula("gap", "distance of the axes − both radii", "definition");
  private static final int STEPS = 12;

  private final Variables variables;
  private final AxleProfile profile;

  BarRooms(Variables variables, AxleProfile profile) {
    this.variables = variables;
    this.profile = profile;
  }

  /**
   * The room to one thing.
   *
   * @param pose in which it is least, in words; empty where it is not known
   */
  record Room(String obstacle, Quantity gap, String pose) {}

  /** The room to a thing; empty where the bar reaches nowhere over the travel. */
  Optional<Room> of(BarRoom room, PanhardBar<Gradient> bar, LinkChange<Gradient> change) {
    Optional<Quantity> missing = missing(room);
    if (missing.isPresent()) {
      Quantity unknown = Quantity.absent(LENGTH, Variables.absence(missing.get()));
      return Optional.of(new Room(room.obstacle(), unknown, ""));
    }
    @Nullable Rods closest = null;
    double where = 0;
    double low = -profile.bumpTravel().value();
    double high = profile.droopTravel().value();
    Vector3D from = left(room.from());
    Vector3D to = left(room.to());
    for (int step = 0; step <= STEPS; step++) {
      double at = low + (high - low) * step / STEPS;
      Optional<Rods> rods =
          ends(bar, change, variables.constant(at), room.onAxle())
              .map(e -> Rods.closest(e.get(0).toVector3D(), e.get(1).toVector3D(), from, to));
      if (rods.isPresent() && (closest == null || rods.get().distance() < closest.distance())) {
        closest = rods.get();
        where = at;
      }
    }
    if (closest == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Room(
            room.obstacle(),
            gap(room, bar, change, closest, where),
            where <= low + 1 ? "on the bump stop" : where >= high - 1 ? "hanging" : "in between"));
  }

  /** Both ends of the bar at a lift: against the body, or against the axle. */
  private Optional<List<FieldVector3D<Gradient>>> ends(
      PanhardBar<Gradient> bar, LinkChange<Gradient> change, Gradient at, boolean onAxle) {
    return bar.shift(at, change)
        .map(
            shift -> {
              FieldVector3D<Gradient> axleMove =
                  new FieldVector3D<>(variables.constant(0), shift, at.negate());
              FieldVector3D<Gradient> frame = up(bar.frameEnd(), change.frameEndRaised());
              FieldVector3D<Gradient> end = up(bar.axleEnd(), change.axleEndRaised());
              return onAxle
                  ? List.of(frame.subtract(axleMove), end)
                  : List.of(frame, end.add(axleMove));
            });
  }

  private FieldVector3D<Gradient> up(FieldVector3D<Gradient> point, Gradient by) {
    return new FieldVector3D<>(point.getX(), point.getY(), point.getZ().add(by));
  }

  private Quantity gap(
      BarRoom room,
      PanhardBar<Gradient> bar,
      LinkChange<Gradient> change,
      Rods closest,
      double where) {
    List<FieldVector3D<Gradient>> ends =
        ends(bar, change, variables.constant(where), room.onAxle()).orElseThrow();
    FieldVector3D<Gradient> on =
        ends.get(0).scalarMultiply(1 - closest.firstShare()).add(closest.firstShare(), ends.get(1));
    double distance = closest.distance();
    Vector3D unit =
        distance > 0 ? closest.onFirst().subtract(closest.onSecond()).normalize() : Vector3D.PLUS_K;
    Gradient along =
        on.getX()
            .multiply(unit.getX())
            .add(on.getY().multiply(unit.getY()))
            .add(on.getZ().multiply(unit.getZ()));
    Quantity bars = variables.quantity(ROOM, LENGTH, along);
    double share = closest.secondShare();
    double outFrom = room.from().side() == Side.RIGHT ? -1 : 1;
    double outTo = room.to().side() == Side.RIGHT ? -1 : 1;
    return ROOM.of(
        LENGTH,
        distance - room.radius().value(),
        new double[] {
          1,
          -unit.getX() * (1 - share),
          -unit.getY() * (1 - share) * outFrom,
          -unit.getZ() * (1 - share),
          -unit.getX() * share,
          -unit.getY() * share * outTo,
          -unit.getZ() * share,
          -1
        },
        bars,
        room.from().fore(),
        room.from().out(),
        room.from().up(),
        room.to().fore(),
        room.to().out(),
        room.to().up(),
        room.radius());
  }

  private Optional<Quantity> missing(BarRoom room) {
    return Stream.of(
            profile.bumpTravel(),
            profile.droopTravel(),
            room.radius(),
            room.from().fore(),
            room.from().out(),
            room.from().up(),
            room.to().fore(),
            room.to().out(),
            room.to().up())
        .filter(quantity -> !quantity.isKnown())
        .findFirst();
  }

  private static Vector3D left(SurveyPoint point) {
    double out = point.out().value();
    return new Vector3D(
        point.fore().value(), point.side() == Side.RIGHT ? -out : out, point.up().value());
  }
}
