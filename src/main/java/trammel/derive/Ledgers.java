package trammel.derive;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.build.Build;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.subject.Position;

/**
 * How a build stands, what it carries and where its wheels may go, without any linkage or gap,
 * which are most of the work of {@link Derivation#facts}. What the ledgers share is worked out once
 * and is one source of error in all.
 */
public final class Ledgers {
  private final Derivation derivation;

  Ledgers(Derivation derivation) {
    this.derivation = derivation;
  }

  /**
   * The ledgers of a build.
   *
   * @param on the day it is checked, for ages
   */
  public static Ledgers of(Build build, LocalDate on) {
    return new Derivations(on).ledgers(build);
  }

  /** Heights, loads and pressures of both axles. */
  public HeightLedger heights() {
    return HeightLedger.of(derivation);
  }

  /** The travel budgets of the four corners. */
  public List<TravelLedger> travel() {
    return TravelLedger.of(derivation);
  }

  /** Rooms over the ground and angles under the vehicle. */
  public List<Fact> underbody() {
    Derivation apart = derivation.apart();
    new UnderbodyFacts(apart).add();
    return List.copyOf(apart.facts);
  }

  /** How spring and fluid share the load of a corner, where fluid has any. */
  public Optional<FluidLoad> fluidLoad(Position position) {
    return new FluidFacts(derivation).load(position);
  }
}
