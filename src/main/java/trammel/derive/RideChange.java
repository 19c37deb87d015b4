package trammel.derive;

import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * Where a wheel stands in its suspension, against the state its axle was surveyed in: travel is the
 * rise of the wheel's center against the body, so a lift of d is −d.
 *
 * @param surveyed as surveyed, which is 0
 * @param found as the vehicle stands today
 * @param proposed with the changes
 */
record RideChange(Quantity surveyed, Quantity found, Quantity proposed) {
  private static final Formula FOUND =
      new Formula(
          "travel as found",
          "book height + blocks under the body − height as found",
          "definition: blocks raise the fender and move no wheel");
  private static final Formula SINCE =
      new Formula("travel as found", "−what raises it since book, by the balance", "definition");
  private static final Formula PROPOSED =
      new Formula("travel as proposed", "travel as found − suspension lift", "definition");
  private static final Quantity NONE = Constants.mm(0).called("travel as surveyed");

  static RideChange of(Derivation derivation, Position position) {
    HeightFacts heights = derivation.heights();
    Quantity book = derivation.build.vehicle().axle(position.axle().orElseThrow()).fenderHeight();
    Quantity found =
        heights
            .measured(position)
            .map(height -> FOUND.linear(1, book, 1, heights.blocksSinceBook(position), -1, height))
            .orElseGet(() -> SINCE.linear(-1, heights.suspensionSinceBook(position)));
    return new RideChange(NONE, found, PROPOSED.linear(1, found, -1, heights.lift(position)));
  }
}
