package trammel.judge;

import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.exists;
import static org.drools.model.DSL.not;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.drools.model.Drools;
import org.drools.model.Model;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.kie.api.runtime.rule.RuleContext;
import trammel.book.Asked;
import trammel.book.Book;
import trammel.book.Condition;
import trammel.book.Condition.Some;
import trammel.book.Demand;
import trammel.book.FactSet;
import trammel.book.Interpreter;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.book.TableRuling;
import trammel.fact.Fact;
import trammel.quantity.Decision;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;
import trammel.vocabulary.Vocabulary;

/**
 * A book of sheets as a model of the rules engine, in a package of its own.
 *
 * <p>Every rule begins with a pattern on the fact that it judges. Each of its conditions on other
 * facts is {@code exists} and {@code not} of the engine's own; such a condition has three states,
 * and for every combination of states in which the whole can be violated there is one rule of the
 * engine. The text of each constraint, by which the engine knows it, spells it out in full.
 */
final class SheetModel {
  private final ModelImpl model;
  private final String packageName;

  private SheetModel(Book book) {
    this.packageName = "books." + book.name().replace('-', '_');
    this.model = new ModelImpl(packageName);
  }

  /** The model of a book. */
  static Model of(Book book) {
    SheetModel made = new SheetModel(book);
    book.rules().forEach(made::add);
    book.tables().forEach(made::add);
    return made.model;
  }

  /** The facts that a rule has a condition on. */
  static Set<Class<?>> facts(SheetRule rule) {
    Set<Class<?>> facts = new LinkedHashSet<>();
    facts.add(rule.about().type());
    collect(Asked.of(rule.whole()), facts);
    return facts;
  }

  /** The facts that a table has a condition on. */
  static Set<Class<?>> facts(Table table) {
    Set<Class<?>> facts = facts(table.rule());
    table.rows().forEach(row -> collect(Asked.of(row.match()), facts));
    return facts;
  }

  private static void collect(Collection<Component> asked, Set<Class<?>> facts) {
    for (Component component : asked) {
      facts.add(Vocabulary.fact(component.fact()).orElseThrow().type());
    }
  }

  private void add(SheetRule sheetRule) {
    Condition whole = sheetRule.whole();
    for (JoinStates states : JoinStates.all(whole)) {
      if (!states.canBeViolated(whole)) {
        continue;
      }
      Variable<Fact> about = declared(sheetRule.about(), "$about");
      List<RuleItemBuilder<?>> items = new ArrayList<>();
      items.add(
          pattern(about)
              .expr(
                  "possibly violated: " + whole + " where " + states,
                  fact -> whole.decide(fact, states).isPossiblyViolated()));
      for (Some some : states.joins()) {
        items.addAll(join(some, states.of(some), about));
      }
      items.add(on(about).execute((drools, fact) -> conclude(sheetRule, states, drools, fact)));
      model.addRule(
          rule(packageName, sheetRule.id() + states.suffix())
              .metadata("kind", sheetRule.kind().toString())
              .build(items.toArray(RuleItemBuilder<?>[]::new)));
    }
  }

  /** The id of the rule that a rule of the engine, of this book or the base book, stands for. */
  static String id(String ruleOfTheEngine) {
    int suffix = ruleOfTheEngine.indexOf(' ');
    return suffix < 0 ? ruleOfTheEngine : ruleOfTheEngine.substring(0, suffix);
  }

  private static List<RuleItemBuilder<?>> join(Some some, Decision state, Variable<Fact> about) {
    List<RuleItemBuilder<?>> items = new ArrayList<>();
    if (state == Decision.MET) {
      items.add(exists(other(some, about, false)));
    } else if (state == Decision.NOT_MET) {
      items.add(not(other(some, about, true)));
    } else {
      items.add(exists(other(some, about, true)));
      items.add(not(other(some, about, false)));
    }
    return items;
  }

  /** Another fact for which a condition holds, certainly or possibly. */
  private static org.drools.model.PatternDSL.PatternDef<Fact> other(
      Some some, Variable<Fact> about, boolean possibly) {
    return pattern(declared(some.fact(), "$other"))
        .expr(
            (possibly ? "possibly " : "certainly ") + some,
            about,
            (other, here) -> {
              if (!some.speaksOf(here, other)) {
                return false;
              }
              Decision decision = some.decide(here, other);
              return possibly ? decision != Decision.NOT_MET : decision == Decision.MET;
            });
  }

  @SuppressWarnings("unchecked") // a pattern on a kind of fact holds nothing but facts
  private static Variable<Fact> declared(FactType fact, String name) {
    return declarationOf((Class<Fact>) fact.type(), name);
  }

  private static void conclude(SheetRule rule, JoinStates states, Drools drools, Fact about) {
    RuleContext context = (RuleContext) drools;
    FactSet beside = Beside.of(context);
    Decision decision = rule.whole().decide(about, states.exactly(beside.around(about)));
    if (decision == Decision.MET) {
      return;
    }
    boolean needs = rule.demand().form() == Demand.Form.NEEDS && rule.demand().part() != null;
    Need need = needs ? new Need(rule.demand().part(), about.subject().where()) : null;
    Conclude.insert(
        context,
        new Finding(
            rule.id(),
            Conclude.kind(kind(rule), decision),
            about,
            Interpreter.judge(rule, about, beside).comparison(),
            decision,
            need));
  }

  private static Kind kind(SheetRule rule) {
    return Kind.named(rule.kind().toString());
  }

  private void add(Table table) {
    Variable<Fact> about = declared(table.rule().about(), "$about");
    model.addRule(
        rule(packageName, table.rule().id())
            .metadata("kind", table.rule().kind().toString())
            .build(
                pattern(about).expr("judged by table " + table.rule().id(), fact -> true),
                on(about).execute((drools, fact) -> conclude(table, drools, fact))));
  }

  private static void conclude(Table table, Drools drools, Fact about) {
    RuleContext context = (RuleContext) drools;
    TableRuling ruling = Interpreter.judge(table, about, Beside.of(context));
    if (ruling.kind() != null) {
      Kind own = Kind.named(ruling.kind().toString().toLowerCase(Locale.ROOT));
      Conclude.insert(
          context,
          new Finding(
              table.rule().id(),
              Conclude.kind(own, ruling.decision()),
              about,
              ruling.comparison(),
              ruling.decision(),
              null,
              Told.by(table.rule().id(), ruling.results())));
    }
  }
}
