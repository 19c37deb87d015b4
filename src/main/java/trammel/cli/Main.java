package trammel.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Rule;
import trammel.read.UnreadableFile;
import trammel.report.Report;
import trammel.report.TextReport;

/** The program: {@code check} a build sheet, list the {@code rules}. */
@Command(
    name = "trammel",
    description = "Checks whether wheels, tires and lift parts fit a vehicle and each other.",
    subcommands = {Main.Check.class, Main.Rules.class},
    mixinStandardHelpOptions = true,
    version = "0.1.0")
public final class Main implements Callable<Integer> {
  private static final int OUR_FAULT = 1;
  private static final int UNREADABLE = 2;

  /** Exit statuses from the worst to the best. */
  private static final List<Integer> WORST_FIRST = List.of(OUR_FAULT, UNREADABLE, 5, 6, 4, 3, 0);

  /** Runs a command line and ends the program with its status. */
  public static void main(String[] arguments) {
    System.exit(run(System.out, System.err, arguments));
  }

  /** Runs a command line; results go to one stream, notices and errors to the other. */
  static int run(PrintStream out, PrintStream err, String... arguments) {
    PrintStream results = new PrintStream(out, true, StandardCharsets.UTF_8);
    PrintStream notices = new PrintStream(err, true, StandardCharsets.UTF_8);
    CommandLine line =
        new CommandLine(new Main())
            .setOut(new java.io.PrintWriter(results, true, StandardCharsets.UTF_8))
            .setErr(new java.io.PrintWriter(notices, true, StandardCharsets.UTF_8))
            .setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(
        (problem, command, parsed) -> {
          notices.println("Something is wrong in the program itself: " + problem.getMessage());
          return OUR_FAULT;
        });
    return line.execute(arguments);
  }

  @Override
  public Integer call() {
    CommandLine.usage(this, System.err);
    return UNREADABLE;
  }

  /** Judges build sheets and order files. */
  @Command(
      name = "check",
      description = "Judges build sheets and order files: what fits, what is missing, and why.",
      mixinStandardHelpOptions = true)
  static final class Check implements Callable<Integer> {
    @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "build sheets or order files")
    private List<Path> files;

    @Option(names = "--catalog", paramLabel = "FOLDER", description = "the catalog's folder")
    private @Nullable Path catalog;

    @Option(names = "--on", paramLabel = "DATE", description = "the day to check for, 2026-11-25")
    private @Nullable LocalDate on;

    @Override
    public Integer call() {
      int worst = 0;
      try (Judge judge = Judge.ofBaseBook()) {
        for (Path file : files) {
          int status = check(file, judge);
          worst = WORST_FIRST.indexOf(status) < WORST_FIRST.indexOf(worst) ? status : worst;
        }
      }
      return worst;
    }

    private int check(Path file, Judge judge) {
      try {
        Path folder = catalog == null ? BuildFiles.catalogFolder(file) : CatalogFiles.find(catalog);
        Catalog parts = CatalogFiles.read(folder);
        Build build = BuildFiles.read(file, parts);
        LocalDate day = on == null ? LocalDate.now(java.time.ZoneId.systemDefault()) : on;
        Judgement judgement = judge.judge(Derivation.facts(build, day));
        Report report = Report.of(build, judgement, judge, day);
        spec.commandLine().getOut().print(TextReport.of(report));
        spec.commandLine().getOut().flush();
        return report.verdict().exitStatus();
      } catch (UnreadableFile unreadable) {
        unreadable.problems().forEach(p -> spec.commandLine().getErr().println(p));
        return UNREADABLE;
      }
    }
  }

  /** Lists the rules in force. */
  @Command(
      name = "rules",
      description = "Lists the rules in force, or shows one of them.",
      mixinStandardHelpOptions = true)
  static final class Rules implements Callable<Integer> {
    @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "a rule to show whole")
    private @Nullable String id;

    @Override
    public Integer call() {
      try (Judge judge = Judge.ofBaseBook()) {
        for (Rule rule : judge.rules()) {
          if (id == null) {
            spec.commandLine().getOut().printf("%-32s %s%n", rule.id(), rule.title());
          } else if (rule.id().equals(id)) {
            spec.commandLine()
                .getOut()
                .printf(
                    "%s (%s)%n%s.%nWhy: %s%nSource: %s%n",
                    rule.id(), rule.kind(), rule.title(), rule.reason(), rule.source());
          }
        }
        return 0;
      }
    }
  }
}
