package trammel.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.read.Binder;
import trammel.read.Place;
import trammel.read.Problem;
import trammel.read.Problems;
import trammel.read.Required;
import trammel.read.Words;
import trammel.read.YamlReader;

/** Reads a catalog: a folder with {@code catalog.yaml}, {@code vehicles/} and {@code parts/}. */
public final class CatalogFiles {
  /** The file that marks a catalog's folder. */
  public static final String HEAD = "catalog.yaml";

  private CatalogFiles() {}

  /** The head of a catalog. */
  record Head(@Required String catalog, @Required String currency) {}

  /** A family of parts in one file. */
  record Family(@Required String family, @Nullable String maker, List<Part> parts) {}

  /**
   * The nearest folder, from a place upward, that holds a catalog.
   *
   * @throws trammel.read.UnreadableFile if there is none
   */
  public static Path find(Path from) {
    Path folder = from.toAbsolutePath().normalize();
    while (folder != null && !Files.isRegularFile(folder.resolve(HEAD))) {
      folder = folder.getParent();
    }
    if (folder == null) {
      Problems problems = new Problems();
      problems.add(
          Place.of(from.toString().isEmpty() ? "." : from.toString()),
          "no " + HEAD + " in this folder or any above it; expected a catalog",
          "Name the catalog's folder in the sheet (catalog: ../my-catalog), or with --catalog.");
      problems.refuseIfAny();
    }
    return folder;
  }

  /**
   * Reads a whole catalog.
   *
   * @throws trammel.read.UnreadableFile with everything that is wrong in any of its files
   */
  public static Catalog read(Path folder) {
    Problems problems = new Problems();
    Optional<Head> head = bind(Head.class, folder.resolve(HEAD), problems);
    Map<String, VehicleProfile> vehicles = new LinkedHashMap<>();
    Map<String, Part> parts = new LinkedHashMap<>();
    all(VehicleProfile.class, folder.resolve("vehicles"), ".vehicle.yaml", problems)
        .forEach(profile -> put(vehicles, profile, problems));
    all(Family.class, folder.resolve("parts"), ".parts.yaml", problems)
        .forEach(family -> family.parts().forEach(part -> put(parts, part, problems)));
    problems.refuseIfAny();
    new References(parts, problems).check(vehicles.values());
    new SurveyCheck(problems).check(vehicles.values(), parts.values());
    new SupportCheck(problems).check(vehicles.values(), parts);
    problems.refuseIfAny();
    return new Catalog(
        head.orElseThrow().catalog(), head.orElseThrow().currency(), vehicles, parts);
  }

  /**
   * What cannot be true of a vehicle: its profile contradicts itself or the parts of its book.
   *
   * @param profile a profile of the catalog, or one with other values in it
   */
  public static List<Problem> contradictions(VehicleProfile profile, Catalog catalog) {
    Problems problems = new Problems();
    new SurveyCheck(problems).check(List.of(profile), catalog.parts().values());
    new SupportCheck(problems).check(List.of(profile), catalog.parts());
    return problems.sorted();
  }

  /** What a file gave, and what is wrong with it. */
  private record Read<T>(Optional<T> bound, Problems problems) {}

  /** Every file of a folder, read side by side, in the order of their names. */
  private static <T> List<T> all(Class<T> type, Path folder, String ending, Problems problems) {
    List<Read<T>> read =
        files(folder, ending, problems).parallelStream()
            .map(
                file -> {
                  Problems own = new Problems();
                  return new Read<T>(bind(type, file, own), own);
                })
            .toList();
    List<T> bound = new ArrayList<>();
    for (Read<T> each : read) {
      each.problems().sorted().forEach(p -> problems.add(p.place(), p.what(), p.advice()));
      each.bound().ifPresent(bound::add);
    }
    return bound;
  }

  private static <T> Optional<T> bind(Class<T> type, Path file, Problems problems) {
    return YamlReader.read(file, file, problems).flatMap(node -> Binder.bind(type, node, problems));
  }

  private static void put(
      Map<String, VehicleProfile> vehicles, VehicleProfile profile, Problems problems) {
    VehicleProfile before = vehicles.putIfAbsent(profile.vehicle(), profile);
    if (before != null) {
      problems.add(
          profile.place(),
          "a second vehicle called "
              + Words.quoted(profile.vehicle())
              + "; the first is at "
              + before.place(),
          "Give one of them another name.");
    }
  }

  private static void put(Map<String, Part> parts, Part part, Problems problems) {
    Part before = parts.putIfAbsent(part.number(), part);
    if (before != null) {
      problems.add(
          part.listing().place(),
          "a second part numbered "
              + Words.quoted(part.number())
              + "; the first is at "
              + before.listing().place(),
          "Give one of them its own number, or remove it.");
    }
  }

  private static List<Path> files(Path folder, String ending, Problems problems) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> read = new ArrayList<>();
    try (Stream<Path> found = Files.list(folder)) {
      for (Path file : found.filter(Files::isRegularFile).sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(ending)) {
          read.add(file);
        } else if (name.endsWith(".yaml") || name.endsWith(".yml")) {
          problems.add(
              Place.of(file.toString()),
              "the name does not end in " + ending + ", so it would not be read",
              "Rename it, or move it elsewhere.");
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return read;
  }
}
