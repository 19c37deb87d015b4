package trammel.build;

import java.util.List;
import java.util.Map;
import trammel.build.BuildSheet.FluidPressure;
import trammel.build.BuildSheet.Gap;
import trammel.build.BuildSheet.Inflation;
import trammel.build.BuildSheet.Measurements;
import trammel.catalog.AxleProfile;
import trammel.catalog.PartKind;
import trammel.catalog.PressureWindow;
import trammel.catalog.Support.Fluid;
import trammel.catalog.SuspensionPart.AirSpring;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Quantity;
import trammel.read.Problems;
import trammel.subject.Axle;
import trammel.subject.Position;

/** Finds measured pressures whose unit is mistaken, by what the vehicle's profile has. */
final class PressureUnits {
  private final VehicleProfile vehicle;
  private final Problems problems;

  PressureUnits(VehicleProfile vehicle, Problems problems) {
    this.vehicle = vehicle;
    this.problems = problems;
  }

  void check(Measurements measured) {
    for (FluidPressure pressure : measured.pressures()) {
      suspension(pressure.at(), pressure.pressure());
    }
    for (Gap gap : measured.gaps()) {
      Position.running().stream()
          .filter(position -> position.toString().equals(gap.at().where()))
          .forEach(position -> tire(position, gap.pressure()));
    }
  }

  /** What air springs are set to, by what their makers allow. */
  void check(List<Inflation> inflate, Map<Position, Equipment> proposed) {
    for (Inflation set : inflate) {
      List<Position> at = set.at().stream().flatMap(where -> where.positions().stream()).toList();
      List<AirSpring> there =
          at.stream()
              .flatMap(
                  position ->
                      proposed
                          .getOrDefault(position, Equipment.NONE)
                          .one(PartKind.AIR_SPRING, AirSpring.class)
                          .stream())
              .toList();
      if (at.isEmpty() || there.size() < at.size()) {
        problems.add(
            set.place(),
            "inflate: there is no air spring " + (at.isEmpty() ? "where nothing says" : "there"),
            "Name wheels or an axle that have one with the changes, or remove the line.");
      } else {
        window(there.get(0)).check(set.pressure(), problems);
      }
    }
  }

  private static PressureWindow window(AirSpring air) {
    return air.pressureTo().isKnown()
        ? new PressureWindow(
            "what " + air.number() + " is set to",
            air.pressureFrom().isKnown() ? air.pressureFrom().value() : 1,
            air.pressureTo().value())
        : PressureWindow.ANY;
  }

  /** The pressure of a ram or an air spring at a wheel. */
  void suspension(Position at, Quantity pressure) {
    if (at.axle().isEmpty()) {
      return;
    }
    Axle axle = at.axle().get();
    Fluid fluid = vehicle.axle(axle).support().fluid();
    PressureWindow window =
        fluid == null
            ? PressureWindow.ANY
            : PressureWindow.of("the window of the " + axle + " axle", fluid);
    window.check(pressure, problems);
  }

  private void tire(Position at, Quantity pressure) {
    if (at.axle().isEmpty()) {
      return;
    }
    AxleProfile axle = vehicle.axle(at.axle().get());
    if (axle.placard().isKnown()) {
      PressureWindow.ofTire("what tires of this axle are driven at", axle.placard())
          .check(pressure, problems);
    }
  }
}
