package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import trammel.build.Equipment;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AlignmentSpec.CasterFrom;
import trammel.catalog.PartKind;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/** What the body's change of attitude adds to caster that is told from the ground. */
final class Rake {
  private static final Formula RAKE =
      new Formula(
          "caster by rake",
          "atan((front raised − rear raised) / wheelbase)",
          "own derivation; shared/reference/lift-and-alignment.csv: frame angle adds to caster");
  private static final Formula FRAME =
      new Formula(
          "slope of the frame since the survey",
          "atan((front raised − rear raised) / wheelbase)",
          "own derivation: positive with the front up");
  private static final Formula RAISED =
      new Formula("raised at the axle", "suspension lift + tire lift", "definition");

  private Rake() {}

  /**
   * Caster added (degrees) by raising one end more than the other: positive where the front is
   * raised more. Nothing, where the maker tells caster from the frame.
   */
  static Quantity of(Derivation derivation, AlignmentSpec spec, Side side) {
    if (spec.casterFrom() == CasterFrom.FRAME) {
      return Constants.degrees(0).called("no rake: caster is told from the frame");
    }
    Quantity front = raise(derivation, Position.of(Axle.FRONT, side));
    Quantity rear = raise(derivation, Position.of(Axle.REAR, side));
    return slope(RAKE, front, rear, derivation.build.vehicle().wheelbase());
  }

  /**
   * How far the frame's front has come up against its rear since the vehicle was surveyed
   * (degrees), by suspension and tires.
   */
  static Quantity sinceSurvey(Derivation derivation) {
    return slope(
        FRAME,
        sinceSurvey(derivation, Axle.FRONT),
        sinceSurvey(derivation, Axle.REAR),
        derivation.build.vehicle().wheelbase());
  }

  private static Quantity sinceSurvey(Derivation derivation, Axle axle) {
    Position left = Position.of(axle, Side.LEFT);
    Quantity lift = derivation.ride(axle).proposed();
    Equipment book = derivation.build.bookAt(left);
    return derivation.build.after(left).sameAs(book, PartKind.TIRE)
        ? lift
        : RAISED.linear(
            1,
            lift,
            1,
            derivation.after(left).radius,
            -1,
            new WheelEnd(book, derivation.figures).radius);
  }

  private static Quantity slope(
      Formula formula, Quantity front, Quantity rear, Quantity wheelbase) {
    double difference = known(front) - known(rear);
    double base = wheelbase.isKnown() ? wheelbase.value() : Double.NaN;
    double slope = Math.toDegrees(base / (base * base + difference * difference));
    return formula.of(
        ANGLE,
        Math.toDegrees(Math.atan2(difference, base)),
        new double[] {slope, -slope, -slope * difference / base},
        front,
        rear,
        wheelbase);
  }

  private static double known(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : Double.NaN;
  }

  private static Quantity raise(Derivation derivation, Position position) {
    Quantity lift = derivation.heights().lift(position);
    return derivation.build.changes(position, PartKind.TIRE)
        ? RAISED.linear(
            1, lift, 1, derivation.after(position).radius, -1, derivation.before(position).radius)
        : lift;
  }
}
