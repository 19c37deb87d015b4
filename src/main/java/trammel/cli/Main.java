package trammel.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.UnmatchedArgumentException;
import trammel.read.UnreadableFile;
import trammel.read.Words;

/** The program. */
@Command(
    name = "trammel",
    header = "Says whether wheels, tires and lift parts fit a vehicle and each other, and why.",
    description = {
      "",
      "Example:  trammel check order-1187.build.yaml",
      "          trammel working order-1187.build.yaml 1",
      ""
    },
    synopsisSubcommandLabel = "COMMAND",
    versionProvider = Main.Version.class,
    subcommands = {
      CheckCommand.class,
      WorkingCommand.class,
      AlignCommand.class,
      HeightsCommand.class,
      LimitsCommand.class,
      CompareCommand.class,
      CatalogCommand.class,
      RulesCommand.class
    },
    footer = {"", "Local law and a licensed mechanic or engineer have the last word."})
public final class Main {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help.")
  @SuppressWarnings("unused") // what counts is that it was given
  private boolean help;

  @Option(names = "--version", versionHelp = true, description = "Show the version.")
  @SuppressWarnings("unused") // as above
  private boolean version;

  /** Runs the program and ends with its exit status. */
  public static void main(String[] arguments) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    int status = run(out, err, arguments);
    out.flush();
    err.flush();
    System.exit(status);
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
  }

  /**
   * Runs one command line.
   *
   * @return the exit status
   */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = new CommandLine(new Main());
    line.setOut(out);
    line.setErr(err);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpWidth(80);
    line.setParameterExceptionHandler(Main::wrongUse);
    line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure, err));
    return line.execute(arguments);
  }

  private static int wrongUse(ParameterException mistake, String[] arguments) {
    CommandLine command = mistake.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("trammel: " + mistake.getMessage());
    String help = command.getCommandSpec().qualifiedName() + " --help shows how to use it.";
    err.println("  " + nearest(mistake).map(near -> "Did you mean " + near + "?").orElse(help));
    err.flush();
    return ExitStatus.UNREADABLE;
  }

  /** The option or command that was most likely meant. */
  private static Optional<String> nearest(ParameterException mistake) {
    if (!(mistake instanceof UnmatchedArgumentException unmatched)
        || unmatched.getUnmatched().isEmpty()) {
      return Optional.empty();
    }
    CommandSpec spec = mistake.getCommandLine().getCommandSpec();
    List<String> known = new ArrayList<>(spec.subcommands().keySet());
    known.addAll(spec.optionsMap().keySet());
    return Words.nearest(unmatched.getUnmatched().get(0), known);
  }

  private static int failed(Exception failure, PrintWriter err) {
    boolean usersOwn =
        failure instanceof UnreadableFile
            || failure instanceof Mistake
            || failure instanceof UncheckedIOException;
    if (usersOwn) {
      err.println("trammel: " + failure.getMessage());
    } else {
      err.println("trammel: the program has failed; this is not your sheet's fault.");
      err.println("  Please report what follows, with the sheet and the catalog.");
      failure.printStackTrace(err);
    }
    err.flush();
    return usersOwn ? ExitStatus.UNREADABLE : ExitStatus.OUR_FAULT;
  }

  /** The version that the packaged program bears. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String packaged = Main.class.getPackage().getImplementationVersion();
      return new String[] {"trammel " + (packaged == null ? "(not packaged)" : packaged)};
    }
  }
}
