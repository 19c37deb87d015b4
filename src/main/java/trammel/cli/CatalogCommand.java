package trammel.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.VehicleProfile;
import trammel.read.Words;

/** Looks into a catalog. */
@Command(
    name = "catalog",
    header = "List, show or proofread the vehicles and parts of a catalog.",
    description = {"", "Example:  trammel catalog list parts --kind spring", ""},
    synopsisSubcommandLabel = "(list | show | proofread)")
final class CatalogCommand {
  @Spec private CommandSpec spec = CommandSpec.create();

  /** What a list holds. */
  enum Listed {
    VEHICLES,
    PARTS;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Command(name = "list", header = "List vehicles and parts.")
  int list(
      @Parameters(
              arity = "0..1",
              paramLabel = "vehicles|parts",
              description = "Only the one or the other.")
          @Nullable Listed listed,
      @Option(
              names = "--kind",
              paramLabel = "KIND",
              description = "Only parts of this kind, such as tire or spring-spacer.")
          @Nullable String kind,
      @Option(names = "--catalog", paramLabel = "DIR", description = "The catalog's folder.")
          @Nullable Path folder) {
    Optional<PartKind> only = Optional.ofNullable(kind).map(CatalogCommand::kind);
    Catalog catalog = read(folder);
    PrintWriter out = spec.commandLine().getOut();
    if (listed != Listed.PARTS && only.isEmpty()) {
      for (VehicleProfile vehicle : catalog.vehicles().values()) {
        out.printf(
            Locale.ROOT,
            "%-16s %s %s %s%n",
            vehicle.vehicle(),
            vehicle.maker(),
            vehicle.model(),
            vehicle.years() == null ? "" : vehicle.years());
      }
    }
    if (listed != Listed.VEHICLES) {
      for (Part part : catalog.parts().values()) {
        if (only.isEmpty() || only.get() == part.kind()) {
          out.printf(
              Locale.ROOT, "%-16s %-18s %s%n", part.number(), part.kind(), part.listing().name());
        }
      }
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private static PartKind kind(String name) {
    List<String> known = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      if (kind.toString().equals(name)) {
        return kind;
      }
      known.add(kind.toString());
    }
    throw new Mistake(
        "there is no kind of part " + Words.quoted(name) + "; expected " + Words.anyOf(known),
        Words.didYouMean(name, known, "Take one of these."));
  }

  @Command(name = "show", header = "Show all that is known of one vehicle or part.")
  int show(
      @Parameters(paramLabel = "NAME", description = "A vehicle's name or a part number.")
          String name,
      @Option(names = "--catalog", paramLabel = "DIR", description = "The catalog's folder.")
          @Nullable Path folder) {
    Catalog catalog = read(folder);
    Record found =
        catalog
            .vehicle(name)
            .map(Record.class::cast)
            .or(() -> catalog.part(name).map(Record.class::cast))
            .orElseThrow(() -> unknown(name, catalog));
    spec.commandLine().getOut().print(RecordText.of(found));
    spec.commandLine().getOut().flush();
    return ExitStatus.DONE;
  }

  private static Mistake unknown(String name, Catalog catalog) {
    List<String> known = new ArrayList<>(catalog.vehicles().keySet());
    known.addAll(catalog.parts().keySet());
    return new Mistake(
        "there is no vehicle or part " + Words.quoted(name) + " in " + catalog.name(),
        Words.didYouMean(name, known, "trammel catalog list shows what there is."));
  }

  @Command(name = "proofread", header = "Read a whole catalog and say all that is wrong with it.")
  int proofread(
      @Parameters(
              arity = "0..1",
              paramLabel = "DIR",
              description = "The catalog's folder; else the nearest from here upward.")
          @Nullable Path folder) {
    Catalog catalog = read(folder);
    spec.commandLine()
        .getOut()
        .printf(
            Locale.ROOT,
            "%s: nothing wrong in %d vehicles and %d parts%n",
            catalog.name(),
            catalog.vehicles().size(),
            catalog.parts().size());
    spec.commandLine().getOut().flush();
    return ExitStatus.DONE;
  }

  private static Catalog read(@Nullable Path folder) {
    return CatalogFiles.read(
        CatalogFolder.shortest(CatalogFiles.find(folder == null ? Path.of("") : folder)));
  }
}
