package trammel.build;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.build.BuildSheet.Change;
import trammel.catalog.AxleProfile;
import trammel.catalog.AxleProfile.Springs;
import trammel.catalog.Part;
import trammel.catalog.SuspensionPart.PanhardBracket;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Quantity;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.subject.Position;

/** What a sheet sets rather than buys: heights of a height control or torsion bars, holes. */
final class Settings {
  private final Problems problems;
  private final Map<Position, Quantity> raised = new EnumMap<>(Position.class);

  Settings(Problems problems) {
    this.problems = problems;
  }

  /** How much higher each wheel is set. */
  Map<Position, Quantity> raised() {
    return Map.copyOf(raised);
  }

  /** The hole of a bracket that a change names; null where it names none, or one it has not. */
  @Nullable String hole(Part part, Change change) {
    if (change.hole() == null) {
      return null;
    }
    List<String> names =
        part instanceof PanhardBracket bracket
            ? bracket.holes().stream().map(PanhardBracket.Hole::name).toList()
            : List.of();
    if (names.isEmpty()) {
      problems.add(
          change.place(),
          "hole: " + part.number() + " has no holes to choose from",
          "Remove the hole.");
      return null;
    }
    if (!names.contains(change.hole())) {
      problems.add(
          change.place(),
          "hole: " + part.number() + " has no hole called " + Words.quoted(change.hole()),
          Words.didYouMean(change.hole(), names, "Expected " + Words.anyOf(names) + "."));
      return null;
    }
    return change.hole();
  }

  /** Notes what a change sets, where the vehicle can be set so. */
  void raise(Change change, List<Position> at, VehicleProfile vehicle) {
    if (at.isEmpty()) {
      problems.add(
          change.place(), "raise: nothing says where", "Add at: front, rear or one wheel.");
    }
    for (Position position : at) {
      boolean settable = position.axle().map(axle -> settable(vehicle.axle(axle))).orElse(false);
      String place = position.toString().replace('-', ' ');
      if (!settable) {
        problems.add(
            change.place(),
            "raise: the " + place + " has neither a height control nor torsion bars",
            "Raise it by parts (add: …), or correct where.");
      } else if (raised.put(position, change.raise()) != null) {
        problems.add(
            change.place(),
            "raise: the " + place + " is raised twice",
            "Write the whole of it in one line.");
      }
    }
  }

  private static boolean settable(AxleProfile axle) {
    return axle.heightControlled() || axle.springs() == Springs.TORSION_BAR;
  }
}
