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
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSessionsPool;
import org.kie.api.runtime.rule.AgendaFilter;
import trammel.book.Book;
import trammel.book.KnownRule;
import trammel.book.Manifest;
import trammel.catalog.PartKind;
import trammel.fact.Evidence;
import trammel.fact.Fact;

/** The rule books in force, ready to judge. Safe for several threads; close it when done. */
public final class Judge implements AutoCloseable {
  private static final Comparator<Finding> GRAVEST_FIRST =
      Comparator.comparing(Finding::kind)
          .thenComparing(finding -> finding.fact().subject())
          .thenComparing(Finding::rule)
          .thenComparing(finding -> finding.fact().toString());

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
    return sorted(found(hearing(), facts, Judgement.NOTHING, match -> true));
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
    Judgement given = found(hearing(), evidence.given(), Judgement.NOTHING, match -> true);
    Judgement critical =
        new Judgement(
            given.findings().stream()
                .filter(one -> isCritical(one.rule()))
                .map(new NotAccepted(evidence)::told)
                .toList(),
            given.precedents().stream().filter(one -> isCritical(one.rule())).toList());
    return sorted(
        found(
            hearing(),
            evidence.facts(),
            critical,
            match -> !isCritical(SheetModel.id(match.getRule().getName()))));
  }

  /**
   * Judges facts as they come, some while others are still being worked out.
   *
   * @param telling tells its listener all facts, some at a time, on the thread that asks
   */
  public Judgement judge(Consumer<Consumer<List<Fact>>> telling) {
    try (Hearing hearing = hearing()) {
      telling.accept(hearing::hear);
      return sorted(hearing.judgement(Judgement.NOTHING, match -> true));
    }
  }

  /** Ready to hear facts in a session of the pool. */
  Hearing hearing() {
    return new Hearing(pool.newKieSession(), read);
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
    return sorted(
        found(new Hearing(base.newKieSession(), read), facts, Judgement.NOTHING, match -> true));
  }

  private static Judgement found(
      Hearing begun, Collection<? extends Fact> facts, Judgement standing, AgendaFilter mayFire) {
    try (Hearing hearing = begun) {
      hearing.hear(facts);
      return hearing.judgement(standing, mayFire);
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
