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
import trammel.derive.BeamMap;
import trammel.derive.WheelMap;
import trammel.report.AlignmentCurves;
import trammel.report.AlignmentPage;

/** Prints the alignment map of a sheet's wheels and of its beam axles. */
@Command(
    name = "align",
    header = "Map where wheels and beam axles stand at the proposed height.",
    description = {
      "Of each independent wheel prints what the adjusters reach against the",
      "maker's window, the best setting in the units a fitter turns, the lift at",
      "which these arms end, and how the angles run over travel.",
      "Of each beam axle prints how far its panhard bar, links and drag link move,",
      "turn and steer it, as found and as proposed, every hole of a bracket",
      "compared, and the length of a bar that would center it.",
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
      BookOptions.tell(checking.unread(build), spec.commandLine().getErr());
      List<WheelMap> maps = WheelMap.of(build, checking.on());
      List<BeamMap> beams = BeamMap.of(build, checking.catalog(file), checking.on());
      spec.commandLine()
          .getOut()
          .print(
              curves
                  ? AlignmentCurves.csv(build, maps, beams)
                  : AlignmentPage.text(build, maps, beams, checking.on()));
      spec.commandLine().getOut().flush();
      return ExitStatus.DONE;
    }
  }
}
