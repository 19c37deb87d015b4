package trammel.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.build.Build;
import trammel.judge.Judge;
import trammel.remedy.Limits;
import trammel.report.LimitsPage;

/** Says how far each wish of a sheet may go. */
@Command(
    name = "limits",
    header = "Say how far each wish may go before something stops it.",
    description = {
      "Tries tire diameter and width, wheel offset, spacers and lift, one at a time,",
      "larger and smaller than the sheet proposes, and names what stops each.",
      "",
      "Example:  trammel limits wishlist.build.yaml",
      ""
    })
final class LimitsCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", description = "A build sheet or an order file.")
  private Path file = Path.of("");

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try (Checking checking = options.start()) {
      Build build = checking.read(file);
      Judge judge = checking.judge(build);
      BookOptions.tell(checking.unread(build), spec.commandLine().getErr());
      List<Limits.Range> ranges = Limits.of(build, judge, checking.on());
      spec.commandLine().getOut().print(LimitsPage.text(build, ranges, judge, checking.on()));
      spec.commandLine().getOut().flush();
      return ExitStatus.DONE;
    }
  }
}
