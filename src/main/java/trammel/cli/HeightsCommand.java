package trammel.cli;

import java.io.PrintWriter;
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
import trammel.derive.Derivations;
import trammel.derive.HeightLedger;
import trammel.derive.Ledgers;
import trammel.derive.TravelLedger;
import trammel.fact.Fact;
import trammel.remedy.Packing;
import trammel.report.HeightsPage;
import trammel.report.HeightsTable;
import trammel.report.JsonReport;

/** Lists heights, loads, pressures and travel of a sheet. */
@Command(
    name = "heights",
    header = "List how high it stands, what carries it, and what travel is left.",
    description = {
      "Of each wheel prints the height ledger line by line, the load on spring and",
      "ram with the pressure before and after, the sensor's range, and the travel",
      "from full droop to the crushed bump stop, drawn to scale; then the axles'",
      "loads against their ratings and the room under the body.",
      "",
      "Example:  trammel heights raised.build.yaml",
      "          trammel heights --csv raised.build.yaml > heights.csv",
      ""
    })
final class HeightsCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", description = "A build sheet or an order file.")
  private Path file = Path.of("");

  @Option(
      names = "--format",
      defaultValue = "text",
      converter = CheckCommand.FormatName.class,
      description = "text or json; text if not given.")
  private CheckCommand.Format format = CheckCommand.Format.TEXT;

  @Option(names = "--csv", description = "Only the values, as comma-separated values.")
  private boolean csv;

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    try (Checking checking = options.start()) {
      Build build = checking.read(file);
      BookOptions.tell(checking.unread(build), spec.commandLine().getErr());
      Derivations derivations = new Derivations(checking.on());
      Ledgers ledgers = derivations.ledgers(build);
      HeightLedger ledger = ledgers.heights();
      List<TravelLedger> travel = ledgers.travel();
      List<Fact> facts = ledgers.underbody();
      List<Packing> packings = Packing.of(build, checking.catalog(file), derivations);
      HeightsTable table = HeightsTable.of(build, ledger, travel, facts, packings);
      PrintWriter out = spec.commandLine().getOut();
      if (csv) {
        out.print(table.csv());
      } else if (format == CheckCommand.Format.JSON) {
        out.print(JsonReport.of(table));
      } else {
        out.print(HeightsPage.text(build, ledger, travel, facts, packings, checking.on()));
      }
      out.flush();
      return ExitStatus.DONE;
    }
  }
}
