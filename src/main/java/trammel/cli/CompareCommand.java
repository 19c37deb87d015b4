package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.build.Build;
import trammel.build.MeasuredFile;
import trammel.build.MeasuredFiles;
import trammel.build.OverlayFile;
import trammel.build.OverlayFiles;
import trammel.compare.Agreement;
import trammel.compare.Lessons;
import trammel.derive.Predictions;
import trammel.report.ComparisonPage;
import trammel.report.Comparisons;
import trammel.report.JsonReport;

/** Holds a finished vehicle against what was predicted of it. */
@Command(
    name = "compare",
    header = "Hold what was measured after fitting against what was predicted.",
    description = {
      "Prints each measured value against its prediction, with what is known of",
      "both; where they do not agree, which value on the sheet would explain it.",
      "",
      "Example:  trammel compare raised.build.yaml raised.measured.yaml",
      "          trammel compare --write-overlay mine.overlay.yaml SHEET MEASURED",
      ""
    },
    exitCodeListHeading = "%nExit status, worst first:%n",
    exitCodeList = {
      "1:the program failed",
      "2:wrong command line, or a file that cannot be read or written",
      "4:something measured is not what was predicted, or nothing could be compared",
      "0:all that was compared agrees"
    })
final class CompareCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "SHEET", description = "The build sheet that was fitted.")
  private Path sheet = Path.of("");

  @Parameters(index = "1", paramLabel = "MEASURED", description = "What was measured afterwards.")
  private Path measured = Path.of("");

  @Option(
      names = "--format",
      defaultValue = "text",
      converter = CheckCommand.FormatName.class,
      description = "text or json; text if not given.")
  private CheckCommand.Format format = CheckCommand.Format.TEXT;

  @Option(names = "--csv", description = "Only the values, as comma-separated values.")
  private boolean csv;

  @Option(
      names = "--write-overlay",
      paramLabel = "FILE",
      description = "Write what this vehicle has taught; a sheet then names it (overlay: FILE).")
  private @Nullable Path overlay;

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try (Checking checking = options.start()) {
      Build build = checking.read(sheet);
      BookOptions.tell(checking.unread(build), spec.commandLine().getErr());
      MeasuredFile file = MeasuredFiles.read(measured, build.vehicle());
      Agreement agreement = Agreement.of(file, Predictions.of(build, checking.on()));
      if (overlay != null) {
        write(overlay, Lessons.of(build, file));
      }
      PrintWriter out = spec.commandLine().getOut();
      Comparisons data = Comparisons.of(build, file, agreement);
      if (csv) {
        out.print(data.csv());
      } else if (format == CheckCommand.Format.JSON) {
        out.print(JsonReport.of(data));
      } else {
        out.print(ComparisonPage.text(build, file, agreement));
      }
      out.flush();
      return agreement.agrees() ? ExitStatus.DONE : ExitStatus.DISAGREES;
    }
  }

  private void write(Path to, OverlayFile lessons) {
    if (Lessons.any(lessons)) {
      OverlayFiles.write(to, lessons);
    } else {
      spec.commandLine()
          .getErr()
          .println(
              "trammel: nothing that was measured teaches more than the profile has; "
                  + to
                  + " is not written");
    }
  }
}
