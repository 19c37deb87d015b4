package trammel.compare;

import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Subject;

/** Pairs of made-up predictions and readings. */
final class Predicted {
  private static final Formula SUM = new Formula("prediction", "Σ a·x", "own");

  private Predicted() {}

  static Quantity input(String name, double value, double expanded) {
    return Quantity.read(
        name,
        Dimension.LENGTH,
        value,
        expanded,
        new Input("made-up", name, 1, "own", Instrument.STATED));
  }

  static Quantity sum(double[] partials, Quantity... inputs) {
    return SUM.linear(partials, inputs);
  }

  static Pair pair(Quantity predicted, double measured, double expanded) {
    return new Pair(
        Kind.HEIGHT,
        Subject.parse("front-left"),
        "",
        input("reading", measured, expanded),
        predicted);
  }
}
