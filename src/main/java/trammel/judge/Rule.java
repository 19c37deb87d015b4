package trammel.judge;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.Pattern;
import org.drools.base.rule.RuleConditionElement;
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
    String book) {

  static Rule of(org.kie.api.definition.rule.Rule compiled, String book) {
    Map<String, Object> annotations = compiled.getMetaData();
    Set<Class<?>> facts = new java.util.LinkedHashSet<>();
    collect(((RuleImpl) compiled).getLhs(), facts);
    return new Rule(
        compiled.getName(),
        text(compiled, annotations, "title"),
        text(compiled, annotations, "says"),
        (String) annotations.getOrDefault("open", ""),
        text(compiled, annotations, "reason"),
        text(compiled, annotations, "source"),
        Kind.named(text(compiled, annotations, "kind")),
        text(compiled, annotations, "since"),
        annotations.containsKey("safetyCritical"),
        annotations.containsKey("settle")
            ? List.of(text(compiled, annotations, "settle").split("; *"))
            : List.of(),
        annotations.containsKey("tries")
            ? Stream.of(text(compiled, annotations, "tries").split(", *"))
                .map(kind -> PartKind.valueOf(kind.toUpperCase(Locale.ROOT).replace('-', '_')))
                .toList()
            : List.of(),
        Set.copyOf(facts),
        book);
  }

  private static String text(
      org.kie.api.definition.rule.Rule compiled, Map<String, Object> annotations, String name) {
    Object value = annotations.get(name);
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

  private static void collect(RuleConditionElement element, Set<Class<?>> facts) {
    if (element instanceof Pattern pattern
        && pattern.getObjectType() instanceof org.drools.base.base.ClassObjectType type) {
      if (Fact.class.isAssignableFrom(type.getClassType())) {
        facts.add(type.getClassType());
      }
    } else if (element instanceof GroupElement group) {
      group.getChildren().forEach(child -> collect(child, facts));
    }
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
