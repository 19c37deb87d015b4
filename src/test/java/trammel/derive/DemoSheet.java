package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.fact.Alignment;
import trammel.fact.Fact;
import trammel.subject.Position;

/** Sheets on the demo's vehicles, written into a folder and read from there. */
final class DemoSheet {
  static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  static final Path DEMO = Path.of("catalog-demo");
  private static final Catalog CATALOG = CatalogFiles.read(DEMO);

  private DemoSheet() {}

  /** A sheet of the demo. */
  static Build demo(String name) {
    return BuildFiles.read(DEMO.resolve("builds/" + name + ".build.yaml"), CATALOG);
  }

  /** A sheet on a vehicle of the demo. */
  static Build of(Path folder, String vehicle, String text) throws IOException {
    return BuildFiles.read(sheet(folder, vehicle, text), CATALOG);
  }

  static Path sheet(Path folder, String vehicle, String text) throws IOException {
    return Files.writeString(
        folder.resolve("sheet.build.yaml"),
        "build: b\ncatalog: " + DEMO.toAbsolutePath() + "\nvehicle: " + vehicle + "\n" + text);
  }

  /** The same on a copy of the demo, in which a line of the vehicle is another. */
  static Build altered(Path folder, String vehicle, List<String> from, List<String> to, String text)
      throws IOException {
    return BuildFiles.read(sheet(folder, vehicle, text), altered(folder, vehicle, from, to));
  }

  private static Catalog altered(Path folder, String vehicle, List<String> from, List<String> to)
      throws IOException {
    Path copy = folder.resolve("catalog-of-" + vehicle);
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = copy.resolve(DEMO.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.deleteIfExists(target);
        Files.copy(file, target);
      }
    }
    Path profile = copy.resolve("vehicles/" + vehicle + ".vehicle.yaml");
    String text = Files.readString(profile);
    for (int i = 0; i < from.size(); i++) {
      assertThat(text).contains(from.get(i));
      text = text.replace(from.get(i), to.get(i));
    }
    Files.writeString(profile, text);
    return CatalogFiles.read(copy);
  }

  /** A Skerrow raised by its height control. */
  static String raised(String adjusters, double front, double rear, String more) {
    String sheet =
        adjusters.isEmpty() ? "" : "as-found:\n  adjusters: { front: " + adjusters + " }\n";
    sheet += "changes:\n";
    sheet += front == 0 ? "" : "  - { raise: " + front + " mm, at: front }\n";
    sheet += rear == 0 ? "" : "  - { raise: " + rear + " mm, at: rear }\n";
    return sheet + more;
  }

  static <F extends Fact> List<F> facts(Build build, Class<F> kind) {
    return Derivation.facts(build, DAY).stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  static Alignment alignment(Build build, Position position) {
    return facts(build, Alignment.class).stream()
        .filter(fact -> fact.subject().where().equals(position.toString()))
        .findFirst()
        .orElseThrow();
  }
}
