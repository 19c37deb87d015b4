package trammel.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;
import org.kie.api.runtime.rule.AgendaFilter;
import trammel.book.Book;
import trammel.book.FactSet;
import trammel.book.KnownRule;
import trammel.book.Manifest;
import trammel.catalog.PartKind;
import trammel.fact.Evidence;
import trammel.fact.Fact;

/** The rule books in force, ready to judge. Safe for several threads; close it when done. */
public final class Judge implements AutoCloseable {
  /** Matches that one fact may reasonably cause, so that a rule without end is noticed. */
  private static final int MATCHES_PER_FACT = 200;

  private static final Comparator<Finding> GRAVEST_FIRST =
      Comparator.comparing(Finding::kind)
          .thenComparing(finding -> finding.fact().subject())
          .thenComparing(Finding::rule)
          .thenComparing(finding -> finding.fact().toString());

  /** Far longer than any check takes (ms). */
  private static final long PATIENCE = 20_000;

  private final Map<String, Rule> rules = new LinkedHashMap<>();

  /** Rules by the ids that they had before. */
  private final Map<String, Rule> renamed = new HashMap<>();

  /** Facts that some rule has a condition on; the engine need not hear of others. */
  private final Set<Class<?>> read = new HashSet<>();

  private final Set<PartKind> judged = EnumSet.noneOf(PartKind.class);
  private final List<Book> books;
  private final KieBase base;
  private final KieSessionsPool pool;

