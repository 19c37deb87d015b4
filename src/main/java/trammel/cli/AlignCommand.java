package trammel.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.build.Build;
import trammel.derive.WheelMap;
import trammel.report.AlignmentPage;

/** Prints the alignment map of a sheet. */
@Command(
    name = "align",
    header = "Map what the wheels can be aligned to at the proposed height.",
    description = {
      "Prints what the adjusters reach against the maker's window, the best",
      "setting in the units a fitter turns, the lift at which these arms end,",
      "and how the angles run over travel.",
      "",
      "Example:  trammel align raised.build.yaml",
      "          trammel align --curves raised.build.yaml > curves.csv",
      ""
    })
final class AlignCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", description = "A build sheet or an order file.")
  private Path file = Path.of("");

  @Option(
      names = "--curves",
      description = "Only the curves over travel, as comma-separated values.")
  private boolean curves;

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try (Checking checking = options.start()) {
      Build build = checking.read(file);
      List<WheelMap> maps = WheelMap.of(build, checking.on());
      spec.commandLine()
          .getOut()
          .print(curves ? AlignmentPage.csv(maps) : AlignmentPage.text(build, maps, checking.on()));
      spec.commandLine().getOut().flush();
      return ExitStatus.DONE;
    }
  }
}
