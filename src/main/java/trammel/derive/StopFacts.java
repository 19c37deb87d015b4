package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.Optional;
import trammel.build.Build;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.BumpStop;
import trammel.fact.Clearance;
import trammel.fact.Standing;
import trammel.fact.StopNeed;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Station;
import trammel.subject.Subject;

/**
 * Bump stops against a larger tire under a raised body. A lift leaves the stop where it is: the
 * wheel still rises as far into the fender as it did.
 */
final class StopFacts {
  private static final Formula CRUSH =
      new Formula("crush of the stop", "rise at the crushed stop − rise at the stop", "definition");
  private static final Formula GAP =
      new Formula(
          "gap at the fender with the stop crushed",
          "gap on the bump stop − c_z · crush",
          "StationModel: coefficients by station");
  private static final Formula AT_THE_WHEEL =
      new Formula("wheel too high by", "− gap / c_z", "StationModel: coefficients by station");
  private static final Formula LONGER =
      new Formula(
          "stop too short by", "wheel too high by · motion ratio of the stop", "definition");

  private final Derivation derivation;
  private final Build build;

  StopFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Position position : Position.running()) {
      Quantity lift = derivation.heights().lift(position);
      Quantity radius = derivation.after(position).radius;
      Quantity before = derivation.before(position).radius;
      boolean larger =
          build.changes(position, PartKind.TIRE)
              && (!radius.isKnown() || !before.isKnown() || radius.value() > before.value());
      if (larger && (!lift.isKnown() || lift.value() > 0)) {
        need(position);
      }
    }
  }

  private void need(Position position) {
    CornerTravel travel = derivation.ends(position, Stage.PROPOSED);
    Subject arch = Subject.of(position, Station.ARCH.toString());
    Optional<Clearance> clearance =
        derivation.facts.stream()
            .filter(Clearance.class::isInstance)
            .map(Clearance.class::cast)
            .filter(fact -> fact.subject().equals(arch))
            .findFirst();
    // A profile that says there is no lip has no such gap.
    clearance.ifPresent(fact -> need(position, travel, fact.gap()));
  }

  private void need(Position position, CornerTravel travel, Quantity onTheStop) {
    double perBump = StationModel.of(Station.ARCH).perBump();
    Quantity crush = CRUSH.linear(1, travel.flatRise(), -1, travel.stopRise());
    Quantity gap = GAP.linear(1, onTheStop, -perBump, crush);
    Quantity tooHigh = AT_THE_WHEEL.linear(-1 / perBump, gap);
    derivation.facts.add(
        new StopNeed(
            Subject.of(position),
            Standing.WORSE_OR_NEW,
            travel.numbers(PartKind.BUMP_STOP, PartKind.TIRE),
            travel
                .equipment()
                .one(PartKind.BUMP_STOP, BumpStop.class)
                .map(BumpStop::number)
                .orElse(""),
            gap,
            LONGER.product(LENGTH, 1, tooHigh, travel.stopRatio())));
  }
}
