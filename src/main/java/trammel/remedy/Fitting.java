package trammel.remedy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.Listing;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.WheelPart.Tire;
import trammel.catalog.WheelPart.Wheel;
import trammel.subject.Position;
import trammel.subject.Side;

/** Fits parts of the catalog on a build, to see what they would do. */
final class Fitting {
  private final Build build;

  Fitting(Build build) {
    this.build = build;
  }

  /** Whether a part is listed for the vehicle and the axle, goes on, and is not there yet. */
  boolean suits(Part part, List<Position> at) {
    Listing listing = part.listing();
    boolean vehicle =
        listing.vehicles().isEmpty() || listing.vehicles().contains(build.vehicle().vehicle());
    boolean axle =
        listing.axle() == null
            || at.stream().allMatch(p -> p.axle().orElseThrow() == listing.axle());
    return vehicle
        && axle
        && listing.hand() != Side.RIGHT
        && !build.after(at.get(0)).all(part.kind()).contains(part)
        && mounts(part, at.get(0));
  }

  /** Whether rim codes and bolt patterns agree, without which a trial is a waste of time. */
  private boolean mounts(Part part, Position position) {
    Equipment now = build.after(position);
    if (part instanceof Tire tire) {
      return now.one(PartKind.WHEEL, Wheel.class)
          .map(wheel -> wheel.size().code().equals(tire.designation().rim()))
          .orElse(true);
    }
    if (part instanceof Wheel wheel) {
      boolean onHub =
          !now.all(PartKind.WHEEL_SPACER).isEmpty()
              || wheel
                  .boltPattern()
                  .matches(build.vehicle().axle(position.axle().orElseThrow()).hub().boltPattern());
      return onHub
          && now.one(PartKind.TIRE, Tire.class)
              .map(tire -> wheel.size().code().equals(tire.designation().rim()))
              .orElse(true);
    }
    return true;
  }

  /** The build with parts fitted at wheels, handed ones at their own side. */
  Build fitted(List<Part> parts, List<Position> at) {
    Map<Position, Equipment> proposed = new EnumMap<>(build.proposed());
    for (Position position : at) {
      for (Part part : parts) {
        Side hand = part.listing().hand();
        if (hand == null || position.side().filter(hand::equals).isPresent()) {
          proposed.compute(
              position, (key, now) -> instead(now == null ? Equipment.NONE : now, part));
        }
      }
    }
    return build.proposing(proposed);
  }

  /** A spring spacer is tried in the place of another: no remedy stacks them. */
  private static Equipment instead(Equipment now, Part part) {
    return (part.kind() == PartKind.SPRING_SPACER ? now.without(PartKind.SPRING_SPACER) : now)
        .with(part);
  }
}
