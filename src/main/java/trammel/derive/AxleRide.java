package trammel.derive;

import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * How high a beam axle's frame stands over it, against the state it was surveyed in: the mean of
 * both sides.
 *
 * @param found lift as the vehicle stands today
 * @param proposed lift with the changes
 * @param change what the changes bring
 */
record AxleRide(Quantity found, Quantity proposed, Quantity change) {
  private static final Formula MEAN =
      new Formula("lift over the axle", "mean of both sides", "definition");

  /** Lift (mm) up to which the trade fits without measuring links and shafts. Common practice. */
  static final double USUALLY_UNMEASURED = 40;

  static AxleRide of(Derivation derivation, Axle axle) {
    HeightFacts heights = derivation.heights();
    Position left = Position.of(axle, Side.LEFT);
    Position right = Position.of(axle, Side.RIGHT);
    RideChange leftRide = derivation.travel(left);
    RideChange rightRide = derivation.travel(right);
    return new AxleRide(
        MEAN.linear(-0.5, leftRide.found(), -0.5, rightRide.found()),
        MEAN.linear(-0.5, leftRide.proposed(), -0.5, rightRide.proposed()),
        MEAN.linear(0.5, heights.lift(left), 0.5, heights.lift(right)));
  }

  /** Whether the changes raise or lower it, or may. */
  boolean moved() {
    return !change.isKnown() || change.value() != 0;
  }

  /** Whether it may be raised by more than the trade fits without measuring. */
  boolean wantsMeasuring() {
    return !change.isKnown() || change.value() + change.expanded() > USUALLY_UNMEASURED;
  }
}
