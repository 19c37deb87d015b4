package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.build.Build;
import trammel.derive.Derivation;
import trammel.fact.Evidence;
import trammel.judge.Judge;
import trammel.judge.Rule;
import trammel.report.RuleOnSheetPage;

/** Reads one rule out on one build sheet. */
@Command(
    name = "read",
    header = "Read a rule out, and say why it speaks or not on a build sheet.",
    description = {
      "",
      "Example:  trammel rules read clearance.rear-mount order-1187.build.yaml",
      ""
    })
final class RulesReadCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "ID",
      description = "The rule's id, such as clearance.rear-mount.")
  private String id = "";

  @Parameters(index = "1", paramLabel = "FILE", description = "A build sheet or an order file.")
  private Path file = Path.of("");

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try (Checking checking = options.start()) {
      Build build = checking.read(file);
      BookOptions.tell(checking.unread(build), spec.commandLine().getErr());
      Rule rule = RulesCommand.named(id, checking.judges(build).rules());
      Judge judge = checking.judge(build);
      Evidence evidence = Derivation.evidence(build, checking.on());
      PrintWriter out = spec.commandLine().getOut();
      out.print(
          RuleOnSheetPage.text(
              rule,
              checking.judges(build).books(),
              build,
              evidence.by(judge.isCritical(rule.id())),
              judge,
              judge.judge(evidence)));
      out.flush();
      return ExitStatus.DONE;
    }
  }
}
