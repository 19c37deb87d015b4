package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.fact.LiftStack;
import trammel.fact.Standing;
import trammel.fact.TravelBudget;
import trammel.geometry.HardPoint;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What is left of each wheel's travel where the changes touch it. */
final class TravelFacts {
  /** What moves a wheel in its travel, or an end of it. */
  static final PartKind[] TOUCHING = {
    PartKind.SPRING,
    PartKind.AIR_SPRING,
    PartKind.SPRING_SPACER,
    PartKind.STRUT_TOP_SPACER,
    PartKind.DAMPER,
    PartKind.DAMPER_BRACKET,
    PartKind.BUMP_STOP,
    PartKind.DROOP_STRAP,
    PartKind.COIL_RETAINER,
    PartKind.SWAY_BAR_LINK,
    PartKind.FLEXIBLE_LINE
  };

  private static final Formula DROOP =
      new Formula("droop left", "hang − lift over book height", "definition");
  private static final Formula BUMP =
      new Formula("bump left", "rise at the stop + lift over book height", "definition");
  private static final Formula SHARE =
      new Formula("droop left of what it had", "droop left / droop left today", "definition");
  private static final Formula ADDED =
      new Formula("droop added", "hang as proposed − hang today", "definition");

  private final Derivation derivation;
  private final Build build;

  TravelFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    DamperFacts dampers = new DamperFacts(derivation);
    CoilFacts coils = new CoilFacts(derivation);
    SwayBarFacts swayBars = new SwayBarFacts(derivation);
    LineFacts lines = new LineFacts(derivation);
    for (Position position : Position.running()) {
      Standings standings = new Standings(derivation, position);
      boolean raised = !standings.lift().isKnown() || standings.lift().value() != 0;
      if (raised || build.changes(position, TOUCHING)) {
        budget(position, standings);
        stack(position, standings);
        dampers.add(position, standings);
        coils.add(position, standings);
        swayBars.add(position, standings);
        lines.add(position, standings);
      }
    }
    lines.brakeValve();
    new UnderbodyFacts(derivation).add();
  }

  /** Droop left from where the vehicle stands. */
  private static Quantity droopLeft(CornerTravel travel, Quantity lift) {
    return DROOP.linear(1, travel.droop().hang(), -1, lift);
  }

  private void budget(Position position, Standings standings) {
    CornerTravel before = standings.before();
    CornerTravel after = standings.after();
    Quantity had = droopLeft(before, standings.liftBefore());
    Quantity left = droopLeft(after, standings.liftAfter());
    DroopEnd end = after.droop().end();
    derivation.facts.add(
        new TravelBudget(
            Subject.of(position),
            Standing.ofChange(falls(had, left)),
            after.numbers(TOUCHING),
            standings.lift(),
            BUMP.linear(1, before.stopRise(), 1, standings.liftBefore()),
            BUMP.linear(1, after.stopRise(), 1, standings.liftAfter()),
            had,
            left,
            SHARE.quotient(RATIO, 1, left, had),
            end.words(),
            end == DroopEnd.DAMPER || end == DroopEnd.UNKNOWN));
  }

  private static boolean falls(Quantity before, Quantity after) {
    return !before.isKnown() || !after.isKnown() || after.value() < before.value();
  }

  private void stack(Position position, Standings standings) {
    AxleProfile axle = standings.after().axle();
    Droop droop = standings.after().droop();
    Quantity added = ADDED.linear(1, droop.hang(), -1, standings.before().droop().hang());
    Quantity left = droopLeft(standings.after(), standings.liftAfter());
    boolean surveyed =
        axle.linkage().halfShaft() != null
            && axle.linkage().points().size() == HardPoint.values().length;
    boolean worse =
        !added.isKnown()
            || added.value() > 0
            || falls(droopLeft(standings.before(), standings.liftBefore()), left);
    derivation.facts.add(
        new LiftStack(
            Subject.of(position),
            Standing.ofChange(worse),
            standings.after().numbers(TOUCHING),
            together(position),
            standings.liftAfter(),
            left,
            droop.end().words(),
            added,
            axle.layout().beam() || surveyed ? Decision.MET : Decision.ABSENT));
  }

  /** What raises the corner or lets its wheel hang lower, in words. */
  private String together(Position position) {
    List<String> numbers = new ArrayList<>();
    for (Build.Line line : build.lines()) {
      Part part = line.part();
      boolean raises =
          switch (part.kind()) {
            case SPRING,
                AIR_SPRING,
                SPRING_SPACER,
                STRUT_TOP_SPACER,
                DAMPER,
                DAMPER_BRACKET,
                LEAF_BLOCK,
                SHACKLE ->
                true;
            default -> false;
          };
      if (raises && line.at().contains(position)) {
        numbers.add(part.number());
      }
    }
    return numbers.isEmpty() ? "the raise" : String.join(" with ", numbers);
  }

  /** A length that is not below nothing. */
  static Quantity atLeastNothing(Quantity length) {
    return length.isKnown() && length.value() <= 0
        ? Quantity.exact(LENGTH, 0).called(length.name())
        : length;
  }

  /** Whether something certainly stays as it is. */
  static boolean stays(Quantity change) {
    return change.atLeast(Constants.mm(0)).isMet() && change.atMost(Constants.mm(0)).isMet();
  }
}
