package trammel.judge;

import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.RuleContext;
import trammel.book.FactSet;

/**
 * The facts of a check, found by their kind in the consequences of its rules. Facts are not changed
 * while rules fire, so what stands beside a fact is what was inserted.
 */
final class Beside {
  private static final String NAME = "trammel.facts";

  private Beside() {}

  /** Lays the facts of a check beside its session. */
  static void lay(FactSet facts, KieSession session) {
    session.getEnvironment().set(NAME, facts);
  }

  /** The facts of the check in which a rule fires. */
  static FactSet of(RuleContext context) {
    if (context.getKieRuntime().getEnvironment().get(NAME) instanceof FactSet facts) {
      return facts;
    }
    throw new IllegalStateException("a rule of a sheet fires outside a check");
  }
}
