package trammel.book;

import trammel.fact.Vehicle;

/** Whether a condition can ever hold for a vehicle, by the names of vehicles in it alone. */
final class NamedVehicles {
  /** The component in which the vehicle on the sheet has its name. */
  private static final String NAME = "vehicle.vehicle";

  private NamedVehicles() {}

  /** False only where the condition is not met whatever else is so. */
  static boolean mayHold(Condition condition, String vehicle) {
    if (condition instanceof Condition.All all) {
      return all.parts().stream().allMatch(part -> mayHold(part, vehicle));
    } else if (condition instanceof Condition.Any any) {
      return any.parts().stream().anyMatch(part -> mayHold(part, vehicle));
    } else if (condition instanceof Condition.Some some) {
      return !some.fact().type().equals(Vehicle.class)
          || some.leaves().stream().allMatch(leaf -> mayHold(leaf, vehicle));
    } else if (condition instanceof Condition.Is is && is.term().component().name().equals(NAME)) {
      return is.names().contains(vehicle) != is.not();
    }
    return true;
  }
}
