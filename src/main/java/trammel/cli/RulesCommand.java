package trammel.cli;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.book.Books;
import trammel.judge.Judges;
import trammel.judge.Rule;
import trammel.read.Words;

/** Shows the rules in force. */
@Command(
    name = "rules",
    header = "Show the rules in force; write, try and proofread your own.",
    description = {"", "Example:  trammel rules show clearance.rear-mount", ""},
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      RulesReadCommand.class,
      RulesPrintCommand.class,
      RulesFactsCommand.class,
      RulesNewCommand.class,
      RulesProofreadCommand.class,
      RulesTryCommand.class,
      RulesGapsCommand.class
    })
final class RulesCommand {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Command(name = "list", header = "List every rule in force.")
  int list(@Mixin BookOptions books) {
    PrintWriter out = spec.commandLine().getOut();
    for (Rule rule : rules(books)) {
      out.printf(Locale.ROOT, "%-28s %-10s %s%n", rule.id(), rule.kind(), rule.title());
    }
    out.flush();
    return ExitStatus.DONE;
  }

  @Command(name = "show", header = "Show one rule: what it demands, why, and by what source.")
  int show(
      @Mixin BookOptions books,
      @Parameters(paramLabel = "ID", description = "The rule's id, such as wheel.bore.")
          String id) {
    PrintWriter out = spec.commandLine().getOut();
    Collection<Rule> rules = rules(books);
    Rule rule = named(id, rules);
    out.println(rule.id() + ": " + rule.title());
    out.println("  kind:   " + rule.kind());
    out.println("  says:   " + rule.says());
    out.println("  why:    " + rule.reason());
    out.println("  source: " + rule.source());
    if (!rule.settle().isEmpty()) {
      out.println("  settle: " + String.join("; or ", rule.settle()));
    }
    out.println("  judges: " + String.join(", ", judged(rule)));
    out.println("  waiver: " + (rule.safetyCritical() ? "none, safety-critical" : "possible"));
    out.println("  book:   " + rule.book() + ", since " + rule.since());
    out.flush();
    return ExitStatus.DONE;
  }

  private static List<String> judged(Rule rule) {
    return rule.facts().stream()
        .map(fact -> Words.spaced(Words.kebab(fact.getSimpleName())).strip())
        .sorted()
        .toList();
  }

  /** Every rule of every book that could be read, by id. */
  private List<Rule> rules(BookOptions options) {
    Books.Shelved read = options.read();
    BookOptions.tell(read.unread(), spec.commandLine().getErr());
    try (Judges judges = Judges.of(read.books())) {
      return judges.rules().stream().sorted(Comparator.comparing(Rule::id)).toList();
    }
  }

  /** The rule of this id, or the one that has taken its place. */
  static Rule named(String id, Collection<Rule> rules) {
    return rules.stream()
        .filter(rule -> rule.id().equals(id) || rule.replaces().contains(id))
        .findFirst()
        .orElseThrow(
            () ->
                new Mistake(
                    "no rule in force is called " + Words.quoted(id),
                    Words.didYouMean(
                        id,
                        rules.stream().map(Rule::id).toList(),
                        "trammel rules list shows them all.")));
  }
}
