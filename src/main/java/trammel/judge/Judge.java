package trammel.judge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;
import trammel.catalog.PartKind;
import trammel.fact.Fact;

/** The rule books in force, ready to judge. Safe for several threads; close it when done. */
public final class Judge implements AutoCloseable {
  /** Where the build's rule compiler writes the names of the model classes it made. */
  private static final String MODELS = "/META-INF/kie/trammel/trammel/drools-model";

  /** Matches that one fact may reasonably cause, so that a rule without end is noticed. */
  private static final int MATCHES_PER_FACT = 200;

  private static final Comparator<Finding> GRAVEST_FIRST =
      Comparator.comparing(Finding::kind)
          .thenComparing(finding -> finding.fact().subject())
          .thenComparing(Finding::rule)
          .thenComparing(finding -> finding.fact().toString());

  private final Map<String, Rule> rules = new LinkedHashMap<>();

  /** Facts that some rule has a condition on; the engine need not hear of others. */
  private final Set<Class<?>> read = new HashSet<>();

  private final Set<PartKind> judged = EnumSet.noneOf(PartKind.class);
  private final KieBase base;
  private final KieSessionsPool pool;

  private Judge(KieBase base) {
    this.base = base;
    List<Rule> found = new ArrayList<>();
    for (KiePackage book : base.getKiePackages()) {
      for (org.kie.api.definition.rule.Rule compiled : book.getRules()) {
        found.add(Rule.of(compiled, "base"));
      }
    }
    found.sort(Comparator.comparing(Rule::id));
    for (Rule rule : found) {
      rules.put(rule.id(), rule);
      judged.addAll(rule.judges());
      read.addAll(rule.facts());
    }
    this.pool = base.newKieSessionsPool(Runtime.getRuntime().availableProcessors());
  }

  /** The base book alone. */
  public static Judge ofBaseBook() {
    return new Judge(KieBaseBuilder.createKieBaseFromModel(baseModels()));
  }

  /** Some rules of the base book alone, for measuring them against the same judgement by hand. */
  static Judge ofRules(Set<String> ids) {
    ModelImpl some = new ModelImpl("some rules of the base book");
    for (Model model : baseModels()) {
      model.getRules().stream().filter(rule -> ids.contains(rule.getName())).forEach(some::addRule);
    }
    return new Judge(KieBaseBuilder.createKieBaseFromModel(some));
  }

  private static List<Model> baseModels() {
    try (InputStream names = Judge.class.getResourceAsStream(MODELS)) {
      if (names == null) {
        throw new IllegalStateException("the program holds no compiled base book at " + MODELS);
      }
      List<Model> models = new ArrayList<>();
      List<String> lines =
          new String(names.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      for (String line : lines.subList(1, lines.size())) {
        models.add(
            Class.forName(line.strip()).asSubclass(Model.class).getConstructor().newInstance());
      }
      return models;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the compiled base book cannot be loaded", e);
    }
  }

  /** Judges facts in a session of the pool. */
  public Judgement judge(Collection<? extends Fact> facts) {
    return judge(pool.newKieSession(), facts);
  }

  /** Judges facts in a session made for them alone; tests hold the pool against it. */
  Judgement judgeFresh(Collection<? extends Fact> facts) {
    return judge(base.newKieSession(), facts);
  }

  private Judgement judge(KieSession session, Collection<? extends Fact> facts) {
    try {
      for (Fact fact : facts) {
        if (read.contains(fact.getClass())) {
          session.insert(fact);
        }
      }
      int limit = MATCHES_PER_FACT * (facts.size() + 1);
      if (session.fireAllRules(limit) >= limit) {
        throw new IllegalStateException(
            "the rules do not come to an end on " + facts.size() + " facts");
      }
      List<Finding> findings = new ArrayList<>();
      List<Precedent> precedents = new ArrayList<>();
      for (Object object : session.getObjects()) {
        if (object instanceof Finding finding) {
          findings.add(finding);
        } else if (object instanceof Precedent precedent) {
          precedents.add(precedent);
        }
      }
      findings.sort(GRAVEST_FIRST);
      precedents.sort(
          Comparator.comparing((Precedent precedent) -> precedent.fact().subject())
              .thenComparing(Precedent::rule)
              .thenComparing(precedent -> precedent.fact().toString()));
      return new Judgement(List.copyOf(findings), List.copyOf(precedents));
    } finally {
      session.dispose();
    }
  }

  /** Every rule in force, by id. */
  public Collection<Rule> rules() {
    return List.copyOf(rules.values());
  }

  /** The rule of this id. */
  public Optional<Rule> rule(String id) {
    return Optional.ofNullable(rules.get(id));
  }

  /** Whether some rule has a condition on the fit of parts of this kind. */
  public boolean judges(PartKind kind) {
    return judged.contains(kind);
  }

  @Override
  public void close() {
    pool.shutdown();
  }
}
