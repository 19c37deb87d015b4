package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.build.Build;
import trammel.derive.Derivation;
import trammel.read.Words;
import trammel.report.FactsPage;
import trammel.vocabulary.FactType;
import trammel.vocabulary.Vocabulary;

/** Shows what rules may ask of, with the values of one build sheet. */
@Command(
    name = "facts",
    header = "Show the names that rules may ask of, with a build sheet's values.",
    description = {
      "",
      "Example:  trammel rules facts order-1187.build.yaml clearance ride-height",
      ""
    })
final class RulesFactsCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", description = "A build sheet or an order file.")
  private Path file = Path.of("");

  @Parameters(
      index = "1..*",
      paramLabel = "FACT",
      description = "Only these facts, such as clearance.")
  private List<String> only = List.of();

  @Mixin private CheckOptions options = new CheckOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    List<String> known = Vocabulary.all().stream().map(FactType::name).toList();
    for (String name : only) {
      if (!known.contains(name)) {
        throw new Mistake(
            "no fact is called " + Words.quoted(name),
            Words.didYouMean(name, known, "Without a name all facts are shown."));
      }
    }
    try (Checking checking = options.start()) {
      Build build = checking.read(file);
      PrintWriter out = spec.commandLine().getOut();
      out.print(FactsPage.text(build, Derivation.facts(build, checking.on()), only, checking.on()));
      out.flush();
      return ExitStatus.DONE;
    }
  }
}
