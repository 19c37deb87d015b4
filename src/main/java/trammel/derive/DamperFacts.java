package trammel.derive;

import java.util.Optional;
import trammel.build.Build;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.Damper;
import trammel.catalog.SuspensionPart.DamperBracket;
import trammel.fact.BracketMatch;
import trammel.fact.DamperReach;
import trammel.fact.Standing;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/**
 * Dampers against the travel of their wheels. Springs and their spacers move no damper; a bracket
 * or a plate above the strut brings its ends together.
 */
final class DamperFacts {
  private static final PartKind[] MOVING = {
    PartKind.DAMPER,
    PartKind.DAMPER_BRACKET,
    PartKind.STRUT_TOP_SPACER,
    PartKind.DROOP_STRAP,
    PartKind.BUMP_STOP
  };

  private static final Formula OPEN_ROOM =
      new Formula(
          "damper left to pull out",
          "open length − length at the end of droop",
          "shared/reference/geometry.md, section 6: extended length ≥ length at full droop");
  private static final Formula CLOSED_ROOM =
      new Formula(
          "damper left to push in",
          "length at the crushed stop − closed length",
          "shared/reference/geometry.md, section 6: closed length + margin ≤ length at the crushed"
              + " stop");
  private static final Formula LIFTED =
      new Formula("what the lift moves the damper", "motion ratio · lift", "definition");
  private static final Formula WANTED =
      new Formula(
          "shift wanted",
          "motion ratio · lift − plate",
          "own derivation: a plate above the strut has moved the damper already");
  private static final Formula OFF =
      new Formula("bracket off the lift", "|shift − shift wanted|", "definition");

  private final Derivation derivation;
  private final Build build;

  DamperFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add(Position position, Standings standings) {
    CornerTravel travel = standings.after();
    Quantity longest = travel.damperLength(CornerTravel.rise(travel.stopOrStrap().hang()));
    Quantity shortest = travel.damperLength(travel.flatRise());
    derivation.facts.add(
        new DamperReach(
            Subject.of(position),
            Standing.ofChange(build.changes(position, MOVING)),
            travel.numbers(MOVING),
            travel.damper().map(Damper::number).orElse(""),
            travel.openLength(),
            longest,
            OPEN_ROOM.linear(1, travel.openLength(), -1, longest),
            travel.hungByTheDamper(),
            travel.closedLength(),
            shortest,
            CLOSED_ROOM.linear(1, shortest, -1, travel.closedLength())));
    Optional<DamperBracket> bracket =
        travel.equipment().one(PartKind.DAMPER_BRACKET, DamperBracket.class);
    bracket.ifPresent(fitted -> bracket(position, standings, fitted));
  }

  private void bracket(Position position, Standings standings, DamperBracket bracket) {
    CornerTravel travel = standings.after();
    Quantity lifted =
        LIFTED.product(
            Dimension.LENGTH,
            1,
            travel.axle().support().damper().motionRatio(),
            standings.liftAfter());
    Quantity wanted = WANTED.linear(1, lifted, -1, travel.platesAdded());
    boolean over =
        bracket.shift().isKnown() && wanted.isKnown() && bracket.shift().value() > wanted.value();
    boolean touched =
        build.changes(position, PartKind.DAMPER_BRACKET) || !TravelFacts.stays(standings.lift());
    derivation.facts.add(
        new BracketMatch(
            Subject.of(position),
            Standing.ofChange(touched),
            travel.numbers(PartKind.DAMPER_BRACKET),
            bracket.number(),
            bracket.shift(),
            wanted,
            OFF.linear(over ? 1 : -1, bracket.shift(), over ? -1 : 1, wanted)));
  }
}
