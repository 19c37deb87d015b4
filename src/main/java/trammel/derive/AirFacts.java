package trammel.derive;

import java.util.List;
import trammel.fact.AirSpringLoad;
import trammel.fact.Standing;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What air springs carry with the changes. */
final class AirFacts {
  private final Derivation derivation;
  private final HeightFacts heights;

  AirFacts(Derivation derivation) {
    this.derivation = derivation;
    this.heights = derivation.heights();
  }

  void add() {
    Position.running().forEach(this::add);
  }

  private void add(Position position) {
    AirCorner corner = new AirCorner(derivation.build, position);
    corner
        .fitted(Stage.PROPOSED)
        .ifPresent(
            air -> {
              double found = number(heights.suspensionSinceBook(position));
              Quantity lift = heights.lift(position);
              double over = found + number(lift);
              derivation.facts.add(
                  new AirSpringLoad(
                      Subject.of(position, "air-spring"),
                      Standing.ofChange(corner.changes() || derivation.loads().changed()),
                      List.of(air.number()),
                      air.number(),
                      corner.pressure(Stage.PROPOSED, found, over),
                      air.pressureFrom(),
                      air.pressureTo(),
                      corner.part(Stage.PROPOSED, found, over),
                      corner.rate(Stage.PROPOSED, found, over),
                      lift));
            });
  }

  private static double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : 0;
  }
}