  /**
   * @param engaged those of the rules that the engine holds
   */
  private Judge(List<Model> models, List<Rule> found, Collection<Rule> engaged, List<Book> books) {
    this.books = List.copyOf(books);
    this.base = KieBaseBuilder.createKieBaseFromModel(models);
    List<Rule> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparing(Rule::id));
    for (Rule rule : sorted) {
      if (rules.put(rule.id(), rule) != null) {
        throw new IllegalArgumentException("two rules are called " + rule.id());
      }
      rule.replaces().forEach(old -> renamed.put(old, rule));
      judged.addAll(rule.judges());
    }
    engaged.forEach(rule -> read.addAll(rule.facts()));
    this.pool = base.newKieSessionsPool(Runtime.getRuntime().availableProcessors());
  }

  /** The base book alone. */
  public static Judge ofBaseBook() {
    return of(List.of());
  }

  /**
   * The base book and exactly these; {@link Judges} chooses those that apply.
   *
   * @throws IllegalArgumentException if two rules have one id
   */
  public static Judge of(List<Book> books) {
    return of(books, book -> book);
  }

  /**
   * The same for one vehicle: rules and rows that name only others as their condition are known of,
   * and not in the engine.
   */
  static Judge over(String vehicle, List<Book> books) {
    return of(books, book -> book.over(vehicle));
  }

  private static Judge of(List<Book> books, UnaryOperator<Book> engaged) {
    List<Model> models = new ArrayList<>(BaseBook.models());
    List<Rule> rules = new ArrayList<>(BaseBook.rules(models));
    List<Rule> inEngine = new ArrayList<>(rules);
    for (Book book : books) {
      Book concerned = engaged.apply(book);
      models.add(SheetModel.of(concerned));
      List<Rule> its = rules(book);
      rules.addAll(its);
      inEngine.addAll(concerned.equals(book) ? its : rules(concerned));
    }
    return new Judge(models, rules, inEngine, books);
  }

  /** What the rules of a book say of themselves. */
  static List<Rule> rules(Book book) {
    return Stream.concat(
            book.rules().stream().map(rule -> Rule.of(rule, book)),
            book.tables().stream().map(table -> Rule.of(table, book)))
        .toList();
  }

  /** What a sheet must know of the base book's rules to tighten them. */
  public static List<KnownRule> knownRules() {
    return BaseBook.rules(BaseBook.models()).stream().map(Rule::known).toList();
  }

  /** Some rules of the base book alone, for measuring them against the same judgement by hand. */
  static Judge ofRules(Set<String> ids) {
    ModelImpl some = new ModelImpl("some rules of the base book");
    for (Model model : BaseBook.models()) {
      model.getRules().stream().filter(rule -> ids.contains(rule.getName())).forEach(some::addRule);
    }
    List<Rule> rules = BaseBook.rules(List.of(some));
    return new Judge(List.of(some), rules, rules, List.of());
  }

  /** Judges facts in a session of the pool. */
  public Judgement judge(Collection<? extends Fact> facts) {
    return sorted(found(pool.newKieSession(), facts, Judgement.NOTHING, match -> true));
  }

  /**
   * Judges by evidence. Where some of it is assumed, safety-critical rules first judge by what is
   * given; what they find stands, as it is, beside what all other rules then find by the whole, so
   * that a rule that asks for findings meets them all.
   */
  public Judgement judge(Evidence evidence) {
    if (!evidence.assumes()) {
      return judge(evidence.facts());
    }
    Judgement given =
        found(pool.newKieSession(), evidence.given(), Judgement.NOTHING, match -> true);
    Judgement critical =
        new Judgement(
            given.findings().stream()
                .filter(one -> isCritical(one.rule()))
                .map(new NotAccepted(evidence)::told)
                .toList(),
            given.precedents().stream().filter(one -> isCritical(one.rule())).toList());
    return sorted(
        found(
            pool.newKieSession(),
            evidence.facts(),
            critical,
            match -> !isCritical(SheetModel.id(match.getRule().getName()))));
  }

  /**
   * Whether a rule judges by what is given alone: it is safety-critical, or tightens one that is.
   */
  public boolean isCritical(String id) {
    Rule rule = rules.get(id);
    return rule != null
        && (rule.safetyCritical()
            || (rule.stricterThan() != null && isCritical(rule.stricterThan())));
  }

  /** Judges facts in a session made for them alone; tests hold the pool against it. */
  Judgement judgeFresh(Collection<? extends Fact> facts) {
    return sorted(found(base.newKieSession(), facts, Judgement.NOTHING, match -> true));
  }

  /** What the rules that may fire find beside what stands already; each finding by its own rule. */
  private Judgement found(
      KieSession session,
      Collection<? extends Fact> facts,
      Judgement standing,
      AgendaFilter mayFire) {
    try {
      for (Fact fact : facts) {
        if (read.contains(fact.getClass())) {
          session.insert(fact);
        }
      }
      standing.findings().forEach(session::insert);
      standing.precedents().forEach(session::insert);
      Beside.lay(FactSet.of(facts), session);
      fire(session, facts.size(), mayFire);
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
    } finally {
      session.dispose();
    }
  }

  private Judgement sorted(Judgement found) {
    List<Finding> findings = Stricter.joined(found.findings(), rules);
    findings.sort(GRAVEST_FIRST);
    List<Precedent> precedents = new ArrayList<>(found.precedents());
    precedents.sort(
        Comparator.comparing((Precedent precedent) -> precedent.fact().subject())
            .thenComparing(Precedent::rule)
            .thenComparing(precedent -> precedent.fact().toString()));
    return new Judgement(findings, precedents);
  }

  private static void fire(KieSession session, int facts, AgendaFilter mayFire) {
    int limit = MATCHES_PER_FACT * (facts + 1);
    try (Watchdog watchdog = Watchdog.over(session, PATIENCE)) {
      if (session.fireAllRules(mayFire, limit) >= limit || watchdog.hasBitten()) {
        throw new EndlessRules(
            "the rules do not come to an end on "
                + facts
                + " facts; "
                + busiest(session)
                + " spoke most");
      }
    }
  }

  private static String busiest(KieSession session) {
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

  /** What the books in force besides the base book say of themselves. */
  public List<Manifest> manifests() {
    return books.stream().map(Book::manifest).toList();
  }

  /** Every rule in force, by id. */
  public Collection<Rule> rules() {
    return List.copyOf(rules.values());
  }

  /** The books of sheets in force. */
  public List<Book> books() {
    return books;
  }

  /** The rule of this id. */
  public Optional<Rule> rule(String id) {
    return Optional.ofNullable(rules.get(id));
  }

  /** The rule of this id, or the one that has taken its place. */
  public Optional<Rule> ruleOnceCalled(String id) {
    return rule(id).or(() -> Optional.ofNullable(renamed.get(id)));
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
