package trammel.derive;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.LiftClaim;
import trammel.catalog.SuspensionPart.Spring;
import trammel.fact.ClaimedLift;
import trammel.fact.Standing;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Lifts that makers claim, against the load of the axle and the balance of forces. */
final class LiftClaims {
  private static final Formula OFF =
      new Formula("axle load against the claim's", "difference of the axle loads", "definition");
  private static final Formula LONGER =
      new Formula("longer under its load", "new − old loaded length", "definition");
  private static final Formula APART =
      new Formula("claim against balance", "difference of the lifts", "definition");

  private final Derivation derivation;
  private final Build build;
  private final HeightFacts heights;

  LiftClaims(Derivation derivation, HeightFacts heights) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.heights = heights;
  }

  void add() {
    for (Axle axle : Axle.values()) {
      for (Build.Line line : build.lines()) {
        List<Position> here =
            line.at().stream()
                .filter(position -> position.axle().filter(axle::equals).isPresent())
                .toList();
        LiftClaim claim = here.isEmpty() ? null : claim(line.part());
        if (claim != null) {
          claim(axle, line.part(), claim, here);
        }
      }
    }
  }

  private void claim(Axle axle, Part part, LiftClaim claim, List<Position> here) {
    Position position = here.get(0);
    Quantity load = derivation.loads().axle(axle, Stage.PROPOSED);
    Quantity balance = atLoad(position, claim.axleLoad());
    derivation.facts.add(
        new ClaimedLift(
            Subject.of(axle, part.number()),
            Standing.WORSE_OR_NEW,
            List.of(part.number()),
            part.number(),
            claim.lift(),
            claim.axleLoad(),
            load,
            difference(OFF, load, claim.axleLoad()),
            balance,
            difference(APART, balance, claim.lift()),
            startExplained(here)));
  }

  /** The rest between measured and predicted height may be sag, or a load that nobody has named. */
  private Decision startExplained(List<Position> here) {
    boolean open =
        here.stream()
            .filter(heights.ledger()::goesByClaim)
            .map(heights::rest)
            .anyMatch(rest -> rest.isKnown() && Math.abs(rest.value()) > rest.expanded());
    return open ? Decision.ABSENT : Decision.MET;
  }

  /**
   * Where the spring of the changes stands over book height under another axle load, by the balance
   * (mm): what its maker's claim, stated at that load, ought to be.
   */
  private Quantity atLoad(Position position, Quantity axleLoad) {
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    Optional<Spring> book = build.bookAt(position).one(PartKind.SPRING, Spring.class);
    Optional<Spring> then = build.after(position).one(PartKind.SPRING, Spring.class);
    if (axle.heightControlled()
        || book.isEmpty()
        || then.isEmpty()
        || book.get().leaf()
        || then.get().leaf()) {
      return Figures.missing(
          LENGTH,
          "lift by the balance",
          axle.heightControlled()
              ? "the set point fixes the height"
              : "only coils whose rate and length are known are balanced",
          Instrument.TAPE,
          "measure hub to fender before and after");
    }
    Quantity bookForce =
        PassiveLedger.ALONG.quotient(
            FORCE, 1, derivation.loads().sprung(position, Stage.BOOK), axle.springMotionRatio());
    Quantity force =
        PassiveLedger.ALONG.quotient(
            FORCE, 1, derivation.loads().sprung(position, axleLoad), axle.springMotionRatio());
    return PassiveLedger.BY_SPRING.quotient(
        LENGTH,
        1,
        LONGER.linear(
            1,
            PassiveLedger.length(then.get(), force),
            -1,
            PassiveLedger.length(book.get(), bookForce)),
        axle.springMotionRatio());
  }

  private static Quantity difference(Formula formula, Quantity one, Quantity other) {
    boolean over = one.isKnown() && other.isKnown() && one.value() >= other.value();
    return formula.linear(over ? 1 : -1, one, over ? -1 : 1, other);
  }

  /** A spring's claim; what a spacer adds does not depend on the load. */
  private static @Nullable LiftClaim claim(Part part) {
    return part instanceof Spring spring ? spring.claims() : null;
  }
}
