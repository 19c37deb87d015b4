package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.book.Book;
import trammel.book.Proof;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.report.ProofPage;

/** Proofreads books. */
@Command(
    name = "proofread",
    header = "Read a whole book and say what is wrong with it, and what is doubtful.",
    description = {
      "Ends with 2 where something is wrong: keys, units, names, cases.",
      "Doubtful is what may be meant: rules that can never speak or add nothing,",
      "gaps and overlaps in tables, texts of the law that were read long ago.",
      "With a catalog, also vehicles it does not have, and defaults that none of",
      "its vehicles wants; one that a vehicle cannot have is wrong.",
      "",
      "Example:  trammel rules proofread rules/shop-example",
      ""
    })
final class RulesProofreadCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "FOLDER", description = "Folders of books.")
  private List<Path> folders = List.of();

  @Option(
      names = "--catalog",
      paramLabel = "DIR",
      description = "The catalog whose vehicles the books are for.")
  private @Nullable Path catalog;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      converter = CheckOptions.Day.class,
      description = "The day to read it for (2026-05-31); today if not given.")
  private @Nullable LocalDate on;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    List<Book> books = BookOptions.read(folders);
    Catalog vehicles =
        catalog == null
            ? null
            : CatalogFiles.read(CatalogFolder.shortest(CatalogFiles.find(catalog)));
    Proof proof =
        Proof.of(books, vehicles, on == null ? LocalDate.now(ZoneId.systemDefault()) : on);
    PrintWriter out = spec.commandLine().getOut();
    out.print(ProofPage.text(books, proof, vehicles != null));
    out.flush();
    return proof.wrong().isEmpty() ? ExitStatus.DONE : ExitStatus.UNREADABLE;
  }
}
