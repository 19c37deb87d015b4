package trammel.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import trammel.book.BookFolder;
import trammel.book.BookShelf;
import trammel.book.Books;
import trammel.book.CodeBooks;
import trammel.book.Unread;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivations;
import trammel.fact.Evidence;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Judges;
import trammel.remedy.BuildJudge;
import trammel.report.Report;
import trammel.report.Reporter;

/** From a sheet's file to its report; reads each catalog once. */
final class Checking implements AutoCloseable {
  private final @Nullable Path catalogFolder;
  private final LocalDate on;
  private final BookShelf shelf;
  private final Derivations derivations;

  /** By the place whose law they hold. */
  private final Map<String, Taken> taken = new HashMap<>();

  private final Map<Path, Catalog> catalogs = new HashMap<>();

  /** Who judges by the books that could be read, and those that could not. */
  private record Taken(Judges judges, List<Unread> unread) {}

  /** A sheet resolved, who judged it, what the rules made of it, and its report. */
  record Checked(Build build, Judge judge, Judgement judgement, Report report) {}

  /**
   * @param catalogFolder the catalog to use for every sheet; null for the one that each names
   * @param on the day to check for
   * @param shelf the books at hand besides the base book and those of the law
   */
  Checking(@Nullable Path catalogFolder, LocalDate on, BookShelf shelf) {
    this.catalogFolder = catalogFolder;
    this.on = on;
    this.shelf = shelf;
    this.derivations = new Derivations(on);
  }

  /**
   * Checks one sheet.
   *
   * @throws trammel.read.UnreadableFile if the sheet or its catalog cannot be read
   */
  Checked check(Path file) {
    Catalog catalog = catalog(file);
    Build build = read(file);
    Judges judges = judges(build);
    if (judges.hasBuilt(build.vehicle().vehicle(), place(build))) {
      // A judge at hand hears facts while others are derived.
      Judge judge = over(judges, build);
      return checked(build, judge, new BuildJudge(judge, derivations).judge(build), catalog);
    }
    // The first judge takes about as long to build as facts take to derive: side by side.
    CompletableFuture<Judge> ready = CompletableFuture.supplyAsync(() -> over(judges, build));
    Evidence evidence = derivations.evidence(build);
    Judge judge = ready.join();
    return checked(build, judge, judge.judge(evidence), catalog);
  }

  private Checked checked(Build build, Judge judge, Judgement judgement, Catalog catalog) {
    return new Checked(
        build,
        judge,
        judgement,
        Reporter.report(build, judgement, judge, unread(build), catalog, on));
  }

  /**
   * A sheet with every name resolved, and with what the books in force assume where nobody gives a
   * value; not yet judged.
   *
   * @throws trammel.read.UnreadableFile if the sheet, its catalog or a book cannot be read
   */
  Build read(Path file) {
    Catalog catalog = catalog(file);
    Build build = BuildFiles.read(file, catalog);
    return build.assuming(judges(build).assumed(build.vehicle().vehicle(), place(build)), catalog);
  }

  /** The day to check for. */
  LocalDate on() {
    return on;
  }

  /** The catalog of a sheet, read once. */
  Catalog catalog(Path file) {
    Path folder =
        CatalogFolder.shortest(
            catalogFolder == null
                ? BuildFiles.catalogFolder(file)
                : CatalogFiles.find(catalogFolder));
    Catalog catalog = catalogs.get(folder);
    if (catalog == null) {
      catalog = CatalogFiles.read(folder);
      catalogs.put(folder, catalog);
    }
    return catalog;
  }

  /** Who judges a build: the base book, a shop's, and the law of the place its sheet names. */
  Judge judge(Build build) {
    return over(judges(build), build);
  }

  private static Judge over(Judges judges, Build build) {
    return judges.over(build.vehicle().vehicle(), place(build));
  }

  /**
   * All books at hand that could be read, with the law of the place that a build's sheet names.
   *
   * @throws trammel.read.UnreadableFile if one that was named on the command line cannot be read
   */
  Judges judges(Build build) {
    return taken(build).judges();
  }

  /** The user's books that could not be read, whether or not they are for a build's vehicle. */
  List<Unread> unread(Build build) {
    return taken(build).unread();
  }

  private Taken taken(Build build) {
    return taken.computeIfAbsent(
        place(build),
        place -> {
          List<BookFolder> law = place.isBlank() ? List.of() : CodeBooks.at(place);
          boolean none =
              law.isEmpty()
                  && shelf.own().isEmpty()
                  && shelf.named().isEmpty()
                  && shelf.unread().isEmpty();
          Books.Shelved read =
              none
                  ? new Books.Shelved(List.of(), List.of())
                  : Books.read(shelf, law, Judge::knownRules);
          return new Taken(Judges.of(read.books()), read.unread());
        });
  }

  private static String place(Build build) {
    String named = build.found().registeredAt();
    return named == null ? "" : named;
  }

  @Override
  public void close() {
    taken.values().forEach(one -> one.judges().close());
  }
}
