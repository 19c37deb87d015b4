package trammel.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.judge.Judge;
import trammel.judge.Rule;
import trammel.read.Words;

/** Shows the rules in force. */
@Command(
    name = "rules",
    header = "List or show the rules in force.",
    description = {"", "Example:  trammel rules show clearance.rear-mount", ""},
    synopsisSubcommandLabel = "(list | show)")
final class RulesCommand {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Command(name = "list", header = "List every rule in force.")
  int list() {
    PrintWriter out = spec.commandLine().getOut();
    try (Judge judge = Judge.ofBaseBook()) {
      for (Rule rule : judge.rules()) {
        out.printf(Locale.ROOT, "%-28s %-10s %s%n", rule.id(), rule.kind(), rule.title());
      }
    }
    out.flush();
    return ExitStatus.DONE;
  }

  @Command(name = "show", header = "Show one rule: what it demands, why, and by what source.")
  int show(
      @Parameters(paramLabel = "ID", description = "The rule's id, such as wheel.bore.")
          String id) {
    PrintWriter out = spec.commandLine().getOut();
    try (Judge judge = Judge.ofBaseBook()) {
      Rule rule = judge.rule(id).orElseThrow(() -> unknown(id, judge));
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
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private static List<String> judged(Rule rule) {
    return rule.facts().stream()
        .map(fact -> Words.spaced(Words.kebab(fact.getSimpleName())).strip())
        .sorted()
        .toList();
  }

  private static Mistake unknown(String id, Judge judge) {
    List<String> known = judge.rules().stream().map(Rule::id).toList();
    return new Mistake(
        "no rule in force is called " + Words.quoted(id),
        Words.didYouMean(id, known, "trammel rules list shows them all."));
  }
}
