package trammel.build;

import java.nio.file.Path;
import java.util.Optional;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.read.Binder;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.YamlReader;

/** Reads build sheets and order files, and resolves them against a catalog. */
public final class BuildFiles {
  private BuildFiles() {}

  /**
   * The folder of the catalog that a sheet names, or else of the nearest one above it.
   *
   * @throws trammel.read.UnreadableFile if the sheet cannot be read or there is no catalog
   */
  public static Path catalogFolder(Path file) {
    Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElseThrow();
    Optional<Node> named =
        tree(file) instanceof MapNode map ? map.get("catalog") : Optional.empty();
    return named.isPresent() && named.get() instanceof TextNode text && !text.isBlank()
        ? CatalogFiles.find(folder.resolve(text.text()).normalize())
        : CatalogFiles.find(folder);
  }

  /**
   * Reads and resolves a build sheet or an order file.
   *
   * @throws trammel.read.UnreadableFile with everything that is wrong with it
   */
  public static Build read(Path file, Catalog catalog) {
    return resolve(tree(file), catalog);
  }

  /**
   * Resolves a build sheet or an order that was read.
   *
   * @throws trammel.read.UnreadableFile with everything that is wrong with it
   */
  public static Build resolve(Node tree, Catalog catalog) {
    Problems problems = new Problems();
    boolean order = tree instanceof MapNode map && map.get("order").isPresent();
    Optional<Build> build =
        order
            ? Binder.bind(OrderFile.class, tree, problems)
                .flatMap(found -> resolver(catalog, problems, tree).resolve(found))
            : Binder.bind(BuildSheet.class, tree, problems)
                .flatMap(
                    found ->
                        resolver(catalog, problems, tree)
                            .resolve(found)
                            .map(plain -> taught(plain, found, tree, catalog, problems)));
    problems.refuseIfAny();
    return build.orElseThrow();
  }

  /** The build with the overlay that its sheet names, if it names one. */
  private static Build taught(
      Build plain, BuildSheet sheet, Node tree, Catalog catalog, Problems problems) {
    if (sheet.overlay() == null) {
      return plain;
    }
    Path file = Path.of(tree.place().file()).resolveSibling(sheet.overlay()).normalize();
    return OverlayFiles.read(file, problems)
        .map(
            overlay ->
                new Overlaid(catalog, problems)
                    .build(plain, overlay, placeOf(tree, "overlay"), file))
        .orElse(plain);
  }

  /**
   * The resolver of a tree, which knows where the vehicle's name and the list of sound stations
   * stand.
   */
  private static Resolver resolver(Catalog catalog, Problems problems, Node tree) {
    return new Resolver(
        catalog, problems, placeOf(tree, "vehicle"), placeOf(tree, "as-found", "no-contact"));
  }

  private static Place placeOf(Node tree, String... keys) {
    Node node = tree;
    for (String key : keys) {
      node = node instanceof MapNode map ? map.get(key).orElse(node) : node;
    }
    return node.place();
  }

  private static Node tree(Path file) {
    Problems problems = new Problems();
    Optional<Node> node = YamlReader.read(file, file, problems);
    problems.refuseIfAny();
    return node.orElseThrow();
  }
}
