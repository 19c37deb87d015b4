package trammel.cli;

import java.nio.file.Path;

/** The folder of a catalog, named as shortly as can be, since every message repeats it. */
final class CatalogFolder {
  private CatalogFolder() {}

  /** The same folder, relative to the current one if it is below it. */
  static Path shortest(Path folder) {
    Path here = Path.of("").toAbsolutePath();
    return folder.startsWith(here) ? here.relativize(folder) : folder;
  }
}
