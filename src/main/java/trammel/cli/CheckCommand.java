package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import trammel.read.Problem;
import trammel.read.UnreadableFile;
import trammel.read.Words;
import trammel.report.Batch;
import trammel.report.JsonReport;
import trammel.report.Report;
import trammel.report.TextReport;

/** Checks sheets and prints what was found. */
@Command(
    name = "check",
    header = "Say whether what a sheet proposes fits, and why.",
    description = {
      "Reads build sheets or order files and prints a report of each.",
      "",
      "Example:  trammel check order-1187.build.yaml",
      ""
    },
    exitCodeListHeading = "%nExit status, worst first:%n",
    exitCodeList = {
      "1:the program failed",
      "2:wrong command line, or a file that cannot be read",
      "5:does not fit",
      "6:fits, fits with additions or is not proven, and is not lawful as it stands",
      "4:not proven",
      "3:fits with additions",
      "0:fits"
    })
final class CheckCommand implements Callable<Integer> {
  /** How a report is printed. */
  enum Format {
    TEXT,
    JSON
  }

  /** Reads a format's name. */
  static final class FormatName implements ITypeConverter<Format> {
    @Override
    public Format convert(String name) {
      return switch (name) {
        case "text" -> Format.TEXT;
        case "json" -> Format.JSON;
        default ->
            throw new TypeConversionException(
                Words.quoted(name) + " is no format; expected text or json");
      };
    }
  }

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Build sheets or order files.")
  private List<Path> files = List.of();

  @Option(
      names = "--format",
      defaultValue = "text",
      converter = FormatName.class,
      description = "text or json; text if not given.")
  private Format format = Format.TEXT;

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    List<Report> reports = new ArrayList<>();
    List<Batch.Refused> refused = new ArrayList<>();
    List<Integer> statuses = new ArrayList<>();
    PrintWriter err = spec.commandLine().getErr();
    try (Checking checking = options.start()) {
      for (Path file : files) {
        try {
          Report report = checking.check(file).report();
          reports.add(report);
          statuses.add(report.exitStatus());
        } catch (UnreadableFile e) {
          err.println(e.getMessage());
          refused.add(
              new Batch.Refused(
                  file.toString(), e.problems().stream().map(Problem::toString).toList()));
          statuses.add(ExitStatus.UNREADABLE);
        }
      }
    }
    print(reports, refused);
    return ExitStatus.worst(statuses);
  }

  private void print(List<Report> reports, List<Batch.Refused> refused) {
    PrintWriter out = spec.commandLine().getOut();
    if (format == Format.JSON) {
      boolean single = files.size() == 1 && reports.size() == 1;
      out.print(single ? JsonReport.of(reports.get(0)) : JsonReport.of(Batch.of(reports, refused)));
    } else {
      String between = "\n" + "=".repeat(80) + "\n\n";
      out.print(String.join(between, reports.stream().map(TextReport::of).toList()));
    }
    out.flush();
  }
}
