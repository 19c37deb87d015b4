package trammel.derive;

import java.time.LocalDate;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.Consumer;
import trammel.build.Build;
import trammel.catalog.VehicleProfile;
import trammel.fact.Evidence;
import trammel.fact.Fact;

/**
 * Derives builds one after another, as a search for a remedy or a limit does: what the vehicle's
 * surveys say is worked out once for all that ask alike. The facts are those that each build would
 * have alone. For one thread at a time.
 */
public final class Derivations {
  /** Profiles at once: as given, and with what books assume, of a vehicle or two. */
  private static final int MOST = 4;

  private final LocalDate on;
  private final IdentityHashMap<VehicleProfile, Surveys> surveys = new IdentityHashMap<>();

  /**
   * @param on the day the builds are checked, for ages
   */
  public Derivations(LocalDate on) {
    this.on = on;
  }

  /** The facts of a build. */
  public List<Fact> facts(Build build) {
    return facts(build, some -> {});
  }

  /**
   * The facts of a build.
   *
   * @param told is told them in their order, on the thread that asks: some as soon as they are
   *     worked out where corners are surveyed, else all at once
   */
  public List<Fact> facts(Build build, Consumer<List<Fact>> told) {
    return List.copyOf(Derivation.whole(build, on, surveys(build.vehicle()), told).facts);
  }

  /** The facts of a build, and the same without what rule books assume. */
  public Evidence evidence(Build build) {
    List<Fact> facts = facts(build);
    return build.assumed().isEmpty()
        ? Evidence.of(facts)
        : new Evidence(facts, facts(build.withoutAssumed()), build.assumed());
  }

  /** How a build stands, what it carries and where its wheels may go. */
  public Ledgers ledgers(Build build) {
    return new Ledgers(new Derivation(build, on, surveys(build.vehicle())));
  }

  private Surveys surveys(VehicleProfile vehicle) {
    if (surveys.size() == MOST && !surveys.containsKey(vehicle)) {
      surveys.clear();
    }
    return surveys.computeIfAbsent(vehicle, Surveys::new);
  }
}
