package trammel.derive;

import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/** Where the ends of one corner's travel lie today and as proposed, and where it stands in them. */
final class Standings {
  private static final Formula LIFT =
      new Formula(
          "lift over the book state", "−travel", "definition: a lift of d is a travel of −d");

  private final CornerTravel before;
  private final CornerTravel after;
  private final Quantity liftBefore;
  private final Quantity lift;
  private final Quantity liftAfter;

  Standings(Derivation derivation, Position position) {
    before = derivation.ends(position, Stage.FOUND);
    after = derivation.ends(position, Stage.PROPOSED);
    RideChange ride = derivation.travel(position);
    liftBefore = LIFT.linear(-1, ride.found());
    lift = derivation.heights().lift(position);
    liftAfter = LIFT.linear(-1, ride.proposed());
  }

  CornerTravel before() {
    return before;
  }

  CornerTravel after() {
    return after;
  }

  /** What parts that are fitted already raise the corner over the book's height. */
  Quantity liftBefore() {
    return liftBefore;
  }

  /** What the changes raise it by. */
  Quantity lift() {
    return lift;
  }

  /** How far it stands over the book's height as proposed. */
  Quantity liftAfter() {
    return liftAfter;
  }
}
