package trammel.judge;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drools.model.Condition;
import org.drools.model.Pattern;
import org.jspecify.annotations.Nullable;
import trammel.book.Book;
import trammel.book.KnownRule;
import trammel.book.LawOutcome;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.catalog.PartKind;
import trammel.fact.Fact;

/**
 * What a rule says of itself.
 *
 * @param id {@code group.name}
 * @param title what it demands, in a line
 * @param says the finding, with names of the fact's components in braces
 * @param open what to say where a value is missing; empty for the usual sentence
 * @param reason why it matters
 * @param source document and clause, or <em>common practice</em>
 * @param kind what it amounts to when it is broken
 * @param since the program's version that first had it
 * @param safetyCritical whether no waiver can lift it
 * @param settle what a fitter would try, in order; empty where only a part helps
 * @param tries kinds of part that may settle it besides those it asks for
 * @param facts the facts it has a condition on
 * @param book the book it stands in
 * @param stricterThan the rule that it tightens; null where it stands alone
 * @param replaces earlier ids, whose waivers still count
 * @param outcome what breaking it means, for a rule of the law; null for any other
 */
public record Rule(
    String id,
    String title,
    String says,
    String open,
    String reason,
    String source,
    Kind kind,
    String since,
    boolean safetyCritical,
    List<String> settle,
    List<PartKind> tries,
    Set<Class<?>> facts,
    String book,
    @Nullable String stricterThan,
    List<String> replaces,
    @Nullable LawOutcome outcome) {

  static Rule of(org.drools.model.Rule compiled, String book) {
    Map<String, Object> annotations = compiled.getMetaData();
    Set<Class<?>> facts = new LinkedHashSet<>();
    collect(compiled.getView(), facts);
    return new Rule(
        compiled.getName(),
        text(compiled, "title"),
        text(compiled, "says"),
        (String) annotations.getOrDefault("open", ""),
        text(compiled, "reason"),
        text(compiled, "source"),
        Kind.named(text(compiled, "kind")),
        text(compiled, "since"),
        annotations.containsKey("safetyCritical"),
        annotations.containsKey("settle")
            ? List.of(text(compiled, "settle").split("; *"))
            : List.of(),
        annotations.containsKey("tries")
            ? Stream.of(text(compiled, "tries").split(", *"))
                .map(kind -> PartKind.valueOf(kind.toUpperCase(Locale.ROOT).replace('-', '_')))
                .toList()
            : List.of(),
        Set.copyOf(facts),
        book,
        null,
        List.of(),
        null);
  }

  private static String text(org.drools.model.Rule compiled, String name) {
    Object value = compiled.getMetaData().get(name);
    if (!(value instanceof String text) || text.isBlank()) {
      throw new IllegalStateException(
          "rule "
              + compiled.getName()
              + " has no @"
              + name
              + "\nAdvice: every rule states its "
              + name);
    }
    return text;
  }

  private static void collect(Condition condition, Set<Class<?>> facts) {
    if (condition instanceof Pattern<?> pattern) {
      Class<?> type = pattern.getPatternVariable().getType();
      if (Fact.class.isAssignableFrom(type)) {
        facts.add(type);
      }
    }
    condition.getSubConditions().forEach(inner -> collect(inner, facts));
  }

  static Rule of(SheetRule rule, Book book) {
    return of(rule, SheetModel.facts(rule), book);
  }

  static Rule of(Table table, Book book) {
    return of(table.rule(), SheetModel.facts(table), book);
  }

  private static Rule of(SheetRule rule, Set<Class<?>> facts, Book book) {
    return new Rule(
        rule.id(),
        rule.title(),
        rule.says(),
        rule.open(),
        rule.reason(),
        rule.source(),
        Kind.named(rule.kind().toString()),
        rule.since().toString(),
        rule.safetyCritical(),
        rule.settle(),
        List.of(),
        facts,
        book.name(),
        rule.stricterThan(),
        rule.replaces(),
        rule.outcome());
  }

  /** What a sheet must know of it to tighten it. */
  KnownRule known() {
    Set<Class<? extends Fact>> about = new LinkedHashSet<>();
    facts.forEach(fact -> about.add(fact.asSubclass(Fact.class)));
    return new KnownRule(id, about, safetyCritical);
  }

  /** The group its id begins with. */
  public String group() {
    return id.substring(0, id.indexOf('.'));
  }

  /** The kinds of part whose fit it has a condition on, by name. */
  public Set<PartKind> judges() {
    Set<PartKind> kinds = new TreeSet<>();
    for (Class<?> fact : facts) {
      Fact.Concerns concerns = fact.getAnnotation(Fact.Concerns.class);
      if (concerns != null) {
        kinds.addAll(List.of(concerns.value()));
      }
    }
    return kinds;
  }
}
