package trammel.derive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.Part;
import trammel.catalog.SuspensionPart.LiftClaim;
import trammel.catalog.SuspensionPart.Spring;
import trammel.fact.ClaimedLift;
import trammel.fact.Standing;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Lifts that makers claim, against the load of the axle and the balance of forces. */
final class LiftClaims {
  private static final Formula OFF =
      new Formula("axle load against the claim's", "difference of the axle loads", "definition");
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
          claim(axle, line.part(), claim, here.get(0));
        }
      }
    }
  }

  private void claim(Axle axle, Part part, LiftClaim claim, Position position) {
    Quantity load = derivation.loads().axle(axle, Stage.PROPOSED);
    Quantity balance = heights.ledger().atLoad(position, claim.axleLoad());
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
            difference(APART, balance, claim.lift())));
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
