package trammel.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.judge.Finding;
import trammel.read.Words;
import trammel.report.Report;
import trammel.report.WorkingText;

/** Shows how a finding was worked out. */
@Command(
    name = "working",
    header = "Show how one finding was worked out: formulas, inputs, sources.",
    description = {
      "The finding is its number in the report, or its identity.",
      "",
      "Example:  trammel working order-1187.build.yaml 1",
      ""
    })
final class WorkingCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", description = "A build sheet or an order file.")
  private Path file = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "FINDING",
      description = "Its number, or its identity such as clearance.arch@front-left:arch.")
  private String wanted = "";

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try (Checking checking = options.start()) {
      Checking.Checked checked = checking.check(file);
      BookOptions.tell(checking.unread(checked.build()), spec.commandLine().getErr());
      String id = identity(checked.report());
      Finding finding =
          checked.judgement().findings().stream()
              .filter(found -> found.identity().equals(id))
              .findFirst()
              .orElseThrow();
      spec.commandLine()
          .getOut()
          .print(
              WorkingText.of(
                  finding, checked.judge().rule(finding.rule()).orElseThrow(), checked.build()));
      spec.commandLine().getOut().flush();
      return ExitStatus.DONE;
    }
  }

  private String identity(Report report) {
    Optional<String> found =
        report
            .items()
            .filter(
                item -> item.id().equals(wanted) || String.valueOf(item.number()).equals(wanted))
            .map(Report.Item::id)
            .findFirst();
    List<String> known = report.items().map(Report.Item::id).toList();
    return found.orElseThrow(
        () ->
            new Mistake(
                file + " has no finding " + Words.quoted(wanted),
                Words.didYouMean(
                    wanted,
                    known,
                    known.isEmpty()
                        ? "Its report has no findings at all."
                        : "Expected a number up to "
                            + report.items().mapToInt(Report.Item::number).max().orElse(0)
                            + ", or an identity from its report.")));
  }
}
