package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.report.GapsPage;

/** Says what the cases of books leave unwatched. */
@Command(
    name = "gaps",
    header = "Say which rules and limits of a book no case watches.",
    description = {"", "Example:  trammel rules gaps rules/shop-example", ""})
final class RulesGapsCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "FOLDER", description = "Folders of books.")
  private List<Path> folders = List.of();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    out.print(GapsPage.text(BookOptions.read(folders)));
    out.flush();
    return ExitStatus.DONE;
  }
}
