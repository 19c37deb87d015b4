package trammel.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.drools.core.common.InternalWorkingMemory;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AgendaFilter;
import trammel.book.FactSet;
import trammel.fact.Fact;

/**
 * A judgement in the making: facts are heard as they come, and judged when all are told. For one
 * thread; close it when done.
 */
final class Hearing implements AutoCloseable {
  /** Matches that one fact may reasonably cause, so that a rule without end is noticed. */
  private static final int MATCHES_PER_FACT = 200;

  /** Rounds of a second each: far longer than any check takes. */
  private static final int PATIENCE = 20;

  private static final Watchdog WATCHDOG = new Watchdog(1000);

  private final KieSession session;
  private final Set<Class<?>> read;
  private final List<Fact> heard = new ArrayList<>();

  /**
   * @param read facts that some rule has a condition on; the engine need not hear of others
   */
  Hearing(KieSession session, Set<Class<?>> read) {
    this.session = session;
    this.read = read;
  }

  /** Hears facts and holds them at once against all conditions that ask for nothing else. */
  void hear(Collection<? extends Fact> facts) {
    heard.addAll(facts);
    for (Fact fact : facts) {
      if (read.contains(fact.getClass())) {
        session.insert(fact);
      }
    }
    // The engine would leave it until rules fire, when there may be nothing left to do beside it.
    ((InternalWorkingMemory) session).flushPropagations();
  }

  /**
   * What the rules that may fire find by all that was heard, beside what stands already; each
   * finding by its own rule.
   *
   * @throws EndlessRules if they do not come to an end
   */
  Judgement judgement(Judgement standing, AgendaFilter mayFire) {
    standing.findings().forEach(session::insert);
    standing.precedents().forEach(session::insert);
    Beside.lay(FactSet.of(heard), session);
    fire(mayFire);
    List<Finding> findings = new ArrayList<>();
    List<Precedent> precedents = new ArrayList<>();
    for (Object object : session.getObjects()) {
      if (object instanceof Finding finding) {
        findings.add(finding);
      } else if (object instanceof Precedent precedent) {
        precedents.add(precedent);
      }
    }
    return new Judgement(findings, precedents);
  }

  private void fire(AgendaFilter mayFire) {
    int limit = MATCHES_PER_FACT * (heard.size() + 1);
    try (Watchdog.Watch watch = WATCHDOG.over(session, PATIENCE)) {
      if (session.fireAllRules(mayFire, limit) >= limit || watch.hasBitten()) {
        throw new EndlessRules(
            "the rules do not come to an end on "
                + heard.size()
                + " facts; "
                + busiest()
                + " spoke most");
      }
    }
  }

  private String busiest() {
    return session.getObjects().stream()
        .filter(Finding.class::isInstance)
        .map(finding -> ((Finding) finding).rule())
        .collect(Collectors.groupingBy(rule -> rule, Collectors.counting()))
        .entrySet()
        .stream()
        .max(Map.Entry.<String, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .map(Map.Entry::getKey)
        .orElse("none of them");
  }

  @Override
  public void close() {
    session.dispose();
  }
}
