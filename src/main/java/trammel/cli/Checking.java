package trammel.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.report.Report;
import trammel.report.Reporter;

/** From a sheet's file to its report; reads each catalog once. */
final class Checking implements AutoCloseable {
  private final @Nullable Path catalogFolder;
  private final LocalDate on;
  private final Judge judge = Judge.ofBaseBook();
  private final Map<Path, Catalog> catalogs = new HashMap<>();

  /** What the rules made of a sheet, and its report. */
  record Checked(Judgement judgement, Report report) {}

  /**
   * @param catalogFolder the catalog to use for every sheet; null for the one that each names
   * @param on the day to check for
   */
  Checking(@Nullable Path catalogFolder, LocalDate on) {
    this.catalogFolder = catalogFolder;
    this.on = on;
  }

  /**
   * Checks one sheet.
   *
   * @throws trammel.read.UnreadableFile if the sheet or its catalog cannot be read
   */
  Checked check(Path file) {
    Catalog catalog = catalog(file);
    Build build = BuildFiles.read(file, catalog);
    Judgement judgement = judge.judge(Derivation.facts(build, on));
    return new Checked(judgement, Reporter.report(build, judgement, judge, catalog, on));
  }

  /** A sheet with every name resolved, not yet judged. */
  Build read(Path file) {
    return BuildFiles.read(file, catalog(file));
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

  Judge judge() {
    return judge;
  }

  @Override
  public void close() {
    judge.close();
  }
}
