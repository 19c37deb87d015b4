package trammel.build;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import trammel.read.Binder;
import trammel.read.MapNode;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.Words;
import trammel.read.YamlReader;

/** Reads and writes overlays. */
public final class OverlayFiles {
  /** What the name of every overlay ends in. */
  public static final String ENDING = ".overlay.yaml";

  private OverlayFiles() {}

  /** An overlay; empty where something in it is wrong. */
  static Optional<OverlayFile> read(Path file, Problems problems) {
    return YamlReader.read(file, file, problems)
        .flatMap(node -> Binder.bind(OverlayFile.class, node, problems));
  }

  /**
   * Writes an overlay whole or not at all: into a temporary file beside it, which then takes its
   * place in one step.
   *
   * @throws trammel.read.UnreadableFile if the name is not an overlay's, or something stands there
   *     that is no overlay of this vehicle
   * @throws UncheckedIOException if the folder cannot be written to
   */
  public static void write(Path file, OverlayFile overlay) {
    refuseOthers(file, overlay.vehicle());
    Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElseThrow();
    try {
      Path unfinished = Files.createTempFile(folder, ".overlay", ".unfinished");
      try {
        Files.write(unfinished, OverlayText.of(overlay).getBytes(UTF_8));
        Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(
          new IOException(file + ": the overlay cannot be written (" + e.getMessage() + ")", e));
    }
  }

  private static void refuseOthers(Path file, String vehicle) {
    Problems problems = new Problems();
    Path name = file.getFileName();
    if (name == null || !name.toString().endsWith(ENDING)) {
      problems.add(
          Place.of(file.toString()),
          "the name of an overlay ends in " + ENDING,
          "Name it for example my-vehicle" + ENDING + ".");
    } else if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      Optional<String> of = vehicleOfOverlay(file);
      if (of.isEmpty()) {
        problems.add(
            Place.of(file.toString()),
            "there is a file of this name that is no overlay; it is left as it is",
            "Choose another name.");
      } else if (!of.get().equals(vehicle)) {
        problems.add(
            Place.of(file.toString()),
            "there is an overlay of the vehicle "
                + Words.quoted(of.get())
                + " by this name; this one is of "
                + Words.quoted(vehicle),
            "Choose another name.");
      }
    }
    problems.refuseIfAny();
  }

  /** The vehicle of what stands there, where that is an overlay. */
  private static Optional<String> vehicleOfOverlay(Path file) {
    Problems ignored = new Problems();
    return YamlReader.read(file, file, ignored)
        .filter(MapNode.class::isInstance)
        .map(MapNode.class::cast)
        .filter(map -> map.get("overlay").isPresent())
        .flatMap(map -> map.get("vehicle"))
        .filter(TextNode.class::isInstance)
        .map(node -> ((TextNode) node).text());
  }
}
