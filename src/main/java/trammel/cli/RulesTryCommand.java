package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.report.TryPage;

/** Tries the cases of books. */
@Command(
    name = "try",
    header = "Try the cases of a book: what speaks, what does not, and why not.",
    description = {
      "Ends with 5 where a case does not come out as its sheet expects.",
      "",
      "Example:  trammel rules try rules/shop-example",
      ""
    })
final class RulesTryCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "FOLDER", description = "Folders of books.")
  private List<Path> folders = List.of();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    TryPage.Result result = TryPage.of(BookOptions.read(folders));
    PrintWriter out = spec.commandLine().getOut();
    out.print(result.text());
    out.flush();
    return result.otherwise() == 0 ? ExitStatus.DONE : ExitStatus.OTHERWISE;
  }
}
